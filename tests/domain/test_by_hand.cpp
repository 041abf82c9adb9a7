#include "domain/by_hand.h"
#include "domain/flight_form.h"
#include "domain/names.h"
#include "domain/trial.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <numeric>

using namespace oddglass;

namespace {

/// Every way in which the cups that hands pour can come to stand, each equally likely once they are mixed up: cup by cup, then the one set aside.
std::vector<std::vector<Slot>> everyMixing(const HandPoured& poured) {
  std::vector<Slot> cups;
  for (int slot = 1; slot <= 2; ++slot) cups.insert(cups.end(), static_cast<std::size_t>(poured.cups[static_cast<std::size_t>(slot) - 1]), Slot{slot});
  std::vector<std::size_t> order(cups.size());
  std::iota(order.begin(), order.end(), 0);
  std::vector<std::vector<Slot>> all;
  do {
    std::vector<Slot> stand;
    for (const std::size_t cup : order) stand.push_back(cups[cup]);
    all.push_back(stand);
  } while (std::next_permutation(order.begin(), order.end()));
  return all;
}

}  // namespace

// By counting all 24 mixings of two and two: the six orders of a triangle (ISO 4120) come up equally often, so a taster who cannot tell is right one time in
// three wherever they point; the same for the other methods with the orders and chance levels of ISO 6658 and ISO 5495.
TEST_CASE("cups mixed up by hand give every order of a method equally often") {
  const std::map<Method, std::pair<std::size_t, double>> expected{{Method::triangle, {6, 1.0 / 3}}, {Method::tetrad, {6, 1.0 / 3}}, {Method::pair, {2, 0.5}}, {Method::threeAfc, {3, 1.0 / 3}}};
  for (const auto& [method, facts] : expected) {
    INFO(nameOf(method));
    const auto poured = pouredByHand(Routine::alone, method, Slot{1});
    REQUIRE(poured);
    Plan plan;
    plan.method = method;
    plan.expected = Slot{1};
    std::map<std::vector<Slot>, int> orders;
    const std::vector<std::vector<Position>> guesses = method == Method::tetrad ? std::vector<std::vector<Position>>{{{1}, {2}}, {{1}, {3}}, {{1}, {4}}}
                                                                                : std::vector<std::vector<Position>>{{{1}}, {{2}}};
    std::vector<int> right(guesses.size());
    const auto mixings = everyMixing(*poured);
    for (const auto& stand : mixings) {
      RevealedFlight flight;
      flight.drawn.assign(stand.begin(), stand.begin() + formOf(method).cups);
      ++orders[flight.drawn];
      for (std::size_t guess = 0; guess < guesses.size(); ++guess) {
        flight.picks = guesses[guess];
        REQUIRE(isRight(plan, flight).has_value());
        right[guess] += *isRight(plan, flight) ? 1 : 0;
      }
    }
    CHECK(orders.size() == facts.first);
    for (const auto& [order, count] : orders) CHECK(count * facts.first == mixings.size());
    for (const int count : right) CHECK(count == static_cast<int>(facts.second * static_cast<double>(mixings.size()) + 0.5));
  }
}

TEST_CASE("what hands can hide") {
  const auto can = [](Routine routine) {
    std::vector<Method> methods;
    for (const Method method : allOf<Method>())
      if (mayHide(routine, method)) methods.push_back(method);
    return methods;
  };
  const std::vector<Method> byCup{Method::triangle, Method::duoTrio, Method::tetrad, Method::pair, Method::threeAfc, Method::preference};
  CHECK(can(Routine::pourer) == allOf<Method>());
  CHECK(can(Routine::alone) == byCup);
  CHECK(can(Routine::couple) == byCup);
  CHECK(can(Routine::die) == std::vector{Method::pair, Method::preference});
  CHECK(can(Routine::bottles) == std::vector{Method::pair, Method::preference, Method::sheet});
  CHECK(pouredByHand(Routine::couple, Method::triangle, std::nullopt) == HandPoured{{2, 2}, true});
  CHECK(pouredByHand(Routine::alone, Method::threeAfc, Slot{2}) == HandPoured{{2, 1}, false});
}

TEST_CASE("why hands cannot do a plan") {
  Draft draft;
  draft.lots = {LotId{"a"}, LotId{"b"}};
  draft.routine = Routine::alone;
  CHECK_FALSE(whyNotByHand(draft, 1, false));
  CHECK(whyNotByHand(draft, 2, false) == NotByHand::onlyOne);
  CHECK(whyNotByHand(draft, 1, true) == NotByHand::noPourer);
  const auto changed = [&](auto change) {
    Draft other = draft;
    change(other);
    return whyNotByHand(other, other.routine == Routine::alone ? 1 : 4, other.routine == Routine::die && other.pourer.has_value());
  };
  CHECK(changed([](Draft& d) { d.method = Method::twoOutOfFive; }) == NotByHand::method);
  CHECK(changed([](Draft& d) { d.lots.push_back(LotId{"c"}); }) == NotByHand::threeLots);
  CHECK(changed([](Draft& d) { d.method = Method::duoTrio; }) == NotByHand::eitherMarked);
  CHECK(changed([](Draft& d) { d.stopping = Stopping{}; }) == NotByHand::stopsEarly);
  CHECK(changed([](Draft& d) { d.spares = 1; }) == NotByHand::spares);
  CHECK(changed([](Draft& d) { d.routine = Routine::die; }) == NotByHand::method);
  CHECK(changed([](Draft& d) { d.routine = Routine::die, d.method = Method::pair; }) == NotByHand::needsPourer);
  CHECK_FALSE(changed([](Draft& d) { d.routine = Routine::die, d.method = Method::pair, d.pourer = TasterId{"o"}; }));
  CHECK(changed([](Draft& d) { d.routine = Routine::bottles, d.method = Method::pair, d.evenings = 2; }) == NotByHand::oneEvening);
  CHECK(changed([](Draft& d) { d.routine = Routine::bottles, d.method = Method::sheet, d.sheet.hasDuplicate = true; }) == NotByHand::duplicate);
  CHECK(changed([](Draft& d) { d.routine = Routine::bottles, d.method = Method::sheet, d.marked = Slot{1}; }) == NotByHand::markedSheet);
  draft.routine = Routine::couple;
  CHECK(whyNotByHand(draft, 1, false) == NotByHand::needsTwo);
  draft.routine = Routine::pourer;
  CHECK_FALSE(whyNotByHand(draft, 1, true));
}
