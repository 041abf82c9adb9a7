#include "stats/trend/shape.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/trend/line.h"

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;

// Sources beside each case in people_and_time.json and trend.json.
TEST_CASE("shape and peak: published cases") {
  int looked = 0;
  for (const auto& c : checks::family("people_and_time")) {
    if (c["id"] != "trend_peak_closed") continue;
    const auto age = c["inputs"]["ages"].get<std::vector<double>>(), mean = c["inputs"]["session_means"].get<std::vector<double>>();
    const auto& out = c["expected"];
    const ShapeChoice shape = chooseShape(age, mean);
    CHECK_THAT(shape.linear.value(), WithinAbs(out["aicc_linear"].get<double>(), 1e-7));
    CHECK_THAT(shape.quadratic.value(), WithinAbs(out["aicc_quadratic"].get<double>(), 1e-7));
    CHECK(out["shape"] == "quadratic");
    CHECK(shape.chosen == Shape::quadratic);
    CHECK_FALSE(shape.spline);  // seven sessions are too few
    const Peak peak = peakOf(age, mean, 0.95);
    CHECK_THAT(peak.age.value(), WithinAbs(out["peak"]["age"].get<double>(), 1e-7));
    CHECK_THAT(peak.low.value(), WithinAbs(out["peak"]["low"].get<double>(), 1e-7));
    CHECK_THAT(peak.high.value(), WithinAbs(out["peak"]["high"].get<double>(), 1e-7));
    checks::requireAllSeen(out, {"aicc_linear", "aicc_quadratic", "shape", "peak"});
    ++looked;
  }
  for (const auto& c : checks::family("trend")) {
    if (c["id"] != "trend_quadratic_peak") continue;
    const auto age = c["inputs"]["months"].get<std::vector<double>>(), mean = c["inputs"]["score"].get<std::vector<double>>();
    Eigen::MatrixXd x(age.size(), 3);
    for (std::size_t i = 0; i < age.size(); ++i) x.row(static_cast<Eigen::Index>(i)) << 1.0, age[i], age[i] * age[i];
    const auto fit = leastSquares(x, Eigen::Map<const Eigen::VectorXd>(mean.data(), static_cast<Eigen::Index>(mean.size())));
    const auto& out = c["expected"];
    for (int k = 0; k < 3; ++k) CHECK_THAT(fit.value().coefficients(k), WithinAbs(out["coef_a0_a1_a2"][k].get<double>(), 1e-8));
    CHECK_THAT(peakOf(age, mean, 0.95).age.value(), WithinAbs(out["peak_month"].get<double>(), 1e-8));
    const double top = out["peak_month"];
    CHECK_THAT(fit->coefficients(0) + fit->coefficients(1) * top + fit->coefficients(2) * top * top, WithinAbs(out["peak_score"].get<double>(), 1e-8));
    checks::requireAllSeen(out, {"coef_a0_a1_a2", "peak_month", "peak_score"});
    ++looked;
  }
  CHECK(looked == 2);
}

// Sources beside each case in trend.json. Left out: Mann-Kendall's test and the Theil-Sen slope, which are not offered.
TEST_CASE("a line through session means: published cases") {
  int looked = 0;
  for (const auto& c : checks::family("trend")) {
    const std::string id = c["id"];
    if (!id.starts_with("trend_small") && id != "trend_two_batches") continue;
    INFO(id);
    const auto age = c["inputs"]["months"].get<std::vector<double>>(), mean = c["inputs"]["score"].get<std::vector<double>>();
    const auto& out = c["expected"];
    const bool hasBatches = c["inputs"].contains("batch");
    Eigen::MatrixXd x(age.size(), hasBatches ? 4 : 2);
    for (std::size_t i = 0; i < age.size(); ++i) {
      const double batch = hasBatches ? c["inputs"]["batch"][i].get<double>() : 0.0;
      if (hasBatches) x.row(static_cast<Eigen::Index>(i)) << 1.0, age[i], batch, batch * age[i];
      else x.row(static_cast<Eigen::Index>(i)) << 1.0, age[i];
    }
    const auto fit = leastSquares(x, Eigen::Map<const Eigen::VectorXd>(mean.data(), static_cast<Eigen::Index>(mean.size()))).value();
    const double variance = fit.residualSquares / fit.df;
    if (hasBatches) {
      CHECK_THAT(fit.coefficients(1), WithinAbs(out["slope_batch0"].get<double>(), 1e-8));
      CHECK_THAT(fit.coefficients(3), WithinAbs(out["slope_difference"].get<double>(), 1e-8));
      CHECK_THAT(fit.coefficients(3) / std::sqrt(variance * fit.unscaled(3, 3)), WithinAbs(out["t_slope_difference"].get<double>(), 1e-7));
    } else {
      CHECK_THAT(fit.coefficients(0), WithinAbs(out["intercept"].get<double>(), 1e-9));
      CHECK_THAT(std::sqrt(variance * fit.unscaled(0, 0)), WithinAbs(out["se_intercept"].get<double>(), 1e-9));
      CHECK_THAT(std::sqrt(variance), WithinAbs(out["residual_sd"].get<double>(), 1e-9));
    }
    ++looked;
  }
  CHECK(looked == 4);
}

