// Rules of recommending: a named thing goes to a directional pair, otherwise a tetrad, or a triangle where cups are dear (sensory texts, *common practice*).
#include "domain/flight_form.h"
#include "planning/chances.h"
#include "planning/recommend.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace oddglass;
using namespace oddglass::planning;
using Catch::Matchers::WithinAbs;

namespace {

Setup tableOf(int panel, std::size_t lots = 2) {
  Setup setup;
  setup.panel = panel;
  setup.cupMl = 15;
  setup.lots.assign(lots, {500, 500, 40});
  return setup;
}

bool has(const Choice& choice, Because because) { return std::ranges::find(choice.because, because) != choice.because.end(); }

const Choice& of(const Recommendation& recommendation, Method method) {
  return *std::ranges::find(recommendation.choices, method, &Choice::method);
}

}  // namespace

TEST_CASE("nothing named and nothing in the way: a tetrad, then a triangle") {
  const Recommendation recommendation = recommend(Question::differ, tableOf(6));
  CHECK(recommendation.best().method == Method::tetrad);
  CHECK(has(recommendation.best(), Because::natureUnknown));
  CHECK(recommendation.choices[1].method == Method::triangle);
  CHECK(recommendation.best().chance > recommendation.choices[1].chance);
  // The chance of the triangle is that of half of people: P(5 or 6 of 6 | 2/3).
  CHECK_THAT(recommendation.choices[1].chance, WithinAbs(6 * std::pow(2.0 / 3, 5) / 3 + std::pow(2.0 / 3, 6), 1e-9));
  CHECK(recommendation.choices.size() == 8);  // all but preference
  for (const Choice& choice : recommendation.choices) CHECK_FALSE(choice.because.empty());
}

TEST_CASE("strong, lingering, little liquid or the ceiling: three cups, and it says which") {
  const auto best = [](auto&& change) {
    Setup setup = tableOf(6);
    change(setup);
    return recommend(Question::differ, setup).best();
  };
  const Choice strong = best([](Setup& setup) { setup.cupMl = 5, setup.lots[1].abvBp = 2000; });
  CHECK(strong.method == Method::triangle);
  CHECK(has(strong, Because::strong));
  const Choice lingering = best([](Setup& setup) { setup.lingers = true; });
  CHECK(lingering.method == Method::triangle);
  CHECK(has(lingering, Because::lingers));
  // Six places: 9 cups of a lot by triangles, 12 by tetrads; 135 mL are there, 180 mL would be needed.
  const Choice little = best([](Setup& setup) { setup.lots.assign(2, {500, 135, 1}); });
  CHECK(little.method == Method::triangle);
  CHECK(has(little, Because::littleLiquid));
  // 4 cups of 50 mL at 13 %: 20.5 g; three are 15.4 g.
  const Choice ceiling = best([](Setup& setup) { setup.cupMl = 50, setup.lots.assign(2, {1300, 750, 40}); });
  CHECK(ceiling.method == Method::triangle);
  CHECK(has(ceiling, Because::ceiling));
  CHECK(best([](Setup& setup) { setup.lots[1].abvBp = 1999, setup.cupMl = 5; }).method == Method::tetrad);
}

TEST_CASE("a named thing: the directional pair before the 3-AFC, with the better chance than a tetrad") {
  Setup setup = tableOf(6);
  setup.thingNamed = true;
  for (const Question question : {Question::more, Question::differ}) {
    const Recommendation recommendation = recommend(question, setup);
    CHECK(recommendation.best().method == Method::pair);
    CHECK(has(recommendation.best(), Because::thingNamed));
    CHECK(recommendation.choices[1].method == Method::threeAfc);
  }
  CHECK(recommend(Question::more, setup).choices.size() == 2);
  const Recommendation all = recommend(Question::differ, setup);
  CHECK(of(all, Method::threeAfc).chance > of(all, Method::triangle).chance);
  setup.thingNamed = false;
  CHECK(has(recommend(Question::more, setup).best(), Because::needsAName));
}

TEST_CASE("a known difference: by its name first, then by which cups belong together, always where guessing has a chance") {
  const Recommendation recommendation = recommend(Question::notice, tableOf(6));
  CHECK(recommendation.best().method == Method::pair);
  CHECK(has(recommendation.best(), Because::thingNamed));
  CHECK(recommendation.choices.size() == 6);
  for (const Choice& choice : recommendation.choices) {
    CHECK(hasGuessing(choice.method));
    CHECK_FALSE(choice.because.empty());
    CHECK_FALSE(has(choice, Because::natureUnknown));
  }
}

TEST_CASE("a preference is asked by a preference, and fewer than six people are told") {
  CHECK(recommend(Question::prefer, tableOf(6)).choices.size() == 1);
  CHECK(recommend(Question::prefer, tableOf(6)).best().method == Method::preference);
  CHECK_FALSE(has(recommend(Question::prefer, tableOf(6)).best(), Because::tooFewVotes));
  const Choice five = recommend(Question::prefer, tableOf(5)).best();
  CHECK(has(five, Because::tooFewVotes));
  CHECK_FALSE(five.needed);
  CHECK_THAT(recommend(Question::prefer, tableOf(6)).best().chance, WithinAbs(std::pow(0.9, 6), 1e-12));
}

TEST_CASE("two lots of the reference: one target, or three comparisons, each with its price") {
  Setup setup = tableOf(6, 3);
  setup.lingers = true;
  const Recommendation recommendation = recommend(Question::differ, setup);
  REQUIRE(recommendation.references);
  const TwoReferences& two = *recommendation.references;
  CHECK(recommendation.best().method == Method::triangle);
  CHECK(two.oneTarget.amounts.cupsPerPerson == 3);
  CHECK(two.three.amounts.cupsPerPerson == 9);
  CHECK(two.three.amounts.mlPerPerson == 135);
  CHECK_THAT(*two.three.amounts.grams, WithinAbs(135 * 0.05 * 0.789, 1e-9));
  CHECK(two.oneTarget.needed == 5);
  CHECK(two.neededInTurn == std::vector<std::optional<int>>{6, 5, 5});
  CHECK(two.oneTarget.chance > two.three.chance);
  CHECK(two.oneIsBetter);
  CHECK_FALSE(recommend(Question::differ, tableOf(10, 3)).references->oneIsBetter);
  for (const Choice& choice : recommendation.choices) CHECK(comparesThree(choice.method));
  CHECK_FALSE(recommend(Question::differ, tableOf(6)).references);
}

TEST_CASE("the setup's own method plays no part") {
  Setup setup = tableOf(8);
  const Recommendation first = recommend(Question::differ, setup);
  setup.method = Method::sameDifferent;
  setup.marked = Slot{2};
  setup.expected = Slot{1};
  const Recommendation second = recommend(Question::differ, setup);
  REQUIRE(first.choices.size() == second.choices.size());
  for (std::size_t i = 0; i < first.choices.size(); ++i) {
    CHECK(first.choices[i].method == second.choices[i].method);
    CHECK(first.choices[i].chance == second.choices[i].chance);
  }
}
