#include "stats/scores/balanced.h"
#include "stats/scores/sample_scores.h"
#include "stats/scores/power.h"
#include "stats/estimated.h"
#include "stats/rows.h"
#include "stats/simulated.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace oddglass::stats;
using simulated::Chance;
using simulated::Share;

namespace {

ScoreRows panel(Chance& chance, int tasters, int samples, int rounds, double sdInteraction, double gap) {
  ScoreRows rows;
  for (int t = 0; t < tasters; ++t) {
    const double taster = chance.normal();
    for (int s = 0; s < samples; ++s) {
      const double found = 5.0 + taster + chance.normal(sdInteraction) + (s == 0 ? gap / 2.0 : s == 1 ? -gap / 2.0 : 0.0);
      for (int r = 0; r < rounds; ++r) rows::add(rows, t, s, found + chance.normal());
    }
  }
  return rows;
}

/// F tests at 5 % where no sample differs: the classical one, and the one that pools taster x sample with the residual when its variance is estimated at or below zero.
void requireSize(int draws) {
  double lowest = 1.0, highest = 0.0, lowestPooled = 1.0, highestPooled = 0.0;
  for (const int tasters : {4, 6, 8, 12})
    for (const double sd : {0.0, 0.5, 1.0}) {
      Chance chance(1000u + 10u * static_cast<unsigned>(tasters) + static_cast<unsigned>(10 * sd));
      Share ours, pooled;
      for (int draw = 0; draw < draws; ++draw) {
        const BalancedTable table = balancedTable(panel(chance, tasters, 4, 2, sd, 0.0)).value();
        const double interaction = table.ofInteraction / table.dfInteraction(), residual = table.ofResidual / table.dfResidual(), ofSamples = table.ofSamples / table.dfSamples();
        const bool rejects = fisherTail(ofSamples / interaction, table.dfSamples(), table.dfInteraction()) <= 0.05;
        ours.add(rejects);
        const double dfBoth = table.dfInteraction() + table.dfResidual();
        pooled.add(interaction > residual ? rejects : fisherTail(ofSamples / ((table.ofInteraction + table.ofResidual) / dfBoth), table.dfSamples(), dfBoth) <= 0.05);
      }
      CAPTURE(tasters, sd, ours.value(), pooled.value());
      CHECK(std::abs(ours.value() - 0.05) < ours.slack(0.05));
      lowest = std::min(lowest, ours.value());
      highest = std::max(highest, ours.value());
      lowestPooled = std::min(lowestPooled, pooled.value());
      highestPooled = std::max(highestPooled, pooled.value());
    }
  CAPTURE(lowest, highest, lowestPooled, highestPooled);
  if (draws >= 20'000) {
    CHECK(lowest > 0.0455);
    CHECK(highest < 0.0545);
  }
  // Dropping the term wanders farther from 5 %.
  CHECK(highestPooled - lowestPooled > highest - lowest);
}

/// Intervals of all pairs together, and of all differences from the reference together. Their reach in standard errors depends on the plan only: it is
/// taken from the first panel.
void requireCoverage(int draws) {
  for (const int tasters : {4, 6, 8, 12})
    for (const int rounds : {1, 2}) {
      Chance chance(2000u + 10u * static_cast<unsigned>(tasters) + static_cast<unsigned>(rounds));
      const SampleScores first = scoresOf(panel(chance, tasters, 3, rounds, 0.7, 0.0), {0.95, 0});
      const auto reach = [](const SampleDifference& each) { return (*each.high - *each.difference) / *each.se; };
      const double tukey = reach(first.pairs[0]), dunnett = reach(first.fromReference[0]);
      Share pairs, reference;
      for (int draw = 0; draw < draws; ++draw) {
        const BalancedTable table = balancedTable(panel(chance, tasters, 3, rounds, 0.7, 0.0)).value();
        const double se = std::sqrt(2.0 * table.ofInteraction / table.dfInteraction() / (tasters * rounds));
        const auto [low, high] = std::ranges::minmax(table.means);
        pairs.add(high - low <= tukey * se);
        reference.add(std::max(std::abs(table.means[1] - table.means[0]), std::abs(table.means[2] - table.means[0])) <= dunnett * se);
      }
      CAPTURE(tasters, rounds, pairs.value(), reference.value());
      CHECK(std::abs(pairs.value() - 0.95) < pairs.slack(0.95));
      CHECK(std::abs(reference.value() - 0.95) < reference.slack(0.95));
    }
}

/// Intervals of a mean. Satterthwaite's df are an approximation: two points are allowed for it.
void requireMeans(int draws) {
  for (const int tasters : {4, 6, 8, 12}) {
    Chance chance(4000u + static_cast<unsigned>(tasters));
    Share mean;
    for (int draw = 0; draw < draws; ++draw) {
      const SampleMean found = scoresOf(panel(chance, tasters, 2, 2, 0.7, 0.0)).means[0];
      mean.add(*found.low <= 5.0 && 5.0 <= *found.high);
    }
    CAPTURE(tasters, mean.value());
    CHECK(std::abs(mean.value() - 0.95) < mean.slack(0.95) + 0.02);
  }
}

/// Power by the F test, four samples twice, two of them two points apart.
void requirePower(int draws) {
  for (const int tasters : {4, 6, 8, 12}) {
    Chance chance(3000u + static_cast<unsigned>(tasters));
    Share shown;
    for (int draw = 0; draw < draws; ++draw) {
      const BalancedTable table = balancedTable(panel(chance, tasters, 4, 2, 1.0, 2.0)).value();
      shown.add(fisherTail(table.ofSamples / table.dfSamples() / (table.ofInteraction / table.dfInteraction()), table.dfSamples(), table.dfInteraction()) <= 0.05);
    }
    const double promised = scorePower({tasters, 4, 2}, 2.0).power.value();
    CAPTURE(tasters, shown.value(), promised);
    CHECK(std::abs(shown.value() - promised) < shown.slack(promised));
  }
}

}  // namespace

// The project's own plan: size .048 to .052 of the classical table, .028 to .059 where the term is dropped.
TEST_CASE("scores: size of the test of samples", "[repeated]") { requireSize(2'000); }
TEST_CASE("scores: intervals cover their level", "[repeated]") { requireCoverage(2'000); }
TEST_CASE("scores: means cover their level", "[repeated]") { requireMeans(60); }
TEST_CASE("scores: power is what a plan promises", "[repeated]") { requirePower(2'000); }

TEST_CASE("scores: size of the test of samples, in full", "[.long]") { requireSize(40'000); }
TEST_CASE("scores: intervals cover their level, in full", "[.long]") { requireCoverage(40'000); }
TEST_CASE("scores: means cover their level, in full", "[.long]") { requireMeans(5'000); }
TEST_CASE("scores: power is what a plan promises, in full", "[.long]") { requirePower(40'000); }
