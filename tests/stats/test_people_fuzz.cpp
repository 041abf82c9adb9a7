#include "stats/error.h"
#include "stats/lean/expectation.h"
#include "stats/lean/lean.h"
#include "stats/orders/order_effects.h"
#include "stats/panel/panel.h"
#include "stats/simulated.h"
#include "stats/trend/trend.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>

using namespace oddglass::stats;
using simulated::Chance;

// Odd tables of every kind: whatever comes in, an answer is finite or has a reason, or the input is refused by name.

namespace {

double oddScore(Chance& chance, int kind) {
  switch (kind) {
    case 0: return chance.below(9) + 1;
    case 1: return 5.1;
    case 2: return chance.uniform() < 0.5 ? 1e12 : -1e12;
    case 3: return 1e-300 * chance.below(3);
    case 4: return 1e6 + 1e-7 * chance.below(3);
    case 5: return chance.normal(1e5);
    default: return chance.uniform() < 0.02 ? std::numeric_limits<double>::quiet_NaN() : chance.below(3);
  }
}

Factor oddFactor(Chance& chance, std::size_t rows, int most) {
  Factor factor{{}, 1 + chance.below(most)};
  for (std::size_t i = 0; i < rows; ++i) factor.of.push_back(chance.below(factor.levels));
  if (chance.uniform() < 0.02 && rows > 0) factor.of.back() = factor.levels;
  if (chance.uniform() < 0.02) factor.of.push_back(0);
  return factor;
}

ScoreRows oddRows(Chance& chance) {
  ScoreRows rows;
  const int kind = chance.below(7), count = chance.below(60);
  for (int i = 0; i < count; ++i) rows.response.push_back(oddScore(chance, kind));
  rows.sample = oddFactor(chance, rows.response.size(), 6);
  rows.taster = oddFactor(chance, rows.response.size(), 7);
  if (chance.uniform() < 0.5) rows.round = oddFactor(chance, rows.response.size(), 3);
  if (chance.uniform() < 0.5) rows.session = oddFactor(chance, rows.response.size(), 5);
  if (chance.uniform() < 0.8) rows.position = oddFactor(chance, rows.response.size(), 6);
  return rows;
}

void requireFinitePeople(const std::optional<double>& value) {
  if (value) REQUIRE(std::isfinite(*value));
}

void requireSane(const Estimated& found) {
  for (const auto& value : {found.estimate, found.se, found.df, found.low, found.high, found.pValue}) {
    requireFinitePeople(value);
    REQUIRE((value || found.why));
  }
  if (found.pValue) REQUIRE((*found.pValue >= 0.0 && *found.pValue <= 1.0));
  if (found.low) REQUIRE((*found.low <= *found.estimate && *found.estimate <= *found.high));
}

void requireSane(const Alike& found) {
  for (const auto& value : {found.difference, found.low, found.high, found.pValue}) {
    requireFinitePeople(value);
    REQUIRE((value || found.why));
  }
  if (found.pValue) REQUIRE((*found.pValue >= 0.0 && *found.pValue <= 1.0));
}

/// Runs it and says whether it was refused; a refusal names an argument.
template <class Work>
bool isRefused(Work work) {
  try {
    work();
    return false;
  } catch (const BadInput& bad) {
    REQUIRE_FALSE(bad.argument().empty());
    REQUIRE_FALSE(bad.message().empty());
    return true;
  }
}

}  // namespace

