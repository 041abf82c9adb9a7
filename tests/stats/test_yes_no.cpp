#include "stats/signal/yes_no.h"

#include "stats/cases.h"
#include "stats/error.h"

#include <array>
#include <cmath>
#include <limits>
#include <random>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

YesNo countsOf(const checks::Json& in) {
  const int hits = in["A_called_A"], signals = in["A_n"], alarms = in["notA_called_A"], noises = in["notA_n"];
  return {hits, signals - hits, alarms, noises - alarms};
}

/// One-sided p by dealing the called ones over all trials in every way.
double byDealingAnswers(const YesNo& counts) {
  const int all = counts.signals() + counts.noises(), called = counts.hits + counts.falseAlarms;
  long deals = 0, asMany = 0;
  for (unsigned mask = 0; mask < 1u << all; ++mask) {
    if (__builtin_popcount(mask) != called) continue;
    ++deals;
    asMany += __builtin_popcount(mask & ((1u << counts.signals()) - 1)) >= counts.hits;
  }
  return static_cast<double>(asMany) / static_cast<double>(deals);
}

/// Minus the log-likelihood of a same-different test.
double surprise(const YesNo& counts, double dPrime, double tau) {
  const Rates rates = sameDifferentRates(dPrime, tau);
  return -(counts.hits * std::log(rates.hit) + counts.misses * std::log(1 - rates.hit) + counts.falseAlarms * std::log(rates.falseAlarm) + counts.correctRejections * std::log(1 - rates.falseAlarm));
}

}  // namespace

// Sources beside each case in same_different.json.
TEST_CASE("yes-no cases") {
  int looked = 0;
  for (const auto& c : checks::family("same_different")) {
    INFO(c["id"]);
    const auto &in = c["inputs"], &out = c["expected"];
    const double within = c["tolerance"]["abs"];
    if (in.contains("test")) {
      const SignalFound found = aNotA(countsOf(in));
      CHECK_THAT(found.dPrime.value(), WithinAbs(out["d_prime"].get<double>(), within));
      CHECK_THAT(found.standardError.value(), WithinAbs(out["se"].get<double>(), within));
      CHECK_THAT(found.criterion.value(), WithinAbs(out["c"].get<double>(), within));
      CHECK_THAT(found.pValue.value(), WithinAbs(out["fisher_p_greater"].get<double>(), within));
      CHECK_FALSE(found.why.has_value());
      checks::requireAllSeen(out, {"d_prime", "se", "c", "fisher_p_greater"});
    } else if (in.contains("model")) {
      const auto found = sameDifferentDistance({in["p_different_given_different"], in["p_different_given_same"]});
      REQUIRE(found.has_value());
      CHECK_THAT(found->dPrime, WithinAbs(out["d_prime"].get<double>(), within));
      CHECK_THAT(found->criterion, WithinAbs(out["tau"].get<double>(), within));
    } else {
      CHECK_THAT(aNotADistance({in["H"], in["F"]}).value().dPrime, WithinAbs(out["d_prime"].get<double>(), within));
    }
    ++looked;
  }
  CHECK(looked == 7);
}

// By counting every way in which the answers could have fallen.
TEST_CASE("Fisher's p is the share of deals with as many hits") {
  for (int signals = 0; signals <= 5; ++signals)
    for (int noises = 0; noises <= 5; ++noises)
      for (int hits = 0; hits <= signals; ++hits)
        for (int alarms = 0; alarms <= noises; ++alarms) {
          const YesNo counts{hits, signals - hits, alarms, noises - alarms};
          INFO(hits << ' ' << counts.misses << ' ' << alarms << ' ' << counts.correctRejections);
          CHECK_THAT(fisherGreater(counts), WithinRel(byDealingAnswers(counts), 1e-12));
        }
}

