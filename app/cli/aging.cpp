#include "cli/aging.h"

#include "cli/families.h"
#include "domain/day.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "exchange/calendar.h"
#include "planning/aging.h"
#include "session/drafts.h"
#include "session/same_again.h"
#include "session/sittings.h"
#include "shelf/lots.h"
#include "shelf/series.h"
#include "words/aging.h"
#include "words/over_time.h"
#include "words/ready_sheets.h"

#include <algorithm>

namespace oddglass::cli {
namespace {

std::vector<std::string> partsOf(const Given& given) {
  std::vector<std::string> parts(1);
  for (const char c : given.text()) {
    if (c == ',') parts.emplace_back();
    else if (c != ' ') parts.back() += c;
  }
  return parts;
}

std::vector<int> agesOf(const Given& given) {
  if (!given.isGiven()) return planning::usualAges();
  std::vector<int> ages;
  for (const std::string& part : partsOf(given)) ages.push_back(Given{given.name, part}.whole(0, 36500));
  return ages;
}

ControlKind controlOf(const Given& given) {
  std::vector<std::string> choices;
  for (const ControlKind each : allOf<ControlKind>()) choices.emplace_back(nameOf(each));
  return *named<ControlKind>(given.isGiven() ? given.oneOf(choices) : std::string(nameOf(ControlKind::twin)));
}

/// What a plan for a series and its beginning both ask for.
struct AgingOptions {
  std::shared_ptr<Given> ages, control, each, reserve;
};

AgingOptions agingOptions(Command& command) {
  return {command.option("--ages", "DAYS", "Days after bottling (14,30,61,91,183,365)"),
          command.option("--control", "KIND", "twin (kept cold), reference (bought) or none (twin)"),
          command.option("--each", "N", "Bottles of each drink for one sitting (1)"),
          command.option("--reserve", "N", "Bottles kept for a sitting that goes wrong (2)")};
}

void describeAging(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "aging", "What an aging series takes in bottles, and what it could show");
  const AgingOptions asked = agingOptions(command);
  const auto bottles = command.option("--bottles", "N", "How many there are of this bottling (12)");
  const auto people = command.option("--people", "N", "Who is likely to come and made none of it (6)");
  command.does([=](Desk& desk) -> Answer {
    const planning::AgingSetup setup{agesOf(*asked.ages), controlOf(*asked.control), asked.each->wholeOr(1, 1, 24), asked.reserve->wholeOr(2, 0, 48), bottles->wholeOr(12, 0, 100000), people->wholeOr(6, 0, 1000)};
    const planning::AgingOutlook outlook = planning::agingOutlook(setup);
    const words::AgingWords said = words::agingWords(desk.voice(), setup, outlook);
    Answer answer{Json{{"bottles_needed", outlook.needed}, {"bottles_of_control", outlook.controlBottles}, {"enough", outlook.needed <= setup.bottles},
                       {"smallest_change", numberOrNull(outlook.smallestChange)}, {"cheaper", nullptr}, {"text", said.headline}},
                  {said.headline}};
    if (!outlook.smallestChange) answer.json["why"] = setup.people < 3 ? "fewer than three people" : "no change on nine points is large enough for so few people";
    if (outlook.cheaper) answer.json["cheaper"] = {{"ages", outlook.cheaper->ages}, {"reserve", outlook.cheaper->reserve}, {"bottles_needed", planning::agingOutlook(*outlook.cheaper).needed}};
    addLines(answer.lines, said.lines);
    if (!said.cheaper.empty()) answer.lines.push_back(said.cheaper);
    return answer;
  });
}

LotId lotOf(store::Store& store, const Given& given) {
  const std::vector<LotId> found = shelf::lotsCalled(store, given.text());
  if (found.size() != 1) throw Problem(found.empty() ? Trouble::unknown : Trouble::ambiguous, given.name, {{"what", "lot"}, {"text", given.text()}});
  return found.front();
}

Json seriesJson(const Series& series) {
  Json json{{"id", series.id.text}, {"title", series.title}, {"batch", series.batch.text}, {"control", nameOf(series.control)}, {"control_lot", series.controlLot ? Json(series.controlLot->text) : Json()},
            {"begun_on", series.begunOn}, {"bottles_each", series.bottlesEach}, {"reserve", series.reserve}, {"sittings", Json::array()}};
  json["main"] = {{"sitting", series.main.sitting}, {"word", series.main.word.empty() ? "liking" : series.main.word}, {"limit", numberOrNull(series.main.limit)}};
  for (const Sitting& each : series.sittings) json["sittings"].push_back({{"number", each.number}, {"due_on", each.dueOn}, {"session", each.session ? Json(each.session->text) : Json()}});
  return json;
}

std::vector<std::string> seriesLines(const Series& series) {
  std::vector<std::string> lines{series.id.text + "  " + series.title};
  for (const Sitting& each : series.sittings) lines.push_back("  " + std::to_string(each.number) + "  " + each.dueOn + (each.session ? "  " + each.session->text : ""));
  return lines;
}

void describeBegin(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "begin-series", "Begins an aging series of a batch");
  const auto title = command.option("--title", "TEXT", "What it is called");
  const auto lot = command.option("--lot", "LOT", "The batch: an id, a drink with one lot, or \"drink, lot\"");
  const AgingOptions asked = agingOptions(command);
  const auto controlLot = command.option("--control-lot", "LOT", "The lot that stands beside it in every sitting");
  const auto twin = command.option("--set-aside", "N", "Instead of --control-lot: so many bottles of the batch become its cold twin");
  const auto begun = command.option("--begun-on", "DAY", "The day of bottling (that of the lot)");
  const auto main = command.option("--main", "N", "The sitting that is compared with the first (the last)");
  const auto word = command.option("--word", "WORD", "In what (liking)");
  const auto limit = command.option("--limit", "POINTS", "A change that is too small to matter");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toWrite();
    Series series;
    series.title = title->text();
    series.batch = lotOf(*store, *lot);
    series.control = controlOf(*asked.control);
    series.begunOn = begun->isGiven() ? begun->text() : shelf::lot(*store, series.batch).packagedOn;
    series.bottlesEach = asked.each->wholeOr(1, 1, 24);
    series.reserve = asked.reserve->wholeOr(2, 0, 48);
    for (const int age : agesOf(*asked.ages)) {
      const auto day = dayAfter(series.begunOn, age);
      if (!day) throw Problem(Trouble::notADay, begun->name, {{"text", series.begunOn}});
      series.sittings.push_back({0, *day, std::nullopt});
    }
    series.main.sitting = main->wholeOr(static_cast<int>(series.sittings.size()), 2, 24);
    if (word->isGiven()) series.main.word = word->text();
    if (limit->isGiven()) series.main.limit = limit->whole(1, 1000);
    if (controlLot->isGiven()) series.controlLot = lotOf(*store, *controlLot);
    const int setAside = twin->isGiven() && series.control == ControlKind::twin && !controlLot->isGiven() ? twin->whole(1, 100000) : 0;
    const SeriesId id = shelf::begin(*store, desk.clock(), desk.chance(), series, setAside, shelf::lot(*store, series.batch).name + ", kept cold", "cold");
    const Series kept = shelf::series(*store, id);
    return {seriesJson(kept), seriesLines(kept)};
  });
}