TEST_CASE("odd tables of scores: panel, lean, label, alikeness, order") {
  Chance chance(991);
  int refused = 0, answered = 0;
  for (int run = 0; run < 3000; ++run) {
    const ScoreRows rows = oddRows(chance);
    CAPTURE(run);
    const auto count = [&](bool was) { was ? ++refused : ++answered; };
    count(isRefused([&] {
      for (const TasterMeasures& taster : tasterMeasures(rows))
        for (const auto& value : {taster.level, taster.spread, taster.repeatSd, taster.discriminationF, taster.discriminationP, taster.agreement, taster.shrunkLevel, taster.shrunkSpread,
                                  taster.shrunkAgreement}) {
          requireFinitePeople(value);
          REQUIRE((value || !taster.why.empty()));
        }
      const MeanTable means = meanTable(rows);
      REQUIRE((means.table || means.why));
      if (!means.table) return;
      const Reliability found = reliability(twoWay(*means.table), 0.95);
      for (const auto& value : {found.single.estimate, found.single.low, found.single.high, found.ofPanel.estimate, found.ofPanel.low, found.ofPanel.high, found.alpha}) {
        requireFinitePeople(value);
        REQUIRE((value || found.why));
      }
    }));
    count(isRefused([&] {
      const MakerContrast found = makerContrast(ownMinusReference(rows, 0, 1), chance.below(3), 0.95, sizeOf(rows));
      requireSane(found.lean);
      for (const auto& session : found.sessions) requireSane(session.lean);
    }));
    count(isRefused([&] {
      std::vector<bool> isOpen;
      for (std::size_t i = 0; i < rows.response.size(); ++i) isOpen.push_back(chance.uniform() < 0.5);
      requireSane(makerContrast(openMinusBlind(rows, isOpen, 0, 1), 0, 0.9, sizeOf(rows)).lean);
    }));
    count(isRefused([&] { requireSane(pairedAlike(differencesByTaster(rows, 1, 0), 0.5 + chance.uniform(), 0.05)); }));
    count(isRefused([&] {
      std::vector<int> previous;
      for (std::size_t i = 0; i < rows.response.size(); ++i) previous.push_back(chance.below(rows.sample.levels + 1) - 1);
      const OrderEffects found = orderEffects(rows, previous, 0.95);
      requireSane(found.firstPosition);
      for (const auto& value : {found.carryOver.F, found.carryOver.df1, found.carryOver.df2, found.carryOver.pValue}) {
        requireFinitePeople(value);
        REQUIRE((value || found.carryOver.why));
      }
      for (const auto& each : found.carryOver.previous) requireSane(each.effect);
    }));
    count(isRefused([&] {
      std::vector<double> second;
      for (std::size_t i = 0; i < rows.response.size(); ++i) second.push_back(oddScore(chance, chance.below(6)));
      const Halo found = halo(rows, second);
      requireFinitePeople(found.correlation);
      requireFinitePeople(found.pValue);
      REQUIRE((found.correlation || found.why));
    }));
  }
  CHECK(refused > 500);
  CHECK(answered > 500);
}

TEST_CASE("odd sittings: trend and the last two") {
  Chance chance(992);
  int refused = 0, answered = 0;
  for (int run = 0; run < 2000; ++run) {
    TimeRows rows;
    const int kind = chance.below(7), count = chance.below(50);
    for (int i = 0; i < count; ++i) rows.response.push_back(oddScore(chance, kind));
    rows.taster = oddFactor(chance, rows.response.size(), 6);
    rows.session = oddFactor(chance, rows.response.size(), 9);
    const int ages = chance.below(4);
    for (int s = 0; s < rows.session.levels; ++s) rows.age.push_back(ages == 0 ? 3.0 : ages == 1 ? chance.below(3) : ages == 2 ? 1e12 * chance.uniform() : chance.normal(10.0));
    if (chance.uniform() < 0.3)
      for (int i = 0; i < count; ++i) rows.isControl.push_back(chance.uniform() < 0.5);
    CAPTURE(run, kind, ages, count);
    const bool was = isRefused([&] {
      const Trend found = trend(rows, 0.95);
      requireSane(found.slope);
      requireSane(found.changeSinceFirst);
      for (const auto& value : {found.variance.taster, found.variance.session, found.variance.residual}) {
        requireFinitePeople(value);
        REQUIRE((value || found.variance.why));
      }
      for (const auto& value : {found.shape.flat, found.shape.linear, found.shape.quadratic, found.shape.spline, found.peak.age, found.peak.low, found.peak.high}) requireFinitePeople(value);
      REQUIRE((found.shape.chosen || found.shape.why));
      REQUIRE((found.peak.age || found.peak.why));
      if (found.peak.low) REQUIRE(*found.peak.low <= *found.peak.age);
      if (found.peak.high) REQUIRE(*found.peak.high >= *found.peak.age);
      requireSane(lastTwoAlike(rows, 1.0, 0.05));
    });
    was ? ++refused : ++answered;
  }
  CHECK(refused > 100);
  CHECK(answered > 500);
}

TEST_CASE("odd expectations") {
  Chance chance(993);
  for (int run = 0; run < 500; ++run) {
    std::vector<double> p;
    std::vector<bool> cameTrue;
    for (int i = chance.below(60); i > 0; --i) {
      p.push_back(chance.uniform() < 0.01 ? chance.normal(2.0) : 0.01 + 0.98 * chance.uniform());
      cameTrue.push_back(chance.uniform() < 0.5);
    }
    isRefused([&] {
      const Calibration found = calibration(p, cameTrue, 0.95);
      REQUIRE((std::isfinite(found.brier) && std::isfinite(found.logScore) && found.pValue && *found.pValue >= 0.0 && *found.pValue <= 1.0));
      int count = 0;
      for (const auto& band : found.curve) count += band.count;
      REQUIRE(count == (p.size() < 20 ? 0 : static_cast<int>(p.size())));
    });
  }
  // A great many: no count is made that would take for ever.
  const Calibration many = calibration(std::vector<double>(30'000, 0.5), std::vector<bool>(30'000, true), 0.95);
  CHECK_FALSE(many.pValue);
}
