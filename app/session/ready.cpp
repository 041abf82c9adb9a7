#include "domain/by_hand.h"
#include "domain/expectation.h"
#include "domain/flight_form.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "planning/amounts.h"
#include "planning/give_aways.h"
#include "session/drafts.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace oddglass::session {

namespace {

void requireOnce(const DraftFacts& facts) {
  std::set<LotId> once;
  for (const DraftLot& each : facts.lots)
    if (!once.insert(each.lot.lot).second) throw Problem(Trouble::sameLotTwice, "lots", {{"lot", each.lot.beverageName + ", " + each.lot.lotName}});
}

// A score sheet: at least one lot that is coded, no more than one warm-up cup, a reference where the question is about one, and a sheet that can be asked.
void requireSheet(const DraftFacts& facts) {
  const Draft& draft = facts.draft;
  const auto howMany = [&](LotRole role) { return std::ranges::count_if(facts.lots, [&](const DraftLot& each) { return each.lot.role == role; }); };
  const auto refuse = [](const char* field) { throw Problem(Trouble::doesNotFit, field); };
  if (howMany(LotRole::compared) == 0) throw Problem(Trouble::needsALot, "lots");
  if (facts.lots.size() > 12) throw Problem(Trouble::outOfRange, "lots", {{"text", std::to_string(facts.lots.size())}, {"low", "1"}, {"high", "12"}});
  if (howMany(LotRole::warmUp) > 1) refuse("roles");
  if (draft.question == Question::lacks && howMany(LotRole::reference) == 0) throw Problem(Trouble::needsReference, "roles");
  if (draft.marked && (draft.marked->value > static_cast<int>(facts.lots.size()) || facts.lots[static_cast<std::size_t>(draft.marked->value) - 1].lot.role != LotRole::reference)) refuse("marked");
  requireOnce(facts);
  if (const auto item = firstImpossible(draft.sheet.items, draft.marked.has_value())) {
    if (*item == 0) throw Problem(Trouble::sheetEmpty, "items");
    throw Problem(Trouble::sheetImpossible, "items", {{"item", std::to_string(*item)}});
  }
  if (!draft.attribute.empty()) refuse("attribute");
  if (draft.expected) refuse("expected");
  if (!draft.dose.empty()) refuse("dose");
  if (draft.alsoPrefer) refuse("also_prefer");
  if (draft.mayHaveNone) refuse("may_have_none");
  if (draft.stopping) refuse("stopping");
  if (draft.sought != Sought::difference) refuse("seeks");
  if (draft.limitPm) refuse("limit_pm");
}

void requireLots(const DraftFacts& facts) {
  const std::size_t count = facts.lots.size();
  if (count < 2 || count > 3) throw Problem(Trouble::needsTwoLots, "lots");
  requireAnswered(facts.draft);
  if (count == 3 && facts.draft.question == Question::notice) throw Problem(Trouble::outOfRange, "lots", {{"text", "3"}, {"low", "2"}, {"high", "2"}});
  if (count == 3 && !comparesThree(facts.draft.method)) throw Problem(Trouble::needsThree, "method");
  requireOnce(facts);
}

// What only some methods have goes with the method, or is refused by name.
void requireExtras(const DraftFacts& facts) {
  const Draft& draft = facts.draft;
  const FlightForm form = formOf(draft.method);
  const auto refuse = [](const char* field) { throw Problem(Trouble::doesNotFit, field); };
  const bool isComparison = facts.lots.size() == 3;
  const bool holdsOne = holdsAThing(draft.method, draft.question);
  if (holdsOne && (draft.attribute.empty() || !draft.expected || draft.expected->value > 2)) throw Problem(Trouble::noAttribute, "attribute");
  if (!holdsOne && !draft.attribute.empty()) refuse("attribute");
  if (!holdsOne && draft.expected) refuse("expected");
  if (!draft.dose.empty() && draft.question != Question::notice) refuse("dose");
  if (draft.method == Method::aNotA && !draft.marked) throw Problem(Trouble::empty, "marked");
  if (draft.marked && (!form.hasMarked || isComparison)) refuse("marked");
  if (draft.alsoPrefer && !mayAlsoPrefer(draft.method)) refuse("also_prefer");
  if (draft.mayHaveNone && form.hasRight && !draft.alsoPrefer) refuse("may_have_none");
  if (draft.stopping && (!mayStopEarly(draft.method, facts.lots.size()) || draft.rounds < 2)) refuse("stopping");
  if (draft.sought != Sought::difference && (draft.stopping || !mayBeAlike(draft.method))) refuse("seeks");
}

void requireHands(const DraftFacts& facts) {
  const Draft& draft = facts.draft;
  const auto refuse = [&](NotByHand reason) {
    throw Problem(Trouble::notByHand, "routine", {{"routine", std::string(nameOf(draft.routine))}, {"reason", std::string(nameOf(reason))}});
  };
  if (const auto reason = whyNotByHand(draft, static_cast<int>(facts.panel.size() + facts.makers.size()), !facts.pourerName.empty())) refuse(*reason);
  if (draft.routine != Routine::bottles) return;
  const planning::Amounts amounts = planning::amountsOf(setupOf(facts));
  for (std::size_t i = 0; i < facts.lots.size(); ++i)
    if (facts.lots[i].lot.role != LotRole::warmUp && amounts.lots[i].bottles.value_or(1) > 1) refuse(NotByHand::oneBottle);
}

// A share of likelihood for something that can come out.
void requireExpected(const DraftFacts& facts) {
  std::vector<PlannedLot> lots;
  for (const DraftLot& each : facts.lots) lots.push_back(each.lot);
  if (!mayExpect(facts.draft.method, planning::claimOf(setupOf(facts)), lots, facts.draft.marked, facts.draft.sheet.items)) throw Problem(Trouble::doesNotFit, "expectation_pc");
}

}  // namespace

