#include "cli/aging.h"
#include "cli/estimated.h"
#include "cli/families.h"
#include "domain/day.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "insight/noticing.h"
#include "report/gap_rows.h"
#include "session/about_lots.h"
#include "session/known_differences.h"
#include "session/same_again.h"
#include "session/sittings.h"
#include "shelf/batches.h"
#include "shelf/lots.h"
#include "shelf/series.h"
#include "shelf/vocabulary.h"
#include "words/ready_sheets.h"
#include "words/side_by_side.h"

#include <algorithm>

namespace oddglass::cli {
namespace {

std::string_view linkWord(insight::BatchLink link) {
  switch (link) {
    case insight::BatchLink::together: return "together";
    case insight::BatchLink::reference: return "shared lot";
    case insight::BatchLink::none: break;
  }
  return "none";
}

Json questionJson(const LotQuestion& question) { return {{"kind", nameOf(question.kind)}, {"part", nameOf(question.part)}, {"word", question.word}}; }

Json columnJson(const Batch& batch, const insight::BatchColumn& column, const BatchTastings& tastings, const std::string& name) {
  Json json{{"beverage", batch.beverage.id.text}, {"name", name}, {"made_on", batch.madeOn}, {"lot", column.lot ? Json(tastings.lots[static_cast<std::size_t>(*column.lot)].text) : Json()},
            {"lots_left_out", column.lotsLeftOut}, {"changed", Json::array()}, {"tasted", Json::array()}};
  for (const Note& note : batch.changed) json["changed"].push_back({{"done_on", note.doneOn}, {"text", note.text}});
  for (const insight::TastedOnce& each : column.tasted)
    json["tasted"].push_back({{"session", tastings.about.sessions[static_cast<std::size_t>(each.session)].id.text}, {"held_on", each.heldOn}, {"age_months", numberOrNull(each.age)}, {"people", each.people}});
  return json;
}

Json gapJson(const insight::SideBySide& found, const insight::BatchGap& gap) {
  Json json = questionJson(found.lines[static_cast<std::size_t>(gap.line)].question);
  json.update({{"people", gap.people}, {"base", numberOrNull(gap.base)}, {"other", numberOrNull(gap.other)}, {"limit", numberOrNull(gap.limit)}, {"limit_low", numberOrNull(gap.limitLow)},
               {"limit_high", numberOrNull(gap.limitHigh)}, {"p_adjusted", numberOrNull(gap.pDifference)}, {"p_limit_adjusted", numberOrNull(gap.pWithin)}, {"verdict", report::nameOfVerdict(gap.verdict)}});
  json["difference"] = estimatedJson(gap.difference, {});
  return json;
}

Json stepJson(const insight::SideBySide& found, const BatchTastings& tastings, const insight::BatchStep& step) {
  const auto sessions = [&](const std::vector<int>& all) {
    Json ids = Json::array();
    for (const int each : all) ids.push_back(tastings.about.sessions[static_cast<std::size_t>(each)].id.text);
    return ids;
  };
  Json json{{"base", step.base}, {"other", step.other}, {"link", linkWord(step.link)}, {"shared_lot", step.shared ? Json(tastings.lots[static_cast<std::size_t>(*step.shared)].text) : Json()},
            {"base_sessions", sessions(step.baseSessions)}, {"other_sessions", sessions(step.otherSessions)}, {"people", step.people}, {"changed", step.changed.size()},
            {"base_age_months", numberOrNull(step.baseAge)}, {"other_age_months", numberOrNull(step.otherAge)}, {"one_age_on", step.sameAgeOn ? Json(*step.sameAgeOn) : Json()}, {"questions", Json::array()}};
  if (step.link == insight::BatchLink::none) json["why"] = "never poured together, nor beside a shared bottle";
  for (const insight::BatchGap& gap : step.gaps) json["questions"].push_back(gapJson(found, gap));
  return json;
}

Json sideBySideJson(const std::vector<Batch>& batches, const BatchTastings& tastings, const insight::SideBySide& found, const words::SideBySideWords& said) {
  Json json{{"batches", Json::array()}, {"good", found.good ? Json(*found.good) : Json()}, {"comparisons", found.comparisons}, {"steps", Json::array()}, {"questions", Json::array()}, {"mentions", Json::array()},
            {"headline", said.headline}};
  for (std::size_t b = 0; b < batches.size(); ++b) json["batches"].push_back(columnJson(batches[b], found.columns[b], tastings, said.columns[b]));
  for (const insight::BatchLine& line : found.lines) {
    Json one = questionJson(line.question);
    one.update({{"formerly", line.formerly}, {"word_changed_on", line.changedOn}, {"means", Json::array()}});
    for (const insight::BatchMean& mean : line.means) one["means"].push_back({{"mean", numberOrNull(mean.mean)}, {"people", mean.people}});
    json["questions"].push_back(std::move(one));
  }
  for (const insight::BatchMentions& mentions : found.mentions) {
    Json one = questionJson(mentions.question);
    one["counts"] = Json::array();
    for (const auto& count : mentions.counts) one["counts"].push_back({{"ticked", count.ticked}, {"asked", count.asked}, {"noticers_ticked", count.noticersTicked}, {"noticers", count.noticers}});
    json["mentions"].push_back(std::move(one));
  }
  for (const insight::BatchStep& step : found.steps) json["steps"].push_back(stepJson(found, tastings, step));
  return json;
}

std::vector<std::string> sideBySideLines(const words::SideBySideWords& said) {
  std::vector<std::string> lines{said.word + ": " + said.headline};
  addLines(lines, said.lines);
  for (const auto& row : said.rows) {
    lines.push_back("  " + row.front());
    for (std::size_t i = 1; i < row.size(); ++i) lines.push_back("    " + said.headers[i] + ": " + row[i]);
  }
  if (!said.underTable.empty()) lines.push_back(said.underTable);
  for (const words::BatchStepWords& step : said.steps) {
    lines.push_back(step.heading);
    for (const auto* part : {&step.lines, &step.gaps})
      for (const std::string& line : *part) lines.push_back("  " + line);
    if (!step.advice.empty()) lines.push_back("  " + step.advice);
  }
  addLines(lines, said.marks);
  return lines;
}

Answer recipesAnswer(store::Store& store) {
  Answer answer{Json{{"recipes", Json::array()}}, {}};
  for (const Recipe& each : shelf::recipes(store)) {
    answer.json["recipes"].push_back({{"recipe", each.name}, {"batches", each.batches}});
    answer.lines.push_back(each.name + "  " + std::to_string(each.batches));
  }
  if (answer.lines.empty()) answer.lines.push_back("No recipes. Give a batch its recipe, or name two batches.");
  return answer;
}

// The batch that others are held against, by its name or id among these.
std::optional<int> goodOf(const std::vector<Batch>& batches, const Given& given) {
  if (!given.isGiven()) return std::nullopt;
  const auto found = std::ranges::find_if(batches, [&](const Batch& each) { return each.beverage.id.text == given.text() || each.beverage.name == given.text(); });
  if (found == batches.end()) throw Problem(Trouble::unknown, given.name, {{"what", "batch"}, {"text", given.text()}});
  return static_cast<int>(found - batches.begin());
}

}  // namespace

void describeSideBySide(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "side-by-side", "Batches of a recipe in columns: what moved between them where they can be compared; without a name all recipes");
  const auto which = command.arguments("RECIPE-OR-BATCH", "A recipe, or a batch and with it all of its recipe; or several batches");
  const auto good = command.option("--good", "BATCH", "Holds all others against this one; otherwise each against the one before");
  const auto plan = command.flag("--plan", "Plans a tasting that links them");
  const auto sheet = command.option("--sheet", "SHEET", "Its questions, where none were asked yet: guests, beer, mead, cider or wine");
  command.does([=](Desk& desk) -> Answer {
    const auto store = *plan ? desk.toWrite() : desk.toRead();
    if (which->empty()) return recipesAnswer(*store);
    const std::vector<Batch> batches = shelf::batchesMeant(*store, *which, "RECIPE-OR-BATCH");
    const BatchTastings tastings = session::batchTastings(*store, batches);
    if (const auto closed = session::closedSeries(*store, tastings.lots)) throw Problem(Trouble::pagesClosed, "RECIPE-OR-BATCH", {{"text", shelf::series(*store, *closed).title}});
    const insight::SideBySide found = insight::sideBySideOf(batches, tastings, shelf::wordsNow(*store, wordsAsked(tastings.about)), goodOf(batches, *good),
                                                             insight::noticersOf(session::knownDifferences(*store), tastings.about.questions, shelf::meaningNow(*store)));
    const words::SideBySideWords said = words::sideBySideWords(desk.voice(), batches, tastings, found, dayOf(desk.clock().now()));
    Answer answer{sideBySideJson(batches, tastings, found, said), sideBySideLines(said)};
    if (!*plan) return answer;
    const std::vector<LotId> lots = insight::lotsToLink(found, tastings, shelf::freeToPour(*store, tastings.lots));
    if (lots.empty()) {
      answer.json.update({{"planned", nullptr}, {"why", "no bottle is left that would link them"}});
      answer.lines.push_back("Nothing was planned: no bottle is left that would link them.");
      return answer;
    }
    const auto items = tastings.about.sessions.empty() ? sheetNamed(desk.voice(), *sheet) : session::questionsOf(tastings.about.sessions.back().plan);
    const SessionId id = session::planSheet(*store, desk.clock(), desk.chance(), words::linkTitle(desk.voice(), batches.front().beverage.recipe), lots,
                                            items.empty() ? words::readyItems(desk.voice(), words::readyFor(batches.front().beverage.kind)) : items);
    answer.json["planned"] = id.text;
    answer.lines.push_back(id.text);
    return answer;
  });
}

}  // namespace oddglass::cli
