#include "report/series_document.h"

#include "domain/names.h"
#include "insight/beside.h"
#include "insight/bottle_watch.h"
#include "report/made.h"
#include "report/why.h"
#include "words/history.h"
#include "words/over_time.h"
#include "words/reading.h"

#include <algorithm>

namespace oddglass::report {
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
            {"slope_per_month", estimatedJson(line.trend.slope, {})}, {"p_adjusted", orNull(line.pAdjusted)}, {"dots", Json::array()}};
  for (const insight::TimeDot& dot : line.dots)
    json["dots"].push_back({{"sitting", dot.sitting}, {"people", dot.people}, {"batch", orNull(dot.batch)}, {"control", orNull(dot.control)}, {"value", orNull(dot.value)},
                            {"low", orNull(dot.low)}, {"high", orNull(dot.high)}});
  json["peak"] = {{"age", orNull(line.trend.peak.age)}, {"low", orNull(line.trend.peak.low)}, {"high", orNull(line.trend.peak.high)}};
  if (line.lastTwo && line.limit) json["last_two_alike"] = alikeJson(*line.lastTwo, *line.limit, line.trend.isConfounded ? "these two sittings were alike" : "alike");
  json["confounded"] = line.trend.isConfounded;
  return json;
}

}  // namespace

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

namespace {

Json sittingsJson(const words::Voice& voice, const SeriesReport& read) {
  Json all = Json::array();
  for (const session::SittingNow& each : read.now) {
    Json one{{"number", each.number}, {"due_on", each.dueOn}, {"session", each.session ? Json(each.session->text) : Json(nullptr)}, {"state", each.session ? Json(nameOf(each.state)) : Json(nullptr)},
             {"held_on", textOrNull(each.heldOn)}, {"opened_while_sealed", each.timesSeen}, {"age_months", nullptr}, {"people", nullptr}, {"also_at_first", nullptr}};
    const auto held = std::ranges::find(read.over.sittings, each.session, [](const insight::TimeSitting& sitting) { return std::optional(sitting.session); });
    if (held != read.over.sittings.end()) {
      const auto at = static_cast<std::size_t>(held - read.over.sittings.begin());
      const RevealedSession& session = read.held[at];
      one["age_months"] = number(held->age);
      one["people"] = held->people;
      one["also_at_first"] = held->alsoAtFirst;
      one["set_otherwise"] = textOrNull(words::setupLine(voice, read.setup[at]));
      one["tasters"] = tastersOf(session);
      one["deviations"] = Json::array();
      for (const insight::Deviation& deviation : insight::deviationsOf(session))
        one["deviations"].push_back({{"kind", nameOf(deviation.kind)}, {"count", deviation.count}, {"sentence", words::deviationLine(voice, deviation)}});
      one["record"] = recordOf(session);
    }
    all.push_back(std::move(one));
  }
  return all;
}

Json stockJson(const SeriesReport& read) {
  Json all = Json::array();
  for (const auto& [lot, drink] : read.stock)
    all.push_back({{"lot", lot.id.text}, {"beverage", drink.name}, {"name", lot.name}, {"origin", nameOf(drink.origin)}, {"kind", nameOf(drink.kind)}, {"abv_bp", orNull(drink.abvBp)}, {"packaged_on", textOrNull(lot.packagedOn)},
                   {"best_before", textOrNull(lot.bestBefore)}, {"storage", textOrNull(lot.storage)}, {"bottles", lot.bottles}, {"held", lot.held}});
  return all;
}

}  // namespace

std::string seriesJson(const words::Voice& voice, const SeriesReport& read) {
  const Series& series = read.series;
  const session::SittingNow* next = session::nextSitting(read.now);
  const words::OverTimeWords said = words::overTimeWords(voice, series, read.over, next ? next->dueOn : std::string(), read.notes);
  std::string standard;
  if (!read.held.empty()) standard = headOf(read.held.back()).at("standard").get<std::string>();
  Json report{{"format", "oddglass-series-report"}, {"version", 1}, {"standard", textOrNull(standard)}};
  report["conclusion"] = {{"headline", said.headline}, {"sentences", said.lines}, {"cautions", said.cautions}, {"next", textOrNull(said.next)}};
  report["plan"] = {{"begun_on", series.begunOn}, {"control", nameOf(series.control)}, {"bottles_each", series.bottlesEach}, {"reserve", series.reserve},
                    {"main", {{"sitting", series.main.sitting}, {"word", series.main.word.empty() ? "liking" : series.main.word}, {"limit", orNull(series.main.limit)}}}};
  report["findings"] = overTimeJson(series, read.over);
  report["sittings"] = sittingsJson(voice, read);
  report["lots"] = stockJson(read);
  report["seen"] = seenJson(series, read.notes);
  report["notes"] = Json::array();
  for (const Note& note : read.notes) report["notes"].push_back({{"done_on", note.doneOn}, {"kind", nameOf(note.kind)}, {"against", textOrNull(note.word)}, {"text", note.text}});
  return report.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

}  // namespace oddglass::report
