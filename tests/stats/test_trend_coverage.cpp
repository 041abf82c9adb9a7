#include "stats/trend/trend.h"

#include "stats/mixed/reml.h"
#include "stats/simulated.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace oddglass::stats;
using simulated::Chance;
using simulated::Share;

namespace {

constexpr double trueSlope = -0.15;

/// Sittings of one batch: people differ (sd 1), days differ (sd `day`), and each answer has its own chance (sd 1).
TimeRows sittings(Chance& chance, int tasters, int sessions, double day, double missing) {
  TimeRows rows;
  rows.taster.levels = tasters;
  rows.session.levels = sessions;
  std::vector<double> level, atDay;
  for (int t = 0; t < tasters; ++t) level.push_back(chance.normal());
  for (int s = 0; s < sessions; ++s) rows.age.push_back(2.0 * s), atDay.push_back(chance.normal(day));
  for (int t = 0; t < tasters; ++t)
    for (int s = 0; s < sessions; ++s) {
      if (chance.uniform() < missing && s != t % sessions) continue;
      rows.response.push_back(6.0 + level[t] + atDay[s] + trueSlope * rows.age[s] + chance.normal());
      rows.taster.of.push_back(t);
      rows.session.of.push_back(s);
    }
  return rows;
}

bool covers(const std::optional<double>& low, const std::optional<double>& high) { return low && *low <= trueSlope && trueSlope <= *high; }

/// The same rows with the session left out: what must not be done.
bool coversWithoutSession(const TimeRows& rows) {
  std::vector<double> age;
  for (int s : rows.session.of) age.push_back(rows.age[s]);
  FixedEffects fixed(rows.response.size());
  fixed.addIntercept();
  fixed.addNumber("age", age);
  const Reml reml = fitReml(fixed, {{"taster", rows.taster}}, rows.response);
  REQUIRE(reml.fit);
  Eigen::VectorXd weights = fixed.contrast();
  weights(1) = 1.0;
  const auto found = contrast(*reml.fit, weights);
  REQUIRE(found);
  return covers(found->low, found->high);
}

void requireSlopeCoverage(double day, int draws, bool withContrast) {
  for (const int tasters : {4, 6, 8, 12})
    for (const int sessions : {4, 5, 8}) {
      Chance chance(8000 + 100 * tasters + sessions);
      Share complete, incomplete, without;
      for (int draw = 0; draw < draws; ++draw) {
        const Trend all = trend(sittings(chance, tasters, sessions, day, 0.0), 0.95);
        complete.add(covers(all.slope.low, all.slope.high));
        const TimeRows some = sittings(chance, tasters, sessions, day, 0.25);
        const Trend holes = trend(some, 0.95);
        incomplete.add(covers(holes.slope.low, holes.slope.high));
        if (withContrast) without.add(coversWithoutSession(some));
      }
      CAPTURE(tasters, sessions, day, complete.value(), incomplete.value(), draws);
      CHECK(std::fabs(complete.value() - 0.95) < complete.slack(0.95));
      CHECK(incomplete.value() > 0.92 - incomplete.slack(0.92));
      CHECK(incomplete.value() < 0.99 + incomplete.slack(0.99));
      if (withContrast) {
        CAPTURE(without.value());
        CHECK(without.value() < 0.91);
        CHECK(without.value() < incomplete.value());
      }
    }
}

/// How often the last two sittings are called alike when the drink has moved by exactly the limit.
struct FalseAlarms {
  Share withControl, without;
};

FalseAlarms falseAlarms(int tasters, double day, int draws, std::uint64_t seed) {
  constexpr double limit = 1.0;
  Chance chance(seed);
  FalseAlarms found;
  for (int draw = 0; draw < draws; ++draw) {
    TimeRows both, alone;
    both.age = alone.age = {3.0, 6.0};
    both.taster.levels = alone.taster.levels = tasters;
    both.session.levels = alone.session.levels = 2;
    const double days[]{chance.normal(day), chance.normal(day)};
    for (int t = 0; t < tasters; ++t) {
      const double level = chance.normal();
      for (int s = 0; s < 2; ++s)
        for (const bool isControl : {false, true}) {
          const double score = 6.0 + level + days[s] + (isControl ? 0.0 : limit * s) + chance.normal(0.6);
          both.response.push_back(score), both.taster.of.push_back(t), both.session.of.push_back(s), both.isControl.push_back(isControl);
          if (!isControl) alone.response.push_back(score), alone.taster.of.push_back(t), alone.session.of.push_back(s);
        }
    }
    found.withControl.add(lastTwoAlike(both, limit, 0.05).isAlike);
    found.without.add(lastTwoAlike(alone, limit, 0.05).isAlike);
  }
  return found;
}

void requireTrendFalseAlarms(int draws) {
  for (const int tasters : {4, 6, 8, 12}) {
    const FalseAlarms found = falseAlarms(tasters, 0.3, draws, 8500 + tasters);
    CAPTURE(tasters, found.withControl.value(), found.without.value(), draws);
    CHECK(found.withControl.value() < 0.05 + found.withControl.slack(0.05));
    CHECK(found.without.value() > 0.07);  // the day is taken for the drink: why it is called confounded
    CHECK(found.without.value() > found.withControl.value());
  }
}

/// How often a straight line is taken for a curve: on session means, and as it would be on rows.
void requireFewFalseQuadratics(int draws) {
  for (const int sessions : {6, 7, 8, 12}) {
    Chance chance(8700 + sessions);
    Share curved;
    for (int draw = 0; draw < draws; ++draw) {
      const auto shape = trend(sittings(chance, 6, sessions, 0.5, 0.0), 0.95).shape.chosen;
      REQUIRE(shape);
      curved.add(*shape == Shape::quadratic || *shape == Shape::spline);
    }
    CAPTURE(sessions, curved.value());
    CHECK(curved.value() < 0.11 + curved.slack(0.11));
    if (sessions == 6) CHECK(curved.value() < 0.01 + curved.slack(0.01));
  }
}

}  // namespace

// Coverage of the slope at panels of 4, 6, 8 and 12: exact with everybody there, .92 to .99 where visits are missing.
TEST_CASE("the slope's interval covers its level", "[repeated]") { requireSlopeCoverage(0.5, 200, false); }

// With days as far apart as half an answer's own chance, 4 tasters to 12 lose from .89 to .77 when the session is left out.
TEST_CASE("the slope's interval covers its level in full and falls short without the session", "[.long]") { requireSlopeCoverage(0.5, 4'000, true); }

TEST_CASE("the slope's interval covers its level in full whether days matter or not", "[.long]") {
  for (const double day : {0.0, 0.2, 1.0}) requireSlopeCoverage(day, 2'000, false);
}

// Beside a control .03 to .05; without one, with days 0.3 apart, .08 with 4 tasters to .20 with 12.
TEST_CASE("the last two sittings are seldom called alike when they are not, beside a control", "[repeated]") { requireTrendFalseAlarms(1'000); }

TEST_CASE("the last two sittings are seldom called alike when they are not in full", "[.long]") { requireTrendFalseAlarms(20'000); }

// None with 6 sessions, .02 with 8, .08 with 12.
TEST_CASE("a straight line is seldom taken for a curve", "[repeated]") { requireFewFalseQuadratics(500); }

TEST_CASE("a straight line is seldom taken for a curve in full", "[.long]") { requireFewFalseQuadratics(10'000); }