TEST_CASE("an open side of the peak has no limit") {
  // Two sessions past the top only: the rise is seen, the fall hardly.
  const std::vector<double> age{0, 1, 2, 3, 4, 5, 6}, mean{4.0, 5.1, 5.8, 6.6, 6.7, 7.1, 6.9};
  const Peak peak = peakOf(age, mean, 0.95);
  REQUIRE(peak.age);
  CHECK(peak.low.value() < *peak.age);
  CHECK_FALSE(peak.high);
  CHECK_FALSE(peak.why);
  // Downwards only within the ages: no peak.
  CHECK(peakOf(age, {9, 8.9, 8, 7, 5, 3, 0}, 0.95).age.has_value());
  const Peak falling = peakOf({1, 2, 3, 4, 5, 6}, {9.0, 7.9, 6.7, 5.2, 3.8, 2.0}, 0.95);
  CHECK_FALSE(falling.age);
  CHECK(falling.why == Reason::notGiven);
  const Peak valley = peakOf(age, {5, 3, 2, 1, 2, 3, 5}, 0.95);
  CHECK_FALSE(valley.age);
}

TEST_CASE("each shape needs its sessions") {
  const auto with = [](int n, double bend) {
    std::vector<double> age, mean;
    for (int i = 0; i < n; ++i) age.push_back(i), mean.push_back(5.0 + bend * i * i + (i % 2 ? 0.3 : -0.3));
    return chooseShape(age, mean);
  };
  CHECK(with(4, 0.0).why == Reason::fewSessions);
  CHECK_FALSE(with(4, 0.0).chosen);
  CHECK((with(5, 1.0).linear && !with(5, 1.0).quadratic));
  CHECK(with(5, 1.0).chosen != Shape::quadratic);
  CHECK((with(6, 1.0).quadratic && !with(7, 1.0).spline && with(8, 1.0).spline));
  CHECK(with(8, 0.0).chosen == Shape::flat);
  CHECK(with(8, 1.0).chosen == Shape::quadratic);
  CHECK(chooseShape({3, 3, 3, 3, 3}, {1, 2, 3, 4, 5}).why == Reason::oneAge);
  // Nothing left over: the simplest shape that does it, without an AICc.
  const ShapeChoice exact = chooseShape({0, 1, 2, 3, 4, 5}, {1, 3, 5, 7, 9, 11});
  CHECK(exact.chosen == Shape::linear);
  CHECK_FALSE(exact.linear);
  CHECK(exact.flat);
  CHECK(exact.why == Reason::noSpread);
  CHECK(chooseShape({0, 1, 2, 3, 4}, {5.1, 5.1, 5.1, 5.1, 5.1}).chosen == Shape::flat);
  CHECK_THROWS_AS(chooseShape({1, 2}, {1}), BadInput);
  CHECK_THROWS_AS(chooseShape({1, NAN}, {1, 2}), BadInput);
  CHECK_THROWS_AS(peakOf({1, 2}, {1, 2}, 2.0), BadInput);
}
