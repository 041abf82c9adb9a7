#include "session/follow.h"

#include "domain/by_hand.h"
#include "domain/flight_form.h"
#include "planning/give_aways.h"

namespace oddglass::session {

namespace {

// The brewer's own lot among the two that are compared.
Slot ownLot(const Draft& draft, const DraftFacts& facts) {
  for (std::size_t i = 0; i < facts.lots.size() && i < draft.lots.size(); ++i)
    if (facts.lots[i].lot.origin == Origin::batch && draft.lots[i] == facts.lots[i].lot.lot) return Slot{static_cast<int>(i) + 1};
  return Slot{1};
}

// A score sheet has nothing of what compares cups.
void fitSheet(Draft& draft) {
  draft.attribute.clear();
  draft.expected.reset();
  draft.dose.clear();
  draft.alsoPrefer = draft.mayHaveNone = false;
  draft.stopping.reset();
  draft.sought = Sought::difference;
  draft.limitPm.reset();
  if (draft.evenings > draft.rounds) draft.evenings = draft.rounds;
}

// Nobody stands by who knows, unless it is whoever throws the die; alone nobody comes late.
void fitHands(Draft& draft, const DraftFacts& facts) {
  draft.stopping.reset();
  if (draft.routine != Routine::die) {
    draft.pourer.reset();
    draft.pourerName.clear();
  }
  if (draft.routine == Routine::alone) draft.spares = 0;
  if (draft.method == Method::duoTrio && !draft.marked) draft.marked = Slot{3 - ownLot(draft, facts).value};
  if (draft.method == Method::sheet) {
    draft.sheet.hasDuplicate = false;
    draft.marked.reset();
  }
}

}  // namespace

std::optional<planning::Recommendation> recommendationFor(const DraftFacts& facts) {
  const planning::Setup setup = setupOf(facts);
  // A score sheet is the only way to ask its questions.
  if (setup.sheet) return std::nullopt;
  if (setup.lots.size() < 2 || setup.lots.size() > 3 || setup.counting() == 0) return std::nullopt;
  auto found = planning::recommend(facts.draft.question, setup);
  return found.choices.empty() ? std::nullopt : std::optional(std::move(found));
}

namespace {

void fitComparison(Draft& draft, const DraftFacts& facts) {
  if (draft.question != Question::differ && draft.lots.size() > 2) draft.lots.resize(2);
  const bool isThree = draft.lots.size() == 3;
  if (isThree && !comparesThree(draft.method)) {
    draft.method = Method::triangle;
    draft.methodChosen = false;
  }
  const FlightForm form = formOf(draft.method);
  if (draft.question != Question::notice) draft.dose.clear();
  if (!holdsAThing(draft.method, draft.question)) {
    draft.attribute.clear();
    draft.expected.reset();
  } else if (!draft.expected || draft.expected->value > 2) {
    draft.expected = ownLot(draft, facts);
  }
  if (!form.hasMarked || isThree) draft.marked.reset();
  else if (draft.method == Method::aNotA && !draft.marked) draft.marked = Slot{3 - ownLot(draft, facts).value};
  if (!mayAlsoPrefer(draft.method) || isThree) draft.alsoPrefer = false;
  if (form.hasRight && !draft.alsoPrefer) draft.mayHaveNone = false;
  if (!mayStopEarly(draft.method, draft.lots.size()) || draft.rounds < 2) draft.stopping.reset();
  if (!mayBeAlike(draft.method) || draft.stopping) {
    draft.sought = Sought::difference;
    draft.limitPm.reset();
  }
  if (draft.evenings > draft.rounds) draft.evenings = draft.rounds;
}

}  // namespace

void fit(Draft& draft, const DraftFacts& facts) {
  if (!isDrawn(draft.routine)) fitHands(draft, facts);
  if (draft.method == Method::sheet) fitSheet(draft);
  else fitComparison(draft, facts);
  if (planning::firstUnfit(draft)) draft.giveAways.reset();
}

std::optional<Method> methodToFollow(const Draft& draft, const std::optional<planning::Recommendation>& recommendation) {
  if (draft.methodChosen || !recommendation || recommendation->best().method == draft.method) return std::nullopt;
  return recommendation->best().method;
}

}  // namespace oddglass::session