void describeSeries(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "series", "All aging series with their sittings");
  const auto all = command.flag("--all", "Those put away too");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toRead();
    Answer answer{Json{{"series", Json::array()}}, {}};
    for (const Series& each : shelf::allSeries(*store, *all)) {
      answer.json["series"].push_back(seriesJson(each));
      addLines(answer.lines, seriesLines(each));
    }
    if (answer.lines.empty()) answer.lines.push_back("No series.");
    return answer;
  });
}

void describeSitting(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "sitting", "Plans a sitting of a series: the same table as last time, or for the first one a sheet");
  const auto which = command.argument("SERIES", "The beginning of its id");
  const auto number = command.argument("NUMBER", "Which sitting");
  const auto sheet = command.option("--sheet", "SHEET", "For the first one: guests, beer, mead, cider or wine");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toWrite();
    const SeriesId series = seriesOf(*store, *which);
    const SessionId id = session::planSitting(*store, desk.clock(), desk.chance(), series, number->whole(1, 24), sheetNamed(desk.voice(), *sheet));
    return {Json{{"id", id.text}, {"title", session::draft(*store, id).title}}, {id.text}};
  });
}

void describeAgain(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "again", "Plans the same table again: a sealed session's drinks, people, way of asking and amounts, as a new plan");
  const auto which = command.argument("SESSION", "The beginning of its id");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toWrite();
    const SessionId id = session::planAgain(*store, desk.clock(), desk.chance(), sessionOf(*store, *which));
    return {Json{{"id", id.text}, {"title", session::draft(*store, id).title}}, {id.text}};
  });
}

void describeCalendar(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "calendar", "Writes the sittings of a series that are still to come as an iCalendar file");
  const auto which = command.argument("SERIES", "The beginning of its id");
  const auto out = command.option("--out", "FILE.ics", "Where to");
  command.does([=](Desk& desk) -> Answer {
    const std::filesystem::path file = out->text();
    const auto store = desk.toRead();
    const SeriesId id = seriesOf(*store, *which);
    const int events = exchange::writeCalendar(*store, desk.clock(), id, [&](const Series& series, const Sitting& sitting) { return words::sittingTitle(desk.voice(), series.title, sitting.number); }, file);
    return {Json{{"id", id.text}, {"file", file.string()}, {"events", events}}, {file.string()}};
  });
}

}  // namespace

std::vector<SheetItem> sheetNamed(const words::Voice& voice, const Given& given) {
  static const std::vector<std::pair<std::string, words::ReadySheet>> sheets{{"guests", words::ReadySheet::guests}, {"beer", words::ReadySheet::beer}, {"mead", words::ReadySheet::mead},
                                                                             {"cider", words::ReadySheet::cider}, {"wine", words::ReadySheet::wine}};
  if (!given.isGiven()) return {};
  std::vector<std::string> names;
  for (const auto& each : sheets) names.push_back(each.first);
  return words::readyItems(voice, std::ranges::find(sheets, given.oneOf(names), &std::pair<std::string, words::ReadySheet>::first)->second);
}

SeriesId seriesOf(store::Store& store, const Given& given) { return shelf::seriesNamed(store, idStart(given)); }

void describeAges(CLI::App& app, Command::Work& chosen) {
  for (const auto describe : {describeAging, describeBegin, describeSeries, describeSitting, describeAgain, describeCalendar}) describe(app, chosen);
}

}  // namespace oddglass::cli
