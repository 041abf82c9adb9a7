#include "report/json.h"

#include "domain/names.h"
#include "report/json_plan.h"
#include "report/made.h"
#include "words/reading.h"

namespace oddglass::report {
namespace {

Json votesOf(const insight::Votes& votes) {
  Json split = nullptr;
  if (votes.split)
    split = {{"first", votes.split->first}, {"second", votes.split->second}, {"p_value", number(votes.split->pValue)}, {"shown", votes.split->isShown}, {"changes", votes.split->changes}};
  return {{"first", votes.first}, {"second", votes.second}, {"none", votes.none}, {"even", votes.even}, {"repeated", votes.repeated}, {"steady", votes.steady}, {"split", split}};
}

Json signalOf(const insight::Signal& signal) {
  return {{"hits", signal.hits}, {"misses", signal.misses}, {"false_alarms", signal.falseAlarms}, {"correct_rejections", signal.correctRejections},
          {"d_prime", orNull(signal.dPrime)}, {"standard_error", orNull(signal.standardError)}, {"low", orNull(signal.low)}, {"high", orNull(signal.high)},
          {"level", number(signal.level)}, {"d_prime_corrected", orNull(signal.corrected)}, {"criterion", orNull(signal.criterion)}};
}

Json sequentialOf(const insight::Sequential& sequential) {
  return {{"decision", nameOf(sequential.decision)}, {"after_round", sequential.afterRound}, {"stopped_early", sequential.stoppedEarly},
          {"difference_from", sequential.differenceFrom}, {"none_to", sequential.noneTo >= 0 ? Json(sequential.noneTo) : Json(nullptr)}};
}

Json likingOf(const insight::Liking& liking) {
  Json tellers = nullptr;
  if (liking.tellers)
    tellers = {{"estimate", number(liking.tellers->estimate)}, {"low", number(liking.tellers->low)}, {"high", number(liking.tellers->high)}, {"level", number(liking.tellers->level)}};
  return {{"votes", votesOf(liking.votes)}, {"p_value", number(liking.pValue)}, {"needed", orNull(liking.needed)}, {"shown", liking.isShown}, {"wrong", liking.wrong}, {"share_of_tellers", tellers}};
}

Json readingOf(const insight::Reading& reading) {
  Json range = nullptr, missed = Json::array();
  if (reading.range)
    range = {{"low", number(reading.range->low)}, {"point", number(reading.range->point)}, {"high", number(reading.range->high)},
             {"level", number(reading.range->level)}, {"by", nameOf(reading.range->by)}};
  for (const insight::Missed& each : reading.missed) {
    missed.push_back({{"share_pm", each.sharePm}, {"power", number(each.chance)}});
    if (each.dPrimeTenths) missed.back()["d_prime"] = *each.dPrimeTenths / 10.0;
  }
  Json made = {{"verdict", nameOf(reading.verdict)}, {"right", reading.right}, {"trials", reading.trials}, {"people", reading.people},
               {"expected", number(reading.expected)}, {"p_value", orNull(reading.pValue)}, {"needed", orNull(reading.needed)},
               {"largest_alike", orNull(reading.largest)}, {"alike_p_value", orNull(reading.alikeP)}, {"range", range}, {"power", missed}};
  if (reading.why) made["why"] = nameOf(*reading.why);
  if (reading.adjustedP) made["p_value_holm"] = number(*reading.adjustedP);
  if (reading.alikeAdjustedP) made["alike_p_value_holm"] = number(*reading.alikeAdjustedP);
  if (reading.otherWayP) made["p_value_other_way"] = number(*reading.otherWayP);
  if (reading.votes) made["votes"] = votesOf(*reading.votes);
  if (reading.signal) made["signal"] = signalOf(*reading.signal);
  if (reading.sequential) made["sequential"] = sequentialOf(*reading.sequential);
  return made;
}

Json conclusionOf(const words::CameOut& out, const insight::Findings& findings) {
  Json made = {{"verdict", nameOf(findings.verdict)}, {"weakened_by", nameOf(findings.weakenedBy)}, {"headline", out.headline}, {"first", out.first}, {"sentences", out.lines()}};
  if (findings.why) made["why"] = nameOf(*findings.why);
  if (!out.pairs.empty()) {
    made["pairs"] = Json::array();
    for (const words::CameOut& pair : out.pairs) made["pairs"].push_back({{"what", pair.what}, {"headline", pair.headline}, {"sentences", pair.lines()}});
  }
  return made;
}

Json findingsOf(const words::Voice& voice, const Plan& plan, const insight::Findings& findings) {
  const auto reading = [](const std::optional<insight::Reading>& each) { return each ? readingOf(*each) : Json(nullptr); };
  Json sureness = Json::array(), clues = Json::array(), deviations = Json::array(), cautions = Json::array();
  for (const auto& each : findings.sureness) sureness.push_back({{"sureness", nameOf(each.sureness)}, {"trials", each.trials}, {"right", each.right}});
  for (const auto& each : findings.clues) clues.push_back({{"clue", nameOf(each.clue)}, {"trials", each.trials}, {"right", each.right}});
  for (const auto& each : findings.deviations) deviations.push_back({{"kind", nameOf(each.kind)}, {"count", each.count}, {"sentence", words::deviationLine(voice, each)}});
  for (const auto each : findings.cautions) cautions.push_back(nameOf(each));
  Json habit = nullptr, index = nullptr, pairs = Json::array();
  if (findings.habit) habit = {{"counts", findings.habit->counts}, {"p_value", number(findings.habit->pValue)}, {"stands", findings.habit->stands}};
  if (const auto& found = findings.surenessIndex)
    index = {{"r_index", number(found->rIndex)}, {"low", number(found->low)}, {"high", number(found->high)}, {"level", number(found->level)}, {"p_value", number(found->pValue)}, {"exact", found->isExact}};
  for (const insight::Findings& pair : findings.pairs) {
    Json made = findingsOf(voice, plan, pair);
    made["lots"] = Json::array({letter(plan, pair.lots->first), letter(plan, pair.lots->second)});
    made["verdict"] = nameOf(pair.verdict);
    made["weakened_by"] = nameOf(pair.weakenedBy);
    pairs.push_back(std::move(made));
  }
  return {{"flights", findings.flights}, {"missing", findings.missing}, {"voided", findings.voided}, {"all", readingOf(findings.all)},
          {"without_look_or_fizz", reading(findings.withoutLookOrFizz)}, {"without_said", reading(findings.withoutSaid)},
          {"without_either", reading(findings.withoutEither)}, {"mostly_by_look_or_fizz", findings.mostlyByLookOrFizz},
          {"sureness", sureness}, {"clues", clues}, {"place_habit", habit}, {"liking", findings.liking ? likingOf(*findings.liking) : Json(nullptr)},
          {"sureness_index", index}, {"deviations", deviations}, {"cautions", cautions}, {"pairs", pairs}};
}

Json makerOf(const words::Voice& voice, const RevealedSession& session, const insight::Findings& findings) {
  const words::MakerPart part = words::makerPart(voice, session, findings);
  Json people = Json::array(), flights = Json::array();
  for (const words::PersonRow& row : part.people) people.push_back({{"who", row.who}, {"right", row.right}});
  for (const FlightRow& row : flightRows(session)) {
    Json picks = Json::array();
    for (const Position pick : row.picks) picks.push_back(pick.value);
    flights.push_back({{"who", row.who}, {"maker", row.isMaker}, {"round", row.round.value}, {"poured", row.poured},
                       {"chosen", row.picks.size() == 1 ? Json(row.picks[0].value) : Json(nullptr)}, {"picks", picks},
                       {"said_same", orNull(row.saidSame)}, {"preferred", row.preferred ? Json(row.preferred->value) : Json(nullptr)}, {"preferred_none", row.preferredNone},
                       {"counts", row.counts}, {"right", orNull(row.right)},
                       {"voided", row.voided ? Json(nameOf(*row.voided)) : Json(nullptr)}, {"sureness", row.sureness ? Json(nameOf(*row.sureness)) : Json(nullptr)},
                       {"clue", row.clue ? Json(nameOf(*row.clue)) : Json(nullptr)}});
  }
  return {{"makers", part.makers}, {"people", people}, {"only_in_sums", textOrNull(part.onlyInSums)}, {"people_differ", textOrNull(part.differ)},
          {"flights", flights}, {"remarks", part.remarks}, {"said", part.said}};
}

}  // namespace

std::string json(const words::Voice& voice, const RevealedSession& session, const insight::Findings& findings, For whom) {
  requireOpen(session);
  const words::CameOut out = words::cameOut(voice, session, findings);
  Json report = headOf(session);
  report["conclusion"] = conclusionOf(out, findings);
  report["plan"] = planOf(session.plan);
  report["promises"] = promisesOf(session);
  report["decision"] = textOrNull(session.decision);
  report["findings"] = findingsOf(voice, session.plan, findings);
  report["power_before"] = powerOf(voice, session.plan);
  report["tasters"] = tastersOf(session);
  report["orders"] = ordersOf(session);
  report["record"] = recordOf(session);
  if (whom == For::maker) report["maker"] = makerOf(voice, session, findings);
  return report.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

}  // namespace oddglass::report
