#include "stats/signal/plan.h"

#include "stats/binomial.h"
#include "stats/error.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

double ways(int n, int k) { return std::exp(std::lgamma(n + 1.0) - std::lgamma(k + 1.0) - std::lgamma(n - k + 1.0)); }
double chanceOf(int x, int n, double p) { return ways(n, x) * std::pow(p, x) * std::pow(1 - p, n - x); }

/// Fisher's p from factorials, then every table one by one.
double everyTable(int signals, int noises, const Rates& rates, double alpha) {
  double sum = 0.0;
  for (int hits = 0; hits <= signals; ++hits)
    for (int alarms = 0; alarms <= noises; ++alarms) {
      const int called = hits + alarms;
      double p = 0.0;
      for (int x = hits; x <= std::min(signals, called); ++x)
        if (called - x <= noises) p += ways(signals, x) * ways(noises, called - x) / ways(signals + noises, called);
      if (p <= alpha * (1 + 1e-9)) sum += chanceOf(hits, signals, rates.hit) * chanceOf(alarms, noises, rates.falseAlarm);
    }
  return sum;
}

}  // namespace

TEST_CASE("power of Fisher's test, table by table") {
  for (const auto& [signals, noises] : {std::pair(3, 3), std::pair(6, 6), std::pair(9, 7), std::pair(15, 15)})
    for (const double d : {0.0, 1.0, 2.0}) {
      for (const double alpha : {0.05, 0.2}) {
        INFO(signals << ' ' << noises << ' ' << d << ' ' << alpha);
        const Rates rates = aNotARates(d, plannedCriterion), same = sameDifferentRates(d, plannedTau);
        CHECK_THAT(fisherPower(signals, noises, rates, alpha).power, WithinAbs(everyTable(signals, noises, rates, alpha), 1e-10));
        CHECK_THAT(fisherPower(signals, noises, same, alpha).power, WithinAbs(everyTable(signals, noises, same, alpha), 1e-10));
        CHECK(fisherPower(signals, noises, rates, alpha).alphaActual <= alpha);
      }
    }
}

TEST_CASE("power of Fisher's test grows with d' and never leaves 0 to 1") {
  for (const int half : {4, 12, 40}) {
    double before = 0.0;
    for (double d = 0.0; d <= 6.0; d += 0.25) {
      const double here = fisherPower(half, half, aNotARates(d, 0.0), 0.05).power;
      CHECK(here >= before - 1e-12);
      CHECK(here <= 1.0);
      before = here;
    }
    CHECK(before > 0.95);
  }
  CHECK(fisherPower(0, 5, {0.9, 0.1}, 0.05).power == 0.0);
  CHECK(fisherPower(2, 2, {1.0, 0.0}, 0.05).power == 0.0);  // 1 in 6 at best
}

TEST_CASE("the first and the stable size of Fisher's test") {
  const Rates rates = aNotARates(1.5, 0.0);
  const Sizes sizes = fisherSizes(rates, 0.8, 0.05);
  REQUIRE(sizes.first.has_value());
  REQUIRE(sizes.stable.has_value());
  CHECK(sizes.first->trials <= sizes.stable->trials);
  for (int half = 1; 2 * half <= sizes.stable->trials + 20; ++half) {
    const double here = fisherPower(half, half, rates, 0.05).power;
    if (2 * half < sizes.first->trials) CHECK(here < 0.8);
    if (2 * half == sizes.first->trials) CHECK(here >= 0.8);
    if (2 * half == sizes.stable->trials - 2) CHECK((here < 0.8 || sizes.first->trials == sizes.stable->trials));
    if (2 * half >= sizes.stable->trials) CHECK(here >= 0.8);
  }
}

TEST_CASE("sizes that are out of reach are left empty, impossible input is refused") {
  const Sizes far = fisherSizes({0.501, 0.5}, 0.9, 0.05);
  CHECK_FALSE(far.first.has_value());
  CHECK(far.why == Reason::beyondSearch);
  CHECK_THROWS_AS(fisherSizes({0.5, 0.5}, 0.8, 0.05), BadInput);
  CHECK_THROWS_AS(fisherSizes({0.9, 0.5}, 1.0, 0.05), BadInput);
  CHECK_THROWS_AS(fisherPower(-1, 5, {0.9, 0.1}, 0.05), BadInput);
  CHECK_THROWS_AS(fisherPower(5, 20'001, {0.9, 0.1}, 0.05), BadInput);
  CHECK_THROWS_AS(fisherPower(5, 5, {std::numeric_limits<double>::quiet_NaN(), 0.1}, 0.05), BadInput);
  CHECK_THROWS_AS(fisherPower(5, 5, {0.9, 0.1}, 0.0), BadInput);
}
