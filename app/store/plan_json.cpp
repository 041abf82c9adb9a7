#include "store/plan_json.h"

#include "domain/names.h"
#include "store/json_parts.h"
#include "store/sheet_json.h"

namespace oddglass::store {
namespace {

using canon::Json;
using namespace parts;

Json lotJson(const PlannedLot& lot) {
  Json allergens = Json::array();
  for (Allergen each : lot.ingredients.allergens) allergens.push_back(nameOf(each));
  Json json{{"slot", lot.slot.value}, {"lot", lot.lot.text}, {"beverage", lot.beverageName}, {"name", lot.lotName},
          {"origin", nameOf(lot.origin)}, {"kind", nameOf(lot.kind)}, {"abv_bp", maybe(lot.abvBp)},
          {"ingredients", nameOf(lot.ingredients.how)}, {"allergens", allergens}, {"bottle_ml", lot.bottleMl},
          {"packaged_on", lot.packagedOn}, {"best_before", lot.bestBefore}, {"storage", lot.storage}};
  if (lot.role != LotRole::compared) json["role"] = nameOf(lot.role);
  return json;
}

PlannedLot lotFrom(const Json& json) {
  onlyKeys(json, {"slot", "lot", "beverage", "name", "origin", "kind", "abv_bp", "ingredients", "allergens", "bottle_ml", "packaged_on",
                  "best_before", "storage", "role"});
  PlannedLot lot;
  lot.slot = {whole(json, "slot")};
  lot.lot = {text(json, "lot")};
  lot.beverageName = text(json, "beverage");
  lot.lotName = text(json, "name");
  lot.origin = choice<Origin>(json, "origin");
  lot.kind = choice<Kind>(json, "kind");
  lot.abvBp = maybeWhole(json, "abv_bp");
  lot.ingredients.how = choice<IngredientsKnown>(json, "ingredients");
  for (const Json& each : list(json, "allergens")) {
    const auto allergen = each.is_string() ? named<Allergen>(each.get<std::string>()) : std::nullopt;
    if (!allergen) refuse("allergens", "has an entry that is none of the list");
    lot.ingredients.allergens.insert(*allergen);
  }
  lot.bottleMl = whole(json, "bottle_ml");
  lot.packagedOn = text(json, "packaged_on");
  lot.bestBefore = text(json, "best_before");
  lot.storage = text(json, "storage");
  if (json.contains("role")) lot.role = choice<LotRole>(json, "role");
  return lot;
}

Json servingJson(const Serving& serving) {
  Json json = Json::object();
  if (!serving.vessel.empty()) json["vessel"] = serving.vessel;
  if (serving.temperatureC) json["temperature_c"] = *serving.temperatureC;
  if (serving.mouthful) json["mouthful"] = nameOf(*serving.mouthful);
  return json;
}

Serving servingFrom(const Json& json) {
  onlyKeys(json, {"vessel", "temperature_c", "mouthful"});
  Serving serving;
  if (json.contains("vessel")) serving.vessel = text(json, "vessel");
  if (json.contains("temperature_c")) serving.temperatureC = whole(json, "temperature_c");
  if (json.contains("mouthful")) serving.mouthful = choice<Mouthful>(json, "mouthful");
  if (serving == Serving{}) refuse("serving", "is empty");
  return serving;
}

/// What only some methods have, the same in plans and drafts. Written only where it is there, so that the text of a plan without it stays as it was.
template <class AnyPlan>
void writeExtras(Json& json, const AnyPlan& plan) {
  if (!plan.attribute.empty()) json["attribute"] = plan.attribute;
  if (plan.expected) json["expected"] = plan.expected->value;
  if (!plan.dose.empty()) json["dose"] = plan.dose;
  if (plan.marked) json["marked"] = plan.marked->value;
  if (plan.mayHaveNone) json["may_have_none"] = true;
  if (plan.alsoPrefer) json["also_prefer"] = true;
  if (plan.stopping) json["stopping"] = {{"share_pm", plan.stopping->sharePm}, {"beta_pm", plan.stopping->betaPm}};
  if (plan.evenings != 1) json["evenings"] = plan.evenings;
  if (plan.wave != 0) json["wave"] = plan.wave;
  if (plan.expectationPc) json["expectation_pc"] = *plan.expectationPc;
  if (plan.serving != Serving{}) json["serving"] = servingJson(plan.serving);
  if (plan.routine != Routine::pourer) json["routine"] = nameOf(plan.routine);
  if (plan.giveAways) {
    Json found = Json::object();
    for (const auto& [giveAway, wayOut] : *plan.giveAways) found[std::string(nameOf(giveAway))] = nameOf(wayOut);
    json["give_aways"] = found;
  }
}

GiveAways giveAwaysFrom(const Json& json) {
  if (!json.is_object()) refuse("give_aways", "is no object");
  GiveAways all;
  for (const auto& [key, value] : json.items()) {
    const auto giveAway = named<GiveAway>(key);
    if (!giveAway) refuse("give_aways", "knows no " + key);
    all[*giveAway] = choice<WayOut>(json, key.c_str());
  }
  return all;
}

template <class AnyPlan>
void readExtras(AnyPlan& plan, const Json& json) {
  if (json.contains("attribute")) plan.attribute = text(json, "attribute");
  if (json.contains("expected")) plan.expected = Slot{whole(json, "expected")};
  if (json.contains("dose")) plan.dose = text(json, "dose");
  if (json.contains("marked")) plan.marked = Slot{whole(json, "marked")};
  if (json.contains("may_have_none")) plan.mayHaveNone = truth(json, "may_have_none");
  if (json.contains("also_prefer")) plan.alsoPrefer = truth(json, "also_prefer");
  if (json.contains("stopping")) {
    const Json& stopping = at(json, "stopping");
    plan.stopping = Stopping{whole(stopping, "share_pm"), whole(stopping, "beta_pm")};
    onlyKeys(stopping, {"share_pm", "beta_pm"});
  }
  if (json.contains("evenings")) plan.evenings = whole(json, "evenings");
  if (json.contains("wave")) plan.wave = whole(json, "wave");
  if (json.contains("expectation_pc")) plan.expectationPc = whole(json, "expectation_pc");
  if (json.contains("serving")) plan.serving = servingFrom(at(json, "serving"));
  if (json.contains("routine")) plan.routine = choice<Routine>(json, "routine");
  if (json.contains("give_aways")) plan.giveAways = giveAwaysFrom(at(json, "give_aways"));
}

Json cupJson(const Cup& cup) {
  Json json{{"code", cup.code.value}, {"place", cup.place.value}, {"round", cup.round.value}, {"position", cup.position.value}, {"spare", cup.spare}};
  if (cup.bottle > 0) json["bottle"] = cup.bottle;
  return json;
}

/// The name of the test that a plan's analysis uses.
const char* testOf(const Plan& plan) {
  if (plan.stopping) return "sequential_ratio";
  if (plan.method == Method::sheet) return "by_taster";
  if (plan.method == Method::preference) return "sign_test";
  if (plan.method == Method::sameDifferent || plan.method == Method::aNotA) return "fisher_exact";
  return "exact_binomial";
}

}  // namespace

Json planJson(const Plan& plan) {
  Json lots = Json::array(), items = Json::array(), cups = Json::array(), promises = Json::object();
  for (const PlannedLot& lot : plan.lots) lots.push_back(lotJson(lot));
  for (const SheetItem& item : plan.items) items.push_back(itemJson(item));
  for (const Cup& cup : plan.cups)
    cups.push_back(cupJson(cup));
  for (const auto& [outcome, digest] : plan.promiseDigests) promises[std::string(nameOf(outcome))] = digest;
  Json json{{"question", nameOf(plan.question)},
          {"method", nameOf(plan.method)},
          {"claim", nameOf(plan.claim)},
          {"analysis", {{"test", testOf(plan)}, {"seeks", nameOf(plan.sought)}, {"alpha_pm", plan.alphaPm}, {"limit_pm", maybe(plan.limitPm)}, {"gamma_pm", plan.gammaPm}}},
          {"rounds", plan.rounds},
          {"cup_ml", plan.cupMl},
          {"ceiling_g", plan.ceilingGrams},
          {"country", plan.country},
          {"panel", plan.panelPlanned},
          {"makers", plan.makersPlanned},
          {"places", plan.places},
          {"spares", plan.spares},
          {"pourer", plan.hasPourer},
          {"lots", lots},
          {"items", items},
          {"cups", cups},
          {"promises", promises}};
  writeExtras(json, plan);
  if (plan.sheet) json["sheet"] = sheetPlanJson(*plan.sheet);
  return json;
}

Plan planFrom(const Json& json) {
  onlyKeys(json, {"question", "method", "claim", "analysis", "rounds", "cup_ml", "ceiling_g", "country", "panel", "makers", "places", "spares",
                  "pourer", "lots", "items", "cups", "promises", "attribute", "expected", "dose", "marked", "may_have_none", "also_prefer", "stopping",
                  "evenings", "wave", "expectation_pc", "sheet", "routine", "give_aways", "serving"});
  Plan plan;
  plan.question = choice<Question>(json, "question");
  plan.method = choice<Method>(json, "method");
  plan.claim = choice<Claim>(json, "claim");
  const Json& analysis = at(json, "analysis");
  onlyKeys(analysis, {"test", "seeks", "alpha_pm", "limit_pm", "gamma_pm"});
  readExtras(plan, json);
  if (json.contains("sheet")) plan.sheet = sheetPlanFrom(at(json, "sheet"));
  if (text(analysis, "test") != testOf(plan)) refuse("test", "does not go with the method: " + text(analysis, "test"));
  plan.sought = choice<Sought>(analysis, "seeks");
  plan.alphaPm = whole(analysis, "alpha_pm");
  plan.limitPm = maybeWhole(analysis, "limit_pm");
  plan.gammaPm = whole(analysis, "gamma_pm");
  plan.rounds = whole(json, "rounds");
  plan.cupMl = whole(json, "cup_ml");
  plan.ceilingGrams = whole(json, "ceiling_g");
  plan.country = text(json, "country");
  plan.panelPlanned = whole(json, "panel");
  plan.makersPlanned = whole(json, "makers");
  plan.places = whole(json, "places");
  plan.spares = whole(json, "spares");
  plan.hasPourer = truth(json, "pourer");
  for (const Json& each : list(json, "lots")) plan.lots.push_back(lotFrom(each));
  for (const Json& each : list(json, "items")) plan.items.push_back(itemFrom(each));
  for (const Json& each : list(json, "cups")) {
    onlyKeys(each, {"code", "place", "round", "position", "spare", "bottle"});
    plan.cups.push_back({{whole(each, "code")}, {whole(each, "place")}, {whole(each, "round")}, {whole(each, "position")}, whole(each, "spare"),
                         each.contains("bottle") ? whole(each, "bottle") : 0});
  }
  const Json& promises = at(json, "promises");
  if (!promises.is_object()) refuse("promises", "is no object");
  for (const auto& [key, value] : promises.items()) {
    const auto outcome = named<Outcome>(key);
    if (!outcome || !value.is_string()) refuse("promises", "knows no " + key);
    plan.promiseDigests[*outcome] = value.get<std::string>();
  }
  return plan;
}

Json draftJson(const Draft& draft) {
  Json lots = Json::array(), tasters = Json::array(), promises = Json::object();
  for (const LotId& each : draft.lots) lots.push_back(each.text);
  for (const TasterId& each : draft.tasters) tasters.push_back(each.text);
  for (const auto& [outcome, words] : draft.promises) promises[std::string(nameOf(outcome))] = words;
  Json json{{"question", nameOf(draft.question)}, {"method", nameOf(draft.method)}, {"lots", lots}, {"tasters", tasters},
          {"pourer", draft.pourer ? Json(draft.pourer->text) : Json(nullptr)}, {"pourer_name", draft.pourerName}, {"rounds", draft.rounds},
          {"cup_ml", draft.cupMl}, {"spares", draft.spares}, {"alpha_pm", draft.alphaPm}, {"seeks", nameOf(draft.sought)},
          {"limit_pm", maybe(draft.limitPm)}, {"promises", promises}, {"care_settled", draft.careSettled}};
  writeExtras(json, draft);
  if (draft.methodChosen) json["method_chosen"] = true;
  if (draft.lingers) json["lingers"] = true;
  if (draft.giveAwaysUnasked) json["give_aways_unasked"] = true;
  if (draft.method == Method::sheet || draft.sheet != SheetDraft{}) json["sheet"] = sheetDraftJson(draft.sheet);
  return json;
}

Draft draftFrom(const Json& json) {
  Draft draft;
  draft.question = choice<Question>(json, "question");
  draft.method = choice<Method>(json, "method");
  for (const Json& each : list(json, "lots")) draft.lots.push_back({each.get<std::string>()});
  for (const Json& each : list(json, "tasters")) draft.tasters.push_back({each.get<std::string>()});
  if (!at(json, "pourer").is_null()) draft.pourer = TasterId{text(json, "pourer")};
  draft.pourerName = text(json, "pourer_name");
  draft.rounds = whole(json, "rounds");
  draft.cupMl = whole(json, "cup_ml");
  draft.spares = whole(json, "spares");
  draft.alphaPm = whole(json, "alpha_pm");
  draft.sought = choice<Sought>(json, "seeks");
  draft.limitPm = maybeWhole(json, "limit_pm");
  for (const auto& [key, value] : at(json, "promises").items())
    if (const auto outcome = named<Outcome>(key)) draft.promises[*outcome] = value.get<std::string>();
  draft.careSettled = truth(json, "care_settled");
  readExtras(draft, json);
  if (json.contains("method_chosen")) draft.methodChosen = truth(json, "method_chosen");
  if (json.contains("give_aways_unasked")) draft.giveAwaysUnasked = truth(json, "give_aways_unasked");
  if (json.contains("lingers")) draft.lingers = truth(json, "lingers");
  if (json.contains("sheet")) draft.sheet = sheetDraftFrom(at(json, "sheet"));
  return draft;
}

}  // namespace oddglass::store
