#include "report/json.h"

#include "domain/names.h"
#include "report/made.h"

#include <nlohmann/json.hpp>

#include <cmath>

namespace oddglass::report {
namespace {

using Json = nlohmann::ordered_json;

template <class T>
Json orNull(const std::optional<T>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json number(double value) { return std::isfinite(value) ? Json(value) : Json(nullptr); }

Json textOrNull(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json lots(const Plan& plan) {
  Json all = Json::array();
  char letter = 'A';
  for (const PlannedLot& lot : plan.lots) {
    Json allergens = Json::array();
    for (const Allergen each : lot.ingredients.allergens) allergens.push_back(nameOf(each));
    all.push_back({{"letter", std::string(1, letter++)}, {"beverage", lot.beverageName}, {"lot", lot.lotName}, {"origin", nameOf(lot.origin)}, {"kind", nameOf(lot.kind)},
                   {"abv_bp", orNull(lot.abvBp)}, {"packaged_on", textOrNull(lot.packagedOn)}, {"best_before", textOrNull(lot.bestBefore)},
                   {"storage", textOrNull(lot.storage)}, {"bottle_ml", lot.bottleMl}, {"ingredients", nameOf(lot.ingredients.how)}, {"allergens", allergens}});
  }
  return all;
}

Json planOf(const Plan& plan) {
  return {{"question", nameOf(plan.question)}, {"method", nameOf(plan.method)}, {"claim", nameOf(plan.claim)}, {"sought", nameOf(plan.sought)},
          {"alpha_pm", plan.alphaPm}, {"limit_pm", orNull(plan.limitPm)}, {"gamma_pm", plan.gammaPm}, {"rounds", plan.rounds}, {"cup_ml", plan.cupMl},
          {"ceiling_grams", plan.ceilingGrams}, {"panel_planned", plan.panelPlanned}, {"makers_planned", plan.makersPlanned},
          {"places", plan.places}, {"spares", plan.spares}, {"has_pourer", plan.hasPourer}, {"lots", lots(plan)}};
}

Json readingOf(const insight::Reading& reading) {
  Json range = nullptr, missed = Json::array();
  if (reading.range)
    range = {{"low", number(reading.range->low)}, {"point", number(reading.range->point)}, {"high", number(reading.range->high)},
             {"level", number(reading.range->level)}, {"by", nameOf(reading.range->by)}};
  for (const insight::Missed& each : reading.missed) missed.push_back({{"share_pm", each.sharePm}, {"power", number(each.chance)}});
  Json made = {{"verdict", nameOf(reading.verdict)}, {"right", reading.right}, {"trials", reading.trials}, {"people", reading.people},
               {"expected", number(reading.expected)}, {"p_value", orNull(reading.pValue)}, {"needed", orNull(reading.needed)},
               {"largest_alike", orNull(reading.largest)}, {"alike_p_value", orNull(reading.alikeP)}, {"range", range}, {"power", missed}};
  if (reading.why) made["why"] = nameOf(*reading.why);
  return made;
}

Json conclusionOf(const words::CameOut& out, const insight::Findings& findings) {
  Json made = {{"verdict", nameOf(findings.verdict)}, {"weakened_by", nameOf(findings.weakenedBy)}, {"headline", out.headline}, {"first", out.first}, {"sentences", out.lines()}};
  if (findings.why) made["why"] = nameOf(*findings.why);
  return made;
}

Json findingsOf(const words::Voice& voice, const insight::Findings& findings) {
  const auto reading = [](const std::optional<insight::Reading>& each) { return each ? readingOf(*each) : Json(nullptr); };
  Json sureness = Json::array(), clues = Json::array(), deviations = Json::array(), cautions = Json::array();
  for (const auto& each : findings.sureness) sureness.push_back({{"sureness", nameOf(each.sureness)}, {"trials", each.trials}, {"right", each.right}});
  for (const auto& each : findings.clues) clues.push_back({{"clue", nameOf(each.clue)}, {"trials", each.trials}, {"right", each.right}});
  for (const auto& each : findings.deviations) deviations.push_back({{"kind", nameOf(each.kind)}, {"count", each.count}, {"sentence", words::deviationLine(voice, each)}});
  for (const auto each : findings.cautions) cautions.push_back(nameOf(each));
  return {{"flights", findings.flights}, {"missing", findings.missing}, {"voided", findings.voided}, {"all", readingOf(findings.all)},
          {"without_look_or_fizz", reading(findings.withoutLookOrFizz)}, {"without_said", reading(findings.withoutSaid)},
          {"without_either", reading(findings.withoutEither)}, {"mostly_by_look_or_fizz", findings.mostlyByLookOrFizz},
          {"sureness", sureness}, {"clues", clues}, {"deviations", deviations}, {"cautions", cautions}};
}

Json makerOf(const words::Voice& voice, const RevealedSession& session, const insight::Findings& findings) {
  const words::MakerPart part = words::makerPart(voice, session, findings);
  Json people = Json::array(), flights = Json::array();
  for (const words::PersonRow& row : part.people) people.push_back({{"who", row.who}, {"right", row.right}});
  for (const FlightRow& row : flightRows(session))
    flights.push_back({{"who", row.who}, {"maker", row.isMaker}, {"round", row.round.value}, {"poured", row.poured},
                       {"chosen", row.picks.size() == 1 ? Json(row.picks[0].value) : Json(nullptr)}, {"right", orNull(row.right)},
                       {"voided", row.voided ? Json(nameOf(*row.voided)) : Json(nullptr)}, {"sureness", row.sureness ? Json(nameOf(*row.sureness)) : Json(nullptr)},
                       {"clue", row.clue ? Json(nameOf(*row.clue)) : Json(nullptr)}});
  return {{"makers", part.makers}, {"people", people}, {"only_in_sums", textOrNull(part.onlyInSums)}, {"people_differ", textOrNull(part.differ)},
          {"flights", flights}, {"remarks", part.remarks}, {"said", part.said}};
}

}  // namespace

std::string json(const words::Voice& voice, const RevealedSession& session, const insight::Findings& findings, For whom) {
  requireOpen(session);
  const words::CameOut out = words::cameOut(voice, session, findings);
  Json orders = Json::array(), promises = Json::object();
  for (const OrderCount& each : ordersDealt(session)) orders.push_back({{"order", each.order}, {"flights", each.flights}});
  for (const auto& [outcome, text] : session.promises) promises[std::string(nameOf(outcome))] = textOrNull(text);
  Json report = {{"format", "oddglass-report"}, {"version", 1}, {"standard", "after ISO 4120:2021, not certified"},
                 {"session", {{"id", session.id.text}, {"title", session.title}, {"state", nameOf(session.state)}, {"came_from", nameOf(session.cameFrom)},
                              {"sealed_at", session.sealedAt}, {"revealed_at", session.revealedAt}}},
                 {"conclusion", conclusionOf(out, findings)}, {"plan", planOf(session.plan)}, {"promises", promises}, {"decision", textOrNull(session.decision)},
                 {"findings", findingsOf(voice, findings)}, {"orders", orders},
                 {"record", {{"commitment", session.commitment}, {"commitment_holds", session.commitmentHolds}, {"seal_mark", session.sealMark},
                             {"pour_sheet_openings", session.pourSheetOpenings}, {"erased", session.erasedPeople}}}};
  if (whom == For::maker) report["maker"] = makerOf(voice, session, findings);
  return report.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

}  // namespace oddglass::report
