#include "stats/mixed/reml.h"
#include "stats/ordinal/ordinal.h"
#include "stats/simulated.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace oddglass::stats;
using simulated::Chance;

namespace {

Factor drawn(Chance& chance, int rows, int levels) {
  Factor factor{{}, levels};
  for (int i = 0; i < rows; ++i) factor.of.push_back(chance.below(levels));
  return factor;
}

/// Everything a fit gives away is a finite number, and variances and degrees of freedom are not negative.
void requireFinite(const RemlFit& fit, int levelsOfSample) {
  REQUIRE(std::isfinite(fit.criterion));
  REQUIRE(fit.residual > 0.0);
  REQUIRE(fit.fixed.allFinite());
  REQUIRE(fit.covariance.allFinite());
  REQUIRE(fit.parameterCovariance.allFinite());
  for (const TermVariance& term : fit.terms) {
    REQUIRE(std::isfinite(term.variance));
    REQUIRE((term.state == TermState::estimated ? term.variance > 0.0 : term.variance == 0.0));
    for (double effect : term.effects) REQUIRE(std::isfinite(effect));
  }
  for (Eigen::Index i = 0; i < fit.fixed.size(); ++i) {
    const auto one = contrast(fit, Eigen::VectorXd::Unit(fit.fixed.size(), i));
    if (!one) continue;
    REQUIRE(std::isfinite(one->high - one->low));
    REQUIRE(one->df > 0.0);
    REQUIRE((one->pValue >= 0.0 && one->pValue <= 1.0));
  }
  if (levelsOfSample < 2) return;
  const FTest test = fTest(fit, Eigen::MatrixXd::Identity(fit.fixed.size(), fit.fixed.size()).bottomRows(levelsOfSample - 1));
  REQUIRE((std::isfinite(test.F) && std::isfinite(test.df2) && test.df2 > 0.0 && test.pValue >= 0.0 && test.pValue <= 1.0));
}

}  // namespace

TEST_CASE("small and broken tables have a fit of finite numbers or a reason") {
  Chance chance(99);
  int fits = 0, reasons = 0;
  for (int draw = 0; draw < 3000; ++draw) {
    CAPTURE(draw);
    const int rows = 2 + chance.below(draw % 3 == 0 ? 5 : 20), samples = 1 + chance.below(4);
    const Factor sample = drawn(chance, rows, samples), taster = drawn(chance, rows, 1 + chance.below(6)), session = drawn(chance, rows, 1 + chance.below(4));
    const int kind = chance.below(4);
    std::vector<double> y;
    for (int i = 0; i < rows; ++i) {
      const double byTaster = taster.of[static_cast<std::size_t>(i)], whole = chance.below(3);
      y.push_back(kind == 0 ? whole : kind == 1 ? byTaster : kind == 2 ? byTaster * 1e6 + 1e-3 * chance.normal() : 1e8 + chance.normal());
    }
    FixedEffects fixed(static_cast<std::size_t>(rows));
    fixed.addIntercept();
    fixed.addFactor("sample", sample);
    const Reml made = fitReml(fixed, {{"taster", taster}, {"taster:sample", combined(taster, sample)}, {"session", session}}, y);
    REQUIRE(made.fit.has_value() != made.why.has_value());
    if (made.fit) requireFinite(*made.fit, samples), ++fits;
    else ++reasons;
  }
  CHECK(fits > 300);
  CHECK(reasons > 300);
}

TEST_CASE("small and broken ratings have a fit of finite numbers or a reason") {
  Chance chance(7);
  int fits = 0, reasons = 0;
  for (int draw = 0; draw < 600; ++draw) {
    CAPTURE(draw);
    const int rows = 2 + chance.below(draw % 2 ? 30 : 8);
    ScoreRows table;
    table.sample = drawn(chance, rows, 2 + chance.below(2));
    table.taster = drawn(chance, rows, 1 + chance.below(5));
    const int kind = chance.below(3), categories = 1 + chance.below(5);
    for (int i = 0; i < rows; ++i) {
      const int byTaster = table.taster.of[static_cast<std::size_t>(i)], bySample = table.sample.of[static_cast<std::size_t>(i)];
      table.response.push_back(kind == 0 ? chance.below(categories) : kind == 1 ? byTaster + chance.below(2) : bySample + chance.below(2));
    }
    const RatedSamples rated = rateSamples(table, 1 + 4 * (draw % 2));
    REQUIRE((rated.fit.has_value() || rated.why.has_value()));
    if (!rated.fit) {
      ++reasons;
      continue;
    }
    ++fits;
    REQUIRE((std::isfinite(rated.fit->logLikelihood) && rated.fit->thresholds.allFinite() && rated.fit->groupSd >= 0.0));
    for (const SampleShift& each : rated.samples) REQUIRE((std::isfinite(each.estimate) && each.se > 0.0 && std::isfinite(each.se) && each.pValue >= 0.0 && each.pValue <= 1.0));
    if (rated.ratio) REQUIRE((std::isfinite(*rated.ratio) && *rated.pValue >= 0.0 && *rated.pValue <= 1.0));
  }
  CHECK(fits > 100);
  CHECK(reasons > 100);
}
