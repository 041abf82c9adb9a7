#include "report/json_plan.h"

#include "domain/names.h"
#include "report/made.h"
#include "words/reading.h"
#include "words/report.h"

#include <algorithm>
#include <cmath>

namespace oddglass::report {

Json number(double value) { return std::isfinite(value) ? Json(value) : Json(nullptr); }

Json textOrNull(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json letter(const Plan& plan, const std::optional<Slot>& slot) { return slot ? Json(std::string(1, letterOf(plan, *slot))) : Json(nullptr); }

namespace {

Json lots(const Plan& plan) {
  Json all = Json::array();
  char letter = 'A';
  for (const PlannedLot& lot : plan.lots) {
    Json allergens = Json::array();
    for (const Allergen each : lot.ingredients.allergens) allergens.push_back(nameOf(each));
    all.push_back({{"letter", std::string(1, letter++)}, {"beverage", lot.beverageName}, {"lot", lot.lotName}, {"origin", nameOf(lot.origin)}, {"kind", nameOf(lot.kind)},
                   {"abv_bp", orNull(lot.abvBp)}, {"packaged_on", textOrNull(lot.packagedOn)}, {"best_before", textOrNull(lot.bestBefore)},
                   {"storage", textOrNull(lot.storage)}, {"bottle_ml", lot.bottleMl}, {"ingredients", nameOf(lot.ingredients.how)}, {"allergens", allergens}});
    if (plan.sheet) all.back()["role"] = nameOf(lot.role);
  }
  return all;
}

Json sheetOf(const Plan& plan) {
  Json items = Json::array();
  for (const SheetItem& item : plan.items)
    items.push_back({{"item", item.item.value}, {"kind", nameOf(item.kind)}, {"part", nameOf(item.part)}, {"word", textOrNull(item.word)}, {"per_cup", item.perCup}, {"required", item.required},
                     {"low", orNull(item.low)}, {"high", orNull(item.high)}, {"limit", orNull(item.limit)}, {"main", item.isMain}});
  return {{"duplicate", plan.sheet->hasDuplicate}, {"pause_s", plan.sheet->pauseSeconds}, {"cleanser", textOrNull(plan.sheet->cleanser)}, {"items", items}};
}

// Null where nobody looked before the seal.
Json giveAwaysOf(const Plan& plan) {
  if (!plan.giveAways) return nullptr;
  Json found = Json::object();
  for (const auto& [check, way] : *plan.giveAways) found[std::string(nameOf(check))] = nameOf(way);
  return found;
}

Json servingOf(const Serving& serving) {
  return {{"vessel", textOrNull(serving.vessel)}, {"temperature_c", orNull(serving.temperatureC)}, {"mouthful", serving.mouthful ? Json(nameOf(*serving.mouthful)) : Json(nullptr)}};
}

}  // namespace

Json planOf(const Plan& plan) {
  Json stopping = nullptr;
  if (plan.stopping) stopping = {{"share_pm", plan.stopping->sharePm}, {"beta_pm", plan.stopping->betaPm}};
  Json json = {{"question", nameOf(plan.question)}, {"method", nameOf(plan.method)}, {"claim", nameOf(plan.claim)}, {"sought", nameOf(plan.sought)},
          {"alpha_pm", plan.alphaPm}, {"limit_pm", orNull(plan.limitPm)}, {"gamma_pm", plan.gammaPm}, {"rounds", plan.rounds}, {"cup_ml", plan.cupMl},
          {"ceiling_grams", plan.ceilingGrams}, {"panel_planned", plan.panelPlanned}, {"makers_planned", plan.makersPlanned},
          {"places", plan.places}, {"spares", plan.spares}, {"has_pourer", plan.hasPourer}, {"attribute", textOrNull(plan.attribute)},
          {"expected", letter(plan, plan.expected)}, {"dose", textOrNull(plan.dose)}, {"marked", letter(plan, plan.marked)}, {"may_have_none", plan.mayHaveNone}, {"also_prefer", plan.alsoPrefer},
          {"stopping", stopping}, {"evenings", plan.evenings}, {"wave", plan.wave}, {"comparisons", plan.comparisons()}, {"give_aways", giveAwaysOf(plan)}, {"serving", servingOf(plan.serving)}, {"lots", lots(plan)}};
  if (plan.sheet) json["sheet"] = sheetOf(plan);
  if (plan.routine != Routine::pourer) json["routine"] = nameOf(plan.routine);
  return json;
}

Json headOf(const RevealedSession& session) {
  std::string standard;
  for (const std::string& each : words::standardsOf(session.plan)) standard += (standard.empty() ? "after " : ", ") + each;
  return {{"format", "oddglass-report"}, {"version", 1}, {"standard", (standard.empty() ? "common practice" : standard) + ", not certified"},
          {"session", {{"id", session.id.text}, {"title", session.title}, {"state", nameOf(session.state)}, {"came_from", nameOf(session.cameFrom)},
                       {"sealed_at", session.sealedAt}, {"revealed_at", session.revealedAt}}}};
}

Json promisesOf(const RevealedSession& session) {
  Json promises = Json::object();
  for (const auto& [outcome, text] : session.promises) promises[std::string(nameOf(outcome))] = textOrNull(text);
  return promises;
}

Json powerOf(const words::Voice& voice, const Plan& plan) { return words::powerBefore(voice, plan); }

Json tastersOf(const RevealedSession& session) {
  const auto makers = std::ranges::count(session.people, true, &ShownPerson::isMaker);
  Json before = nullptr;
  if (session.satBefore) before = {{"panel", session.satBefore->panel}, {"makers", session.satBefore->makers}};
  return {{"panel", std::ssize(session.people) - makers}, {"makers", makers}, {"answered_before", before}};
}

Json ordersOf(const RevealedSession& session) {
  Json orders = Json::array();
  for (const OrderCount& each : ordersDealt(session)) orders.push_back({{"order", each.order}, {"flights", each.flights}});
  return orders;
}

Json recordOf(const RevealedSession& session) {
  Json json{{"commitment", session.commitment}, {"commitment_holds", session.commitmentHolds}, {"seal_mark", session.sealMark},
            {"custody", session.plan.routine == Routine::pourer ? "drawn" : nameOf(session.plan.routine)}, {"pour_sheet_openings", session.pourSheetOpenings}, {"erased", session.erasedPeople},
            {"typed_in", {{"from_paper", session.typedIn.fromPaper}, {"from_file", session.typedIn.fromFile}, {"by_tasters", session.typedIn.byTasters}, {"by_others", session.typedIn.byOthers}}}};
  if (session.plan.routine == Routine::pourer) return json;
  json["key_read_by"] = Json::array();
  for (const ReadBy by : session.readBy) json["key_read_by"].push_back(nameOf(by));
  return json;
}

}  // namespace oddglass::report
