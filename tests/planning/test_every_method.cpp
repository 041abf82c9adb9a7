// Amounts of every method: the worst case beside all ways to deal.
#include "blinding/orders.h"
#include "domain/flight_form.h"
#include "domain/names.h"
#include "planning/amounts.h"
#include "planning/flight_cups.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using namespace oddglass::planning;
using Catch::Matchers::WithinAbs;

namespace {

Setup setupOf(Method method, int panel, int rounds = 1) {
  Setup setup;
  setup.method = method;
  setup.panel = panel;
  setup.rounds = rounds;
  setup.lots = {{1200, 750, 99}, {600, 330, 99}};
  return setup;
}

/// Every method with every choice of expected or marked lot.
std::vector<Setup> allSetups(int panel) {
  std::vector<Setup> all;
  for (const Method method : comparingMethods())
    for (const std::optional<Slot>& lot : {std::optional<Slot>{}, std::optional(Slot{1}), std::optional(Slot{2})}) {
      Setup setup = setupOf(method, panel);
      if (namesAThing(method)) setup.expected = lot;
      else if (formOf(method).hasMarked) setup.marked = lot;
      else if (lot) continue;
      all.push_back(setup);
    }
  return all;
}

int cupsOf(Slot lot, const std::vector<Slot>& order) { return static_cast<int>(std::ranges::count(order, lot)); }

/// Most cups of a lot over `places`, by trying every choice of orders for the block that is not full.
int mostByTrying(const std::vector<std::vector<Slot>>& orders, Slot lot, int places) {
  const int kinds = static_cast<int>(orders.size()), left = places % kinds;
  int block = 0;
  for (const auto& order : orders) block += cupsOf(lot, order);
  std::vector<bool> taken(orders.size(), false);
  std::fill(taken.end() - left, taken.end(), true);
  int most = 0;
  do {
    int sum = 0;
    for (std::size_t k = 0; k < orders.size(); ++k)
      if (taken[k]) sum += cupsOf(lot, orders[k]);
    most = std::max(most, sum);
  } while (std::next_permutation(taken.begin(), taken.end()));
  return places / kinds * block + most;
}

}  // namespace

// The orders are those that the seal draws from (blinding); the count is by brute force.
TEST_CASE("what a lot must give is the worst of all ways to deal, for every method") {
  for (const Setup& setup : allSetups(1)) {
    const auto orders = blinding::ordersOf({setup.method, setup.expected, setup.marked});
    for (int places = 1; places <= 23; ++places) {
      const int left = places % static_cast<int>(orders.size());
      if (left > 3 && orders.size() > 6) continue;  // twenty orders: up to three places over are tried, 1,140 ways
      INFO(nameOf(setup.method) << ", " << places << " places");
      CHECK(worstCups(setup, 1, places) == mostByTrying(orders, Slot{1}, places));
      CHECK(worstCups(setup, 2, places) == mostByTrying(orders, Slot{2}, places));
    }
  }
}

TEST_CASE("a person's grams are those of the order that holds most") {
  for (const Setup& setup : allSetups(5)) {
    INFO(nameOf(setup.method));
    double most = 0;
    for (const auto& order : blinding::ordersOf({setup.method, setup.expected, setup.marked}))
      // Grams: mL x strength x 0.789 g/mL.
      most = std::max(most, (cupsOf(Slot{1}, order) * 0.12 + cupsOf(Slot{2}, order) * 0.06) * setup.cupMl * 0.789);
    CHECK_THAT(amountsOf(setup).grams.value(), WithinAbs(most, 1e-9));
    CHECK(amountsOf(setup).cupsPerPerson == formOf(setup.method).cups);
  }
}

TEST_CASE("three short comparisons with six people: 54 cups, nine of each lot in each pair") {
  Setup setup = setupOf(Method::triangle, 6);
  setup.cupMl = 15;
  setup.lots = {{1200, 750, 9}, {1200, 750, 9}, {1100, 750, 9}};
  const Amounts amounts = amountsOf(setup);
  CHECK(amounts.cupsPerPerson == 9);  // "gets 9 cups each"
  CHECK(amounts.mlPerPerson == 135);
  CHECK(amounts.cups == 54);
  REQUIRE(amounts.lots.size() == 3);
  for (const LotAmount& lot : amounts.lots) CHECK(lot.cups == 18);  // two pairs, nine cups in each whole block of six (ISO 4120)
  // Two cups of the stronger in each pair: 45 mL at 12 %, then twice 30 mL at 12 % and 15 mL at 11 %.
  CHECK_THAT(amounts.grams.value(), WithinAbs((45 * 0.12 + 2 * (30 * 0.12 + 15 * 0.11)) * 0.789, 1e-9));
}

TEST_CASE("evenings share the rounds: the ceiling looks at the longest one, and bottles are opened afresh") {
  Setup setup = setupOf(Method::triangle, 6, 5);
  setup.lots = {{1200, 750, 9}, {1200, 750, 9}};
  CHECK(amountsOf(setup).aboveCeiling);  // 15 cups of 30 mL at 12 %: 42.6 g
  setup.evenings = 3;                    // 2, 2 and 1 rounds
  const Amounts amounts = amountsOf(setup);
  CHECK_THAT(amounts.grams.value(), WithinAbs(2 * 90 * 0.12 * 0.789, 1e-9));
  CHECK_FALSE(amounts.aboveCeiling);
  CHECK(amounts.cupsAnEvening == 6);
  CHECK(amounts.mlAnEvening == 180);
  CHECK(amounts.cupsPerPerson == 15);
  // Nine cups of each lot a round, 270 mL: 540, 540 and 270 mL, one bottle of 750 mL on each evening.
  CHECK(amounts.lots[0].ml == 1350);
  CHECK(amounts.lots[0].bottles == 3);
  CHECK(amounts.minutes < amountsOf(setupOf(Method::triangle, 6, 5)).minutes);
}

TEST_CASE("waves: 24 people in fours of six have 18 cups on the trays at a time") {
  Setup setup = setupOf(Method::triangle, 24);
  setup.wave = 6;
  const auto wave = amountsOf(setup).wave;
  REQUIRE(wave);
  CHECK(wave->waves == 4);
  CHECK(wave->places == 6);
  CHECK(wave->cups == 18);
  CHECK(wave->ml == 540);
  setup.wave = 24;
  CHECK_FALSE(amountsOf(setup).wave);
  setup.wave = 7;
  CHECK(amountsOf(setup).wave->waves == 4);
}

TEST_CASE("sixty places can be planned by every method, and makers and spares cost as much as anybody") {
  for (Setup setup : allSetups(60)) {
    INFO(nameOf(setup.method));
    const Amounts all = amountsOf(setup);
    CHECK(all.cups == 60 * formOf(setup.method).cups);
    setup.panel = 50;
    setup.makers = 4;
    setup.spares = 6;
    CHECK(amountsOf(setup).cups == all.cups);
    CHECK(amountsOf(setup).lots[0].cups == all.lots[0].cups);
    CHECK(amountsOf(setup).lots[1].cups == all.lots[1].cups);
  }
}
