#include "domain/names.h"
#include "insight/sheet_map.h"
#include "report/gap_rows.h"
#include "report/json_plan.h"
#include "report/made.h"
#include "report/sheet_report.h"
#include "words/sheet_maker.h"
#include "words/sheet_out.h"

namespace oddglass::report {
namespace {

using insight::SheetFindings;

const char* nameOfStep(insight::NextStep step) {
  switch (step) {
    case insight::NextStep::pairOnWord: return "pair_on_word";
    case insight::NextStep::justRight: return "just_right";
    case insight::NextStep::morePeople: return "more_people";
    case insight::NextStep::addReference: return "add_reference";
    case insight::NextStep::again: break;
  }
  return "again";
}

Json pointsOf(const Plan& plan, const insight::PointsLine& line) {
  Json lots = Json::array(), gaps = Json::array();
  for (const insight::LotMean& lot : line.lots)
    lots.push_back({{"lot", letter(plan, lot.lot)}, {"people", lot.people}, {"mean", orNull(lot.mean)}, {"low", orNull(lot.low)}, {"high", orNull(lot.high)}, {"values", lot.values}});
  for (const insight::LotGap& gap : line.gaps)
    gaps.push_back({{"lot", letter(plan, gap.lot)}, {"people", gap.people}, {"difference", orNull(gap.difference)}, {"low", orNull(gap.low)}, {"high", orNull(gap.high)},
                    {"limit_low", orNull(gap.limitLow)}, {"limit_high", orNull(gap.limitHigh)}, {"p_adjusted", orNull(gap.pDifference)}, {"p_limit_adjusted", orNull(gap.pWithin)},
                    {"verdict", nameOfVerdict(gap.verdict)}, {"weakened_by_what_was_said", gap.weaker}, {"lacks", gap.lacks}, {"said_too_little", gap.saidTooLittle}, {"asked", gap.askedRight}});
  return {{"item", line.item.value}, {"kind", nameOf(line.kind)}, {"part", nameOf(line.part)}, {"word", textOrNull(line.word)}, {"main", line.isMain}, {"limit", orNull(line.limit)},
          {"lots", lots}, {"gaps", gaps}, {"reference_range", line.rangeLow ? Json::array({*line.rangeLow, *line.rangeHigh}) : Json(nullptr)},
          {"same_drink_moved", orNull(line.moved)}, {"same_drink_pairs", line.twice}};
}

Json sideOf(const insight::RightSide& side) {
  return {{"people", side.people}, {"drop", orNull(side.drop)}, {"low", orNull(side.low)}, {"high", orNull(side.high)}, {"p_value", orNull(side.pValue)}, {"penalty", orNull(side.penalty)}};
}

Json countsOf(const Plan& plan, const insight::Counts& counts) {
  Json right = Json::array(), ticked = Json::array(), ranked = Json::array(), behaviour = Json::array(), split = Json::array(), said = Json::array(), sure = Json::array();
  for (const auto& line : counts.right) {
    Json lots = Json::array();
    for (const auto& lot : line.lots)
      lots.push_back({{"lot", letter(plan, lot.lot)}, {"people", lot.people}, {"right", lot.right}, {"little", sideOf(lot.little)}, {"much", sideOf(lot.much)}});
    right.push_back({{"item", line.item.value}, {"word", line.word}, {"lots", lots}});
  }
  for (const auto& line : counts.ticked) ticked.push_back({{"item", line.item.value}, {"word", line.word}, {"ticked", line.ticked}, {"people", line.people}, {"p_holm", orNull(line.pValue)}});
  for (const auto& line : counts.ranked)
    ranked.push_back({{"item", line.item.value}, {"word", textOrNull(line.word)}, {"people", line.people}, {"rank_sums", line.sums}, {"given", line.given}, {"p_value", orNull(line.pValue)}, {"kendall_w", orNull(line.agreement)}});
  for (const auto& line : counts.behaviour) behaviour.push_back({{"item", line.item.value}, {"counts", line.counts}});
  for (const auto& line : counts.split) split.push_back({{"item", line.item.value}, {"points", line.points}, {"people", line.people}});
  for (const auto& line : counts.said) {
    Json words = Json::array();
    for (const auto& word : line.words) words.push_back({{"word", word.word}, {"people", word.people}});
    said.push_back({{"item", line.item.value}, {"kind", nameOf(line.kind)}, {"asked", line.asked}, {"none", line.none}, {"words", words}});
  }
  for (const auto& line : counts.sure) sure.push_back({{"item", line.item.value}, {"counts", line.counts}});
  return {{"just_right", right}, {"ticked", ticked}, {"ranked", ranked}, {"behaviour", behaviour}, {"split", split}, {"said", said}, {"sureness", sure}};
}

const char* whyNoMap(stats::Reason why) {
  switch (why) {
    case stats::Reason::fewSamples: return "fewer_than_three_drinks";
    case stats::Reason::notGiven: return "fewer_than_two_lines";
    case stats::Reason::fewTasters: return "fewer_than_five_people";
    case stats::Reason::noSpread: return "no_spread";
    default: return "not_scored_together";
  }
}

// Looked at afterwards: how the lots lie to each other.
Json mapOf(const Plan& plan, const insight::SheetMap& map) {
  Json lots = Json::array(), words = Json::array();
  for (const insight::MapLot& lot : map.lots) {
    Json one{{"lot", letter(plan, lot.lot)}, {"at", lot.at}, {"people", lot.people}, {"ellipse", nullptr}};
    if (lot.sure) one["ellipse"] = {{"semi_axes", {lot.sure->longer, lot.sure->shorter}}, {"angle", lot.sure->turn}};
    if (lot.why) one["why"] = whyNoMap(*lot.why);
    if (!lot.points.empty()) one["points"] = lot.points;
    lots.push_back(std::move(one));
  }
  for (const insight::MapWord& word : map.words)
    words.push_back({{"item", word.item.value}, {"word", word.word}, {"part", nameOf(word.part)}, {"loadings", word.loadings.empty() ? Json(nullptr) : Json(word.loadings)}});
  return {{"exploratory", true}, {"unit", "hundredths of a line"}, {"people", map.people}, {"share", map.shares}, {"lots", lots}, {"words", words},
          {"why", map.why ? Json(whyNoMap(*map.why)) : Json(nullptr)}};
}

const char* whyNoDriver(stats::Reason why) {
  switch (why) {
    case stats::Reason::notGiven: return "no_liking_or_no_words";
    case stats::Reason::fewSamples: return "fewer_than_four_drinks";
    case stats::Reason::fewTasters: return "fewer_than_five_people";
    default: return "no_spread";
  }
}

// A hint: points of liking for 10 hundredths more of a line, or with a word ticked against without.
Json driversJson(const insight::Drivers& drivers) {
  Json words = Json::array();
  for (const insight::DriverLine& line : drivers.lines) {
    Json one{{"item", line.item.value}, {"word", line.word}, {"part", nameOf(line.part)}, {"people", line.people}, {"more", orNull(line.more)}, {"low", orNull(line.low)},
             {"high", orNull(line.high)}, {"shrunk", orNull(line.shrunk)}, {"p_adjusted", orNull(line.pAdjusted)}};
    if (line.why) one["why"] = whyNoDriver(*line.why);
    words.push_back(std::move(one));
  }
  return {{"hint", true}, {"drinks", drivers.lots}, {"words", words}, {"why", drivers.why ? Json(whyNoDriver(*drivers.why)) : Json(nullptr)}};
}

// Of everybody who did not ask to be only in the sums.
Json answersOf(const RevealedSession& session) {
  Json answers = Json::array();
  for (const SheetRow& row : sheetRows(session))
    for (const auto& [item, value] : row.values)
      answers.push_back({{"who", row.who}, {"maker", row.isMaker}, {"round", row.round.value}, {"cup", row.cup ? Json(row.cup->value) : Json(nullptr)}, {"lot", letter(session.plan, row.lot)},
                         {"item", item.value}, {"value", value}, {"voided", row.voided ? Json(nameOf(*row.voided)) : Json(nullptr)}});
  return answers;
}

Json sheetMakerOf(const words::Voice& voice, const RevealedSession& session, const SheetFindings& findings) {
  Json makers = Json::array(), sections = Json::array();
  for (const auto& maker : findings.makers) {
    Json lots = Json::array();
    for (const auto& value : maker.lots) lots.push_back(orNull(value));
    makers.push_back({{"place", maker.place.value}, {"item", maker.item.value}, {"lots", lots}});
  }
  for (const words::OutSection& each : words::sheetMakerSections(voice, session, findings))
    sections.push_back({{"heading", each.heading}, {"sentences", each.lines}, {"headers", each.headers}, {"rows", each.rows}});
  return {{"table", {{"likings", findings.table.likings}, {"liking", orNull(findings.table.liking)}, {"reference", orNull(findings.table.reference)},
                     {"same_drink_moved", orNull(findings.table.moved)}, {"control", orNull(findings.table.control)}}},
          {"drivers", driversJson(findings.drivers)}, {"makers", makers}, {"sections", sections}, {"answers", answersOf(session)}};
}

}  // namespace

std::string json(const words::Voice& voice, const RevealedSession& session, const SheetFindings& findings, For whom) {
  requireOpen(session);
  const Plan& plan = session.plan;
  const words::CameOut out = words::sheetOut(voice, session, findings);
  Json points = Json::array(), deviations = Json::array(), coded = Json::array();
  for (const auto& line : findings.points) points.push_back(pointsOf(plan, line));
  for (const auto& each : findings.deviations) deviations.push_back({{"kind", nameOf(each.kind)}, {"count", each.count}, {"sentence", words::deviationLine(voice, each)}});
  for (Slot lot : findings.lots) coded.push_back(letter(plan, lot));
  Json report = headOf(session);
  report["conclusion"] = {{"headline", out.headline}, {"first", out.first}, {"sentences", out.lines()}, {"why", findings.why ? Json(nameOf(*findings.why)) : Json(nullptr)}};
  report["plan"] = planOf(plan);
  report["promises"] = promisesOf(session);
  report["decision"] = textOrNull(session.decision);
  report["findings"] = {{"people", findings.people}, {"flights", findings.flights}, {"missing", findings.missing}, {"voided", findings.voided}, {"cups_not_sure", findings.unsure},
                        {"coded", coded}, {"target", letter(plan, findings.target)}, {"doubled", letter(plan, findings.doubled)}, {"points", points}, {"counts", countsOf(plan, findings.counts)}, {"components", mapOf(plan, insight::sheetMapOf(session))},
                        {"next", {{"step", nameOfStep(findings.next.step)}, {"item", findings.next.item.value > 0 ? Json(findings.next.item.value) : Json(nullptr)},
                                  {"lot", findings.next.lot.value > 0 ? letter(plan, findings.next.lot) : Json(nullptr)}, {"sentence", textOrNull(out.next)}}}, {"deviations", deviations}};
  report["power_before"] = powerOf(voice, plan);
  report["tasters"] = tastersOf(session);
  report["orders"] = ordersOf(session);
  report["record"] = recordOf(session);
  if (whom == For::maker) report["maker"] = sheetMakerOf(voice, session, findings);
  return report.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

}  // namespace oddglass::report
