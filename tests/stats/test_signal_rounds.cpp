// Fisher's power with people who come back, beside the power of as many new people.
#include "stats/error.h"
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
