#include "planning/amounts.h"
#include "planning/flight_cups.h"

#include "domain/problem.h"
#include "stats/designs.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <vector>

using namespace oddglass;
using namespace oddglass::planning;
using Catch::Matchers::WithinAbs;

TEST_CASE("the worst case is the worst of all ways to deal") {
  // A block that is not full takes any of the six orders, each once: try every choice.
  for (int left = 1; left <= 6; ++left) {
    int worst = 0, worstOther = 0;
    for (int choice = 0; choice < 64; ++choice) {
      if (__builtin_popcount(static_cast<unsigned>(choice)) != left) continue;
      int first = 0, second = 0;
      for (int k = 0; k < 6; ++k)
        if ((choice >> k) & 1)
          for (const stats::Side side : stats::triangleOrders[k]) (side == 1 ? first : second) += 1;
      worst = std::max(worst, first);
      worstOther = std::max(worstOther, second);
    }
    CHECK(worst == worstOther);
    for (const int side : {1, 2}) {
      CHECK(worstCups(Setup{}, side, left) == worst);
      CHECK(worstCups(Setup{}, side, 12 + left) == 18 + worst);
    }
  }
  CHECK(worstCups(Setup{}, 1, 0) == 0);
}

// By counting: four cups are poured for a triangle that hands hide, two of each drink, and the fourth may be drunk at the end.
TEST_CASE("what hands pour is counted whole, the cup that is set aside among it") {
  Setup setup;
  setup.makers = 1;
  setup.routine = Routine::alone;
  setup.rounds = 3;
  setup.cupMl = 15;
  setup.lots = {{1200, 750, 2}, {600, 330, 1}};
  const Amounts amounts = amountsOf(setup);
  CHECK(amounts.cupsPerPerson == 12);
  CHECK(amounts.lots[0].cups == 6);
  CHECK(amounts.lots[1].cups == 6);
  // (30 x .12 + 30 x .06) x .789 = 4.2606 a round.
  CHECK_THAT(amounts.grams.value(), WithinAbs(3 * 4.2606, 1e-9));
  setup.method = Method::threeAfc;
  setup.expected = Slot{2};
  CHECK(amountsOf(setup).lots[0].cups == 6);
  CHECK(amountsOf(setup).lots[1].cups == 3);
  setup.method = Method::duoTrio;
  setup.expected.reset();
  setup.marked = Slot{2};
  CHECK(amountsOf(setup).cupsPerPerson == 9);
  CHECK(amountsOf(setup).lots[1].cups == 6);
}

TEST_CASE("amounts of five friends, a maker, three rounds of 15 mL") {
  Setup setup;
  setup.panel = 5;
  setup.makers = 1;
  setup.rounds = 3;
  setup.cupMl = 15;
  setup.lots = {{1200, 750, 2}, {600, 330, 1}};
  const Amounts amounts = amountsOf(setup);
  // "3 cups x 3 rounds = 9 cups, 135 mL at 15 mL".
  CHECK(amounts.cupsPerPerson == 9);
  CHECK(amounts.mlPerPerson == 135);
  CHECK(amounts.cups == 54);
  // Six places are one whole block: 9 cups of each lot a round, 27 in all, 405 mL.
  CHECK(amounts.lots[0].cups == 27);
  CHECK(amounts.lots[0].ml == 405);
  CHECK(amounts.lots[0].bottles == 1);
  CHECK(amounts.lots[0].enough);
  CHECK(amounts.lots[1].bottles == 2);
  CHECK_FALSE(amounts.lots[1].enough);
  // Grams: each round two cups at 12 % and one at 6 %: (30 x .12 + 15 x .06) x .789 = 3.5505; three rounds 10.65.
  CHECK_THAT(amounts.grams.value(), WithinAbs(10.6515, 1e-9));
  CHECK_THAT(amounts.drinks.value(), WithinAbs(10.6515 / 8.0, 1e-9));
  CHECK_FALSE(amounts.aboveCeiling);
}

TEST_CASE("it is the same for everybody whichever lot is the stronger") {
  Setup setup;
  setup.panel = 4;
  setup.lots = {{1200, 750, 9}, {600, 330, 9}};
  Setup turned = setup;
  std::swap(turned.lots[0], turned.lots[1]);
  CHECK(amountsOf(setup).grams == amountsOf(turned).grams);
  CHECK(amountsOf(setup).lots[0].ml == amountsOf(setup).lots[1].ml);
}

TEST_CASE("24 at a club: 72 cups, 2.2 L at 30 mL") {
  Setup setup;
  setup.panel = 24;
  setup.lots = {{500, 500, 9}, {500, 500, 9}};
  const Amounts amounts = amountsOf(setup);
  CHECK(amounts.cups == 72);
  CHECK(amounts.lots[0].ml + amounts.lots[1].ml == 2160);
  setup.rounds = 3;
  CHECK(amountsOf(setup).cups == 216);
  CHECK(amountsOf(setup).lots[0].ml + amountsOf(setup).lots[1].ml == 6480);
}

TEST_CASE("alone: 8 triangles of 15 mL at 12 % are 34 g and above the ceiling") {
  Setup setup;
  setup.makers = 1;
  setup.rounds = 8;
  setup.cupMl = 15;
  setup.lots = {{1200, 750, 9}, {1200, 750, 9}};
  CHECK_THAT(amountsOf(setup).grams.value(), WithinAbs(34.0, 0.1));
  CHECK(amountsOf(setup).aboveCeiling);
}

TEST_CASE("what is not known stays empty") {
  Setup setup;
  setup.panel = 4;
  setup.lots = {{std::nullopt, 0, 0}, {500, 500, 9}};
  setup.country = "DE";
  const Amounts amounts = amountsOf(setup);
  CHECK_FALSE(amounts.grams.has_value());
  CHECK_FALSE(amounts.drinks.has_value());
  CHECK_FALSE(amounts.drinkGrams.has_value());
  CHECK_FALSE(amounts.lots[0].bottles.has_value());
  CHECK(amounts.lots[0].ml > 0);
  CHECK_FALSE(amounts.aboveCeiling);
}

TEST_CASE("spare places and makers' cups cost as much as anybody's") {
  Setup a, b, c;
  a.panel = 6;
  b.panel = 4;
  b.makers = 2;
  c.panel = 4;
  c.spares = 2;
  a.lots = b.lots = c.lots = {{500, 500, 9}, {500, 500, 9}};
  CHECK(amountsOf(a).cups == amountsOf(b).cups);
  CHECK(amountsOf(a).cups == amountsOf(c).cups);
  CHECK(amountsOf(a).lots[0].ml == amountsOf(c).lots[0].ml);
  CHECK(amountsOf(a).minutes % 5 == 0);
}

TEST_CASE("numbers out of range are refused by name") {
  const auto argumentOf = [](auto&& change) {
    Setup setup;
    setup.panel = 4;
    setup.lots = {{500, 500, 9}, {500, 500, 9}};
    change(setup);
    try {
      amountsOf(setup);
    } catch (const Problem& problem) {
      return problem.argument();
    }
    return std::string("nothing was refused");
  };
  CHECK(argumentOf([](Setup& s) { s.rounds = 0; }) == "rounds");
  CHECK(argumentOf([](Setup& s) { s.cupMl = 500; }) == "cup_ml");
  CHECK(argumentOf([](Setup& s) { s.panel = -1; }) == "panel");
  CHECK(argumentOf([](Setup& s) { s.lots[1].abvBp = 9700; }) == "abv");
  CHECK(argumentOf([](Setup&) {}) == "nothing was refused");
}