void requireAnswered(const Draft& draft) {
  if (!answers(draft.method, draft.question))
    throw Problem(Trouble::otherQuestion, "method", {{"question", std::string(nameOf(draft.question))}, {"method", std::string(nameOf(draft.method))}});
}

void requireReady(const DraftFacts& facts) {
  const Draft& draft = facts.draft;
  if (draft.title.empty()) throw Problem(Trouble::empty, "title");
  if (draft.method == Method::sheet) {
    requireSheet(facts);
  } else {
    requireLots(facts);
    requireExtras(facts);
  }
  if (draft.expectationPc) requireExpected(facts);
  if (draft.evenings > draft.rounds) throw Problem(Trouble::outOfRange, "evenings", {{"text", std::to_string(draft.evenings)}, {"low", "1"}, {"high", std::to_string(draft.rounds)}});
  if (draft.pourer && std::ranges::find(draft.tasters, *draft.pourer) != draft.tasters.end())
    throw Problem(Trouble::pourerTastes, "pourer", {{"name", facts.pourerName}});
  requireHands(facts);
  // Where a die says which cup gets what, a maker who does not taste may hold it.
  if (facts.pourerIsMaker && draft.routine != Routine::die) throw Problem(Trouble::makerPours, "pourer", {{"name", facts.pourerName}});
  if (facts.panel.empty() && facts.makers.size() != 1) throw Problem(Trouble::noPanel, "tasters");
  if (draft.sought != Sought::difference && !draft.limitPm) throw Problem(Trouble::alikeNeedsLimit, "limit_pm");
  for (const DraftLot& each : facts.lots)
    if (!each.lot.abvBp) throw Problem(Trouble::noStrength, "lots", {{"lot", each.lot.beverageName + ", " + each.lot.lotName}});
  const planning::Amounts amounts = planning::amountsOf(setupOf(facts));
  if (amounts.aboveCeiling)
    throw Problem(Trouble::aboveCeiling, "cup_ml", {{"grams", std::to_string(static_cast<int>(std::ceil(amounts.grams.value_or(0))))}, {"ceiling", std::to_string(facts.rules.ceilingGrams)}});
  for (std::size_t i = 0; i < facts.lots.size(); ++i) {
    const DraftLot& each = facts.lots[i];
    if (amounts.lots[i].enough) continue;
    throw Problem(Trouble::tooFewBottles, "lots", {{"have", std::to_string(std::max(0, each.freeBottles))}, {"need", std::to_string(amounts.lots[i].bottles.value_or(0))},
                                                   {"lot", each.lot.beverageName + ", " + each.lot.lotName}});
  }
  if (!draft.giveAways && !draft.giveAwaysUnasked) throw Problem(Trouble::giveAwaysOpen, "give_aways");
  if (const auto check = planning::firstUnfit(draft)) throw Problem(Trouble::giveAwayUnfit, "give_aways", {{"check", std::string(nameOf(*check))}});
  if (!draft.careSettled) throw Problem(Trouble::careNotHeard, "care");
}

}  // namespace oddglass::session