TEST_CASE("hypergeometric masses add up to 1, also for large counts") {
  for (const auto& [marked, all, drawn] : {std::array{5, 12, 4}, std::array{300, 1000, 450}, std::array{40'000, 100'000, 20'000}}) {
    double sum = 0.0;
    for (int x = 0; x <= drawn; ++x) sum += hypergeometricMass(x, marked, all, drawn);
    CHECK_THAT(sum, WithinRel(1.0, 1e-9));
  }
  // A table far below its middle and one far above: both ends stay within 0 and 1.
  CHECK_THAT(fisherGreater({100, 99'900, 50'000, 50'000}), WithinAbs(1.0, 1e-12));
  CHECK(fisherGreater({99'900, 100, 50'000, 50'000}) >= 0.0);
  CHECK(fisherGreater({99'900, 100, 50'000, 50'000}) < 1e-300);
}

TEST_CASE("d' leads to rates and back") {
  for (double d = 0.0; d <= 5.0; d += 0.25)
    for (double criterion = -1.5; criterion <= 1.5; criterion += 0.5) {
      const auto back = aNotADistance(aNotARates(d, criterion));
      CHECK_THAT(back.value().dPrime, WithinAbs(d, 1e-8));
      CHECK_THAT(back.value().criterion, WithinAbs(criterion, 1e-8));
      const double tau = criterion + 1.75;
      const auto same = sameDifferentDistance(sameDifferentRates(d, tau));
      CHECK_THAT(same.value().criterion, WithinAbs(tau, 1e-8));
      if (d > 0.0) CHECK_THAT(same.value().dPrime, WithinAbs(d, 1e-6));
    }
}

// Simulated from the definition: two draws with unit variance, "different" when they lie more than tau apart.
TEST_CASE("rates of same-different as simulated") {
  std::mt19937_64 chance(20261);
  std::normal_distribution<double> normal;
  for (const auto& [d, tau] : {std::pair(1.0, 1.0), std::pair(2.35, 1.19)}) {
    const int trials = 200'000;
    int hits = 0, alarms = 0;
    for (int i = 0; i < trials; ++i) {
      hits += std::abs(normal(chance) - (normal(chance) + d)) > tau;
      alarms += std::abs(normal(chance) - normal(chance)) > tau;
    }
    const Rates rates = sameDifferentRates(d, tau);
    CHECK_THAT(static_cast<double>(hits) / trials, WithinAbs(rates.hit, 0.005));
    CHECK_THAT(static_cast<double>(alarms) / trials, WithinAbs(rates.falseAlarm, 0.005));
  }
}

// In a second way: the inverse of the second differences of the log-likelihood at its top.
TEST_CASE("standard error of same-different from the curvature of the likelihood") {
  for (const YesNo& counts : {YesNo{8, 2, 4, 6}, YesNo{40, 10, 12, 38}, YesNo{11, 9, 7, 13}}) {
    const SignalFound found = sameDifferent(counts);
    const double d = found.dPrime.value(), tau = found.criterion.value(), h = 1e-4;
    const auto at = [&](double i, double k) { return surprise(counts, d + i * h, tau + k * h); };
    const double dd = (at(1, 0) - 2 * at(0, 0) + at(-1, 0)) / (h * h), tt = (at(0, 1) - 2 * at(0, 0) + at(0, -1)) / (h * h);
    const double dt = (at(1, 1) - at(1, -1) - at(-1, 1) + at(-1, -1)) / (4 * h * h);
    CHECK_THAT(found.standardError.value(), WithinRel(std::sqrt(tt / (dd * tt - dt * dt)), 1e-4));
  }
}

TEST_CASE("where no distance can be had there is a reason, and the corrected d' stands beside it") {
  const SignalFound all = aNotA({5, 0, 1, 4});
  CHECK_FALSE(all.dPrime.has_value());
  CHECK_FALSE(all.criterion.has_value());
  CHECK(all.why == Reason::allOneWay);
  // Half an answer added to each count, by hand: z(5.5/6) - z(1.5/6), from tables of the normal distribution.
  CHECK_THAT(all.corrected.value(), WithinAbs(1.3829941 + 0.6744898, 1e-6));
  CHECK_THAT(all.pValue.value(), WithinRel(6.0 / 252.0, 1e-12));

  const SignalFound below = sameDifferent({2, 8, 5, 5});
  CHECK(below.dPrime == 0.0);
  CHECK_FALSE(below.standardError.has_value());
  CHECK(below.why == Reason::atGuessing);
  CHECK(aNotA({2, 8, 5, 5}).dPrime.value() < 0.0);

  CHECK(sameDifferent({10, 0, 3, 7}).why == Reason::allOneWay);
  CHECK(sameDifferent({7, 3, 0, 10}).why == Reason::allOneWay);
  CHECK(sameDifferent({7, 3, 0, 10}).corrected.has_value());
  CHECK(aNotA({0, 0, 0, 0}).why == Reason::noTrials);
  CHECK(aNotA({3, 1, 0, 0}).why == Reason::emptyCell);
  CHECK_FALSE(aNotA({3, 1, 0, 0}).pValue.has_value());
}

TEST_CASE("whatever the counts, every number is finite, and impossible ones are refused by name") {
  std::mt19937 chance(7);
  for (int i = 0; i < 4000; ++i) {
    const int most = i % 3 == 0 ? 3 : i % 3 == 1 ? 60 : 2'000'000;
    std::uniform_int_distribution<int> count(0, most);
    const YesNo counts{count(chance), count(chance), count(chance), count(chance)};
    for (const SignalFound& found : {aNotA(counts), sameDifferent(counts)})
      for (const auto& value : {found.dPrime, found.standardError, found.corrected, found.criterion, found.criterionCorrected, found.pValue})
        if (value) CHECK(std::isfinite(*value));
        else CHECK(found.why.has_value());
  }
  CHECK_THROWS_AS(aNotA({-1, 2, 3, 4}), BadInput);
  CHECK_THROWS_AS(sameDifferent({1, 2, 3, -4}), BadInput);
  CHECK_THROWS_AS(fisherGreater({10'000'000, 1, 0, 0}), BadInput);
  for (const double bad : {-0.1, 1.1, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
    CHECK_THROWS_AS(aNotADistance({bad, 0.5}), BadInput);
    CHECK_THROWS_AS(sameDifferentDistance({0.5, bad}), BadInput);
  }
  CHECK_THROWS_AS(aNotARates(-1.0, 0.0), BadInput);
  CHECK_THROWS_AS(aNotARates(1.0, std::numeric_limits<double>::quiet_NaN()), BadInput);
  CHECK_THROWS_AS(sameDifferentRates(1.0, -0.1), BadInput);
  CHECK_THROWS_AS(hypergeometricMass(1, 5, 4, 2), BadInput);
}
