#include "planning/recommend.h"

#include "domain/by_hand.h"
#include "domain/flight_form.h"
#include "planning/chances.h"
#include "planning/flight_cups.h"

#include <algorithm>

namespace oddglass::planning {

namespace {

constexpr int fewestVotes = 6;        // 5 to 0 has a two-sided p of 1/16
constexpr int fewForThree = 10;

Setup with(const Setup& setup, Method method) {
  Setup then = setup;
  then.method = method;
  if (!namesAThing(method)) then.expected.reset();
  then.marked = method == Method::aNotA ? std::optional(setup.marked.value_or(Slot{1})) : std::nullopt;
  if (!hasGuessing(method)) then.stopping.reset();
  return then;
}

bool hasEnough(const Amounts& amounts) { return std::ranges::all_of(amounts.lots, &LotAmount::enough); }

Choice choiceOf(const Setup& setup, Method method, std::vector<Because> because) {
  const Setup then = with(setup, method);
  const Size size = sizeOf(then);
  // Half of people in a triangle, put through d': shares of one method say nothing about another.
  const Difference difference = differenceOfDPrime(method, dPrimeOfShare(Method::triangle, 500)).value_or(Difference{0.9});
  Choice choice;
  choice.method = method;
  choice.because = std::move(because);
  choice.needed = neededInTurn(then, size).front();
  choice.chance = chanceOf(then, size, difference).chance;
  choice.amounts = amountsOf(then);
  choice.enoughBottles = hasEnough(choice.amounts);
  return choice;
}

// Why fewer cups are better here; empty when nothing speaks against four.
std::vector<Because> againstFourCups(const Setup& setup) {
  std::vector<Because> reasons;
  if (isStrong(setup)) reasons.push_back(Because::strong);
  if (setup.lingers) reasons.push_back(Because::lingers);
  const Amounts four = amountsOf(with(setup, Method::tetrad)), three = amountsOf(with(setup, Method::triangle));
  if (!hasEnough(four) && hasEnough(three)) reasons.push_back(Because::littleLiquid);
  if (four.aboveCeiling && !three.aboveCeiling) reasons.push_back(Because::ceiling);
  return reasons;
}

std::vector<Because> joined(std::vector<Because> first, const std::vector<Because>& second) {
  first.insert(first.end(), second.begin(), second.end());
  return first;
}

std::vector<Choice> named(const Setup& setup) {
  std::vector<Because> pair{setup.thingNamed ? Because::thingNamed : Because::needsAName, Because::fewerCups}, three{pair.front(), Because::moreCups};
  return {choiceOf(setup, Method::pair, pair), choiceOf(setup, Method::threeAfc, three)};
}

std::vector<Choice> unnamed(const Setup& setup) {
  const auto against = againstFourCups(setup);
  std::vector<Choice> choices;
  const Choice tetrad = choiceOf(setup, Method::tetrad, against.empty() ? std::vector{Because::natureUnknown, Because::findsMost} : std::vector{Because::moreCups});
  if (against.empty()) choices.push_back(tetrad);
  choices.push_back(choiceOf(setup, Method::triangle, against.empty() ? std::vector{Because::fewerCups, Because::findsLess} : joined({Because::natureUnknown, Because::fewerCups}, against)));
  choices.push_back(choiceOf(setup, Method::duoTrio, {Because::knownDrink, Because::findsLess}));
  if (!against.empty()) choices.push_back(tetrad);
  if (setup.comparisons() > 1) return choices;
  if (!setup.thingNamed) {
    const auto more = named(setup);
    choices.insert(choices.end(), more.begin(), more.end());
  }
  choices.push_back(choiceOf(setup, Method::sameDifferent, {Because::fewerCups, Because::readiness}));
  choices.push_back(choiceOf(setup, Method::aNotA, {Because::knownDrink, Because::readiness}));
  choices.push_back(choiceOf(setup, Method::twoOutOfFive, {Because::moreCups}));
  return choices;
}

std::vector<Choice> preferred(const Setup& setup) {
  std::vector<Because> because{Because::oneVote};
  if (setup.counting() < fewestVotes) because.push_back(Because::tooFewVotes);
  return {choiceOf(setup, Method::preference, because)};
}

TwoReferences referencesOf(const Setup& setup, const Choice& three) {
  TwoReferences both;
  both.three = three;
  both.neededInTurn = neededInTurn(with(setup, three.method), sizeOf(setup));
  both.trials = sizeOf(setup).trials();
  both.oneIsBetter = setup.counting() < fewForThree;
  for (const auto& lots : comparedLots(setup)) {
    Setup pair = setup;
    pair.lots = {setup.lots[static_cast<std::size_t>(lots[0])], setup.lots[static_cast<std::size_t>(lots[1])]};
    both.pairs.push_back({lots, choiceOf(pair, three.method, three.because)});
  }
  both.oneTarget = std::ranges::max(both.pairs, {}, [](const PairChoice& pair) { return pair.choice.amounts.grams.value_or(0.0); }).choice;
  return both;
}

}  // namespace

Recommendation recommend(Question question, const Setup& given) {
  requireSetup(given);
  Recommendation result;
  // Three lots are compared by what needs no named thing.
  const bool three = given.lots.size() == 3;
  Setup setup = given;
  if (three) setup.stopping.reset();
  // A score sheet is the one way to ask what a drink is like by itself; what it can find stands in planning/gap.h.
  if (question == Question::good || question == Question::lacks) return result;
  if (question == Question::prefer && !three) {
    result.choices = preferred(setup);
    return result;
  }
  // What is known beforehand has a name.
  if (question == Question::notice) setup.thingNamed = true;
  if (!three && (question == Question::more || setup.thingNamed)) result.choices = named(setup);
  if (question != Question::more || three) {
    const auto more = unnamed(setup);
    result.choices.insert(result.choices.end(), more.begin(), more.end());
  }
  std::erase_if(result.choices, [&](const Choice& choice) { return !answers(choice.method, question) || !mayHide(given.routine, choice.method); });
  if (question == Question::notice)
    for (Choice& choice : result.choices) std::erase(choice.because, Because::natureUnknown);
  if (three && !result.choices.empty()) result.references = referencesOf(setup, result.best());
  return result;
}

}  // namespace oddglass::planning
