// Fisher's power with people who come back, beside the power of as many new people.
#include "stats/error.h"
#include "stats/binomial.h"
#include "stats/binomial_masses.h"
#include "stats/signal/fewest_hits.h"
#include "stats/signal/fisher.h"
#include "stats/signal/plan.h"
#include "stats/signal/rounds.h"

#include <catch2/catch.hpp>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;

TEST_CASE("without a spread, and with one signal a person, nobody comes back as far as hits go") {
  const Rates rates{0.8, 0.3};
  for (const int people : {6, 13, 30}) {
    const auto plain = fisherPower(people / 2, people - people / 2, rates, 0.05);
    CHECK_THAT(fisherPowerOfRounds(people, 1, rates, 0.3, 0.05).power, WithinAbs(plain.power, 1e-10));
    CHECK_THAT(fisherPowerOfRounds(people, 1, rates, 0.3, 0.05).independent, WithinAbs(plain.power, 1e-10));
    CHECK_THAT(fisherPowerOfRounds(people, 2, rates, 0.3, 0.05).power, WithinAbs(fisherPower(people, people, rates, 0.05).power, 1e-10));
    CHECK_THAT(fisherPowerOfRounds(people, 6, rates, 0.0, 0.05).power, WithinAbs(fisherPower(3 * people, 3 * people, rates, 0.05).power, 1e-10));
  }
}

TEST_CASE("people who differ make a likely finding less likely; no difference is found at most alpha of the time") {
  const auto found = fisherPowerOfRounds(6, 6, {0.8, 0.3}, 0.3, 0.05);
  CHECK(found.independent > 0.8);
  CHECK(found.power < found.independent);
  CHECK(found.alphaActual <= 0.05);
  CHECK(found.canShow);
  CHECK_FALSE(fisherPowerOfRounds(4, 1, {1.0, 0.0}, 0.3, 0.05).canShow);  // 2 and 2: one table of six
  CHECK(fisherPowerOfRounds(0, 3, {0.8, 0.3}, 0.3, 0.05).power == 0.0);
}

TEST_CASE("impossible plans of a yes-no test are refused by name") {
  const auto argumentOf = [](auto&& call) -> std::string {
    try {
      call();
    } catch (const BadInput& bad) {
      return bad.argument();
    }
    return "nothing was refused";
  };
  CHECK(argumentOf([] { fisherPowerOfRounds(-1, 1, {0.8, 0.3}, 0.3, 0.05); }) == "people");
  CHECK(argumentOf([] { fisherPowerOfRounds(1, -1, {0.8, 0.3}, 0.3, 0.05); }) == "rounds");
  CHECK(argumentOf([] { fisherPowerOfRounds(5, 1, {1.2, 0.3}, 0.3, 0.05); }) == "hit");
  CHECK(argumentOf([] { fisherPowerOfRounds(5, 1, {0.2, 0.3}, 0.3, 0.05); }) == "falseAlarm");
  CHECK(argumentOf([] { fisherPowerOfRounds(5, 1, {0.8, 0.3}, 1.3, 0.05); }) == "gamma");
  CHECK(argumentOf([] { fisherPowerOfRounds(5, 1, {0.8, 0.3}, 0.3, 0.0); }) == "alpha");
}

TEST_CASE("the fewest hits are those that Fisher's test finds table by table") {
  for (const double alpha : {0.01, 0.05, 0.05 / 3, 0.2, 0.7})
    for (const auto& [signals, noises] : {std::pair(0, 4), std::pair(4, 0), std::pair(3, 3), std::pair(6, 7), std::pair(12, 9), std::pair(40, 41), std::pair(300, 300)}) {
      const std::vector<int> fewest = fewestHits(signals, noises, alpha);
      REQUIRE(fewest.size() == static_cast<std::size_t>(noises) + 1);
      for (int alarms = 0; alarms <= noises; alarms += noises > 100 ? 13 : 1) {
        int hits = 0;
        while (hits <= signals && !atMost(fisherGreater({hits, signals - hits, alarms, noises - alarms}), alpha)) ++hits;
        INFO(signals << " signals, " << noises << " noises, " << alarms << " alarms, alpha " << alpha);
        CHECK(fewest[static_cast<std::size_t>(alarms)] == hits);
      }
    }
  CHECK(fewestHits(3, 3, 0.05).front() == 3);  // one table of twenty: exactly 1/20
  CHECK_THROWS_AS(fewestHits(-1, 3, 0.05), BadInput);
  CHECK_THROWS_AS(fewestHits(3, 20'001, 0.05), BadInput);
  CHECK_THROWS_AS(fewestHits(3, 3, 1.0), BadInput);
}

TEST_CASE("masses of a binomial count, all at once, are those taken one by one") {
  for (const int trials : {0, 1, 7, 60, 1200})
    for (const double p : {0.0, 1e-6, 1.0 / 3, 0.5, 0.97, 1.0}) {
      const std::vector<double> masses = binomialMasses(trials, p), tails = upperTails(masses);
      REQUIRE(tails.size() == masses.size() + 1);
      for (int k = 0; k <= trials; ++k) {
        INFO(k << " of " << trials << " at " << p);
        CHECK_THAT(masses[static_cast<std::size_t>(k)], WithinAbs(binomialMass(k, trials, p), 1e-13));
        CHECK_THAT(tails[static_cast<std::size_t>(k)], WithinAbs(upperTail(k, trials, p), 1e-12));
      }
      CHECK(tails.back() == 0.0);
    }
}
