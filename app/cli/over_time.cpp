#include "cli/aging.h"
#include "cli/estimated.h"
#include "cli/families.h"
#include "cli/why.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "insight/bottle_watch.h"
#include "insight/noticing.h"
#include "session/about_lots.h"
#include "session/known_differences.h"
#include "session/record.h"
#include "session/sittings.h"
#include "shelf/lots.h"
#include "shelf/notes.h"
#include "shelf/series.h"
#include "shelf/vocabulary.h"
#include "words/over_time.h"

#include <algorithm>

namespace oddglass::cli {
namespace {

std::string_view verdictOf(insight::TimeVerdict verdict) {
  switch (verdict) {
    case insight::TimeVerdict::rose: return "rose";
    case insight::TimeVerdict::fell: return "fell";
    case insight::TimeVerdict::notShown: return "not shown";
    case insight::TimeVerdict::dotsOnly: return "dots only";
    case insight::TimeVerdict::cannotTell: break;
  }
  return "cannot tell";
}

std::string_view verdictOf(insight::ChangeVerdict verdict) {
  switch (verdict) {
    case insight::ChangeVerdict::more: return "more";
    case insight::ChangeVerdict::less: return "less";
    case insight::ChangeVerdict::within: return "within the limit";
    case insight::ChangeVerdict::notShown: return "not shown";
    case insight::ChangeVerdict::notHeld: return "not held";
    case insight::ChangeVerdict::noFirst: return "first sitting not held";
    case insight::ChangeVerdict::notAsked: return "not asked";
    case insight::ChangeVerdict::cannotTell: break;
  }
  return "cannot tell";
}

Json lineJson(const insight::TimeLine& line) {
  Json json{{"kind", nameOf(line.question.kind)}, {"part", nameOf(line.question.part)}, {"word", line.question.word}, {"verdict", verdictOf(line.verdict)},
            {"slope_per_month", estimatedJson(line.trend.slope, {})}, {"p_adjusted", numberOrNull(line.pAdjusted)}, {"dots", Json::array()}};
  for (const insight::TimeDot& dot : line.dots)
    json["dots"].push_back({{"sitting", dot.sitting}, {"people", dot.people}, {"batch", numberOrNull(dot.batch)}, {"control", numberOrNull(dot.control)}, {"value", numberOrNull(dot.value)},
                            {"low", numberOrNull(dot.low)}, {"high", numberOrNull(dot.high)}});
  json["peak"] = {{"age", numberOrNull(line.trend.peak.age)}, {"low", numberOrNull(line.trend.peak.low)}, {"high", numberOrNull(line.trend.peak.high)}};
  if (line.lastTwo && line.limit) json["last_two_alike"] = alikeJson(*line.lastTwo, *line.limit, line.trend.isConfounded ? "these two sittings were alike" : "alike");
  json["confounded"] = line.trend.isConfounded;
  return json;
}

Json overTimeJson(const Series& series, const insight::OverTime& over) {
  Json json{{"id", series.id.text}, {"title", series.title}, {"control", nameOf(over.control)}, {"at_both_ends", over.atBothEnds}, {"sittings", Json::array()}};
  for (const insight::TimeSitting& each : over.sittings)
    json["sittings"].push_back({{"number", each.number}, {"session", each.session.text}, {"held_on", each.heldOn}, {"age_months", each.age}, {"people", each.people}, {"also_at_first", each.alsoAtFirst}});
  json["main"] = {{"sitting", over.main.sitting}, {"word", over.main.word.empty() ? "liking" : over.main.word}, {"people", over.main.people}, {"verdict", verdictOf(over.main.verdict)},
                  {"change", estimatedJson(over.main.change, {})}};
  if (over.main.alike && series.main.limit) json["main"]["alike"] = alikeJson(*over.main.alike, *series.main.limit, "within the limit");
  json["looking_round"] = Json::array();
  for (const insight::TimeLine& line : over.lines) json["looking_round"].push_back(lineJson(line));
  json["mentions"] = Json::array();
  for (const auto& each : over.mentions) {
    Json counts = Json::array();
    for (const auto& count : each.counts) counts.push_back({{"sitting", count.sitting}, {"batch", count.batch}, {"batch_of", count.batchOf}, {"control", count.control}, {"control_of", count.controlOf}, {"noticers", count.noticers}, {"noticers_of", count.noticersOf}});
    json["mentions"].push_back({{"word", each.question.word}, {"counts", std::move(counts)}});
  }
  return json;
}

Json seenJson(const Series& series, const std::vector<Note>& notes) {
  Json seen = Json::array();
  for (const insight::SeenInBottle& each : insight::seenInBottle(series, notes)) {
    Json looks = Json::array();
    for (const auto& look : each.looks) looks.push_back({{"age_months", look.age}, {"day", look.day}, {"level", look.level}});
    seen.push_back({{"kind", nameOf(each.kind)}, {"looks", std::move(looks)}});
  }
  return seen;
}

std::vector<std::string> overTimeLines(const words::Voice& voice, store::Store& store, const Series& series, const insight::OverTime& over, const std::vector<Note>& notes) {
  const auto sittings = session::sittingsNow(store, series.id);
  const session::SittingNow* next = session::nextSitting(sittings);
  const words::OverTimeWords said = words::overTimeWords(voice, series, over, next ? next->dueOn : std::string(), notes);
  std::vector<std::string> lines{series.title, said.word + ": " + said.headline};
  addLines(lines, said.lines);
  addLines(lines, said.cautions);
  std::optional<Plan> first;
  for (std::size_t i = 0; i < over.sittings.size(); ++i) {
    lines.push_back("  " + words::sittingLine(voice, over.sittings[i], i == 0));
    const Plan plan = session::record(store, over.sittings[i].session).plan;
    if (first)
      if (const std::string differs = words::setupLine(voice, setupDifferences(*first, plan)); !differs.empty()) lines.push_back("    " + differs);
    if (!first) first = plan;
  }
  for (const words::OutSection& section : said.round)
    for (const std::string& line : section.lines) lines.push_back("  " + line);
  for (const words::OutSection& section : said.seen) {
    lines.push_back(section.heading);
    for (const std::string& line : section.lines) lines.push_back("  " + line);
    for (const auto& row : section.rows) lines.push_back("  " + row[0] + ": " + row[1]);
  }
  if (!said.next.empty()) lines.push_back(said.next);
  return lines;
}

}  // namespace

void describeOverTime(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "over-time", "What an aging series has shown so far");
  const auto which = command.argument("SERIES", "The beginning of its id");
  const auto anyway = command.flag("--open-anyway", "Although one of its sittings is sealed; that is written down beside it");
  command.does([=](Desk& desk) -> Answer {
    const auto store = *anyway ? desk.toWrite() : desk.toRead();
    const Series series = shelf::series(*store, seriesOf(*store, *which));
    if (session::sealedSitting(*store, series.id) && !*anyway) throw Problem(Trouble::pagesClosed, "SERIES", {{"text", series.title}});
    if (*anyway) session::openOldPages(*store, desk.clock(), series.id);
    const AboutLots about = session::aboutLots(*store, series);
    const insight::OverTime over = insight::overTimeOf(series, about, insight::noticersOf(session::knownDifferences(*store), about.questions, shelf::meaningNow(*store)));
    const std::vector<Note> notes = shelf::notesOf(*store, shelf::lot(*store, series.batch).beverage);
    Answer answer{overTimeJson(series, over), overTimeLines(desk.voice(), *store, series, over, notes)};
    answer.json["seen"] = seenJson(series, notes);
    answer.json["deeds"] = Json::array();
    for (const Note& note : notes)
      if (!note.word.empty()) answer.json["deeds"].push_back({{"done_on", note.doneOn}, {"kind", nameOf(note.kind)}, {"against", note.word}, {"text", note.text}});
    return answer;
  });
}

}  // namespace oddglass::cli
