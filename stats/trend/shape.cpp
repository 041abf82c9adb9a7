#include "stats/trend/shape.h"

#include "stats/check.h"
#include "stats/estimated.h"
#include "stats/trend/line.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace oddglass::stats {
namespace {

/// Ages from -1 to 1, so that powers stay well apart; empty where all are the same.
struct Scaled {
  Eigen::VectorXd at;
  double middle, half;
};

std::optional<Scaled> scaled(const std::vector<double>& age) {
  const auto [least, most] = std::ranges::minmax(age);
  if (!(most > least)) return std::nullopt;
  Scaled ages{Eigen::Map<const Eigen::VectorXd>(age.data(), static_cast<Eigen::Index>(age.size())), (least + most) / 2.0, (most - least) / 2.0};
  ages.at = (ages.at.array() - ages.middle) / ages.half;
  return ages;
}

/// A quantile as the mean rank between neighbours (Hyndman and Fan 1996, type 7); `sorted` is not empty.
double quantile(const std::vector<double>& sorted, double share) {
  const double rank = share * static_cast<double>(sorted.size() - 1);
  const auto low = static_cast<std::size_t>(rank);
  return low + 1 < sorted.size() ? sorted[low] + (rank - static_cast<double>(low)) * (sorted[low + 1] - sorted[low]) : sorted[low];
}

Eigen::MatrixXd powers(const Eigen::VectorXd& at, int columns) {
  Eigen::MatrixXd x(at.size(), columns);
  for (int c = 0; c < columns; ++c) x.col(c) = at.array().pow(c);
  return x;
}

Eigen::MatrixXd naturalSpline(const Eigen::VectorXd& at) {
  std::vector<double> sorted(at.begin(), at.end());
  std::ranges::sort(sorted);
  const double knots[]{sorted.front(), quantile(sorted, 1.0 / 3.0), quantile(sorted, 2.0 / 3.0), sorted.back()};
  const auto cube = [](double v) { return v > 0.0 ? v * v * v : 0.0; };
  const auto bend = [&](double v, int k) { return knots[3] > knots[k] ? (cube(v - knots[k]) - cube(v - knots[3])) / (knots[3] - knots[k]) : 0.0; };
  Eigen::MatrixXd x = powers(at, 4);
  for (Eigen::Index i = 0; i < at.size(); ++i)
    for (int k = 0; k < 2; ++k) x(i, 2 + k) = bend(at(i), k) - bend(at(i), 2);
  return x;
}

void requireSame(const std::vector<double>& age, const std::vector<double>& mean) {
  if (age.size() != mean.size()) throw BadInput("age", "must have as many values as there are session means");
  for (const auto* values : {&age, &mean})
    for (double value : *values)
      if (!(std::fabs(value) <= 1e13)) throw BadInput(values == &age ? "age" : "response", "must be finite numbers");
}

}  // namespace

ShapeChoice chooseShape(const std::vector<double>& age, const std::vector<double>& mean, double scale) {
  requireSame(age, mean);
  ShapeChoice choice;
  const int n = static_cast<int>(age.size()), ages = static_cast<int>(std::set<double>(age.begin(), age.end()).size());
  if (n < 5) choice.why = Reason::fewSessions;
  else if (ages < 2) choice.why = Reason::oneAge;
  if (choice.why) return choice;
  const Scaled at = *scaled(age);
  const Eigen::VectorXd y = Eigen::Map<const Eigen::VectorXd>(mean.data(), n);
  struct Candidate {
    Shape shape;
    int fewest, columns;
    std::optional<double>* aicc;
  };
  double least = 0.0;
  for (const Candidate& each : {Candidate{Shape::flat, 5, 1, &choice.flat}, {Shape::linear, 5, 2, &choice.linear}, {Shape::quadratic, 6, 3, &choice.quadratic}, {Shape::spline, 8, 4, &choice.spline}}) {
    if (n < each.fewest || ages <= each.columns - (each.columns < 3)) continue;
    const auto fit = leastSquares(each.shape == Shape::spline ? naturalSpline(at.at) : powers(at.at, each.columns), y, scale);
    if (!fit) continue;
    if (fit->residualSquares == 0.0) {
      if (choice.why != Reason::noSpread) choice.chosen = each.shape;
      choice.why = Reason::noSpread;
      continue;
    }
    const double k = each.columns + 1.0, aicc = n * std::log(fit->residualSquares / n) + 2.0 * k + 2.0 * k * (k + 1.0) / (n - k - 1.0);
    *each.aicc = aicc;
    if (choice.why != Reason::noSpread && (!choice.chosen || aicc < least)) {
      choice.chosen = each.shape;
      least = aicc;
    }
  }
  return choice;
}

Peak peakOf(const std::vector<double>& age, const std::vector<double>& mean, double level, double scale) {
  requireSame(age, mean);
  requireOpenShare("level", level);
  Peak peak;
  peak.why = Reason::fewSessions;
  const auto at = age.size() < 4 ? std::nullopt : scaled(age);
  if (!at) return peak;
  const auto fit = leastSquares(powers(at->at, 3), Eigen::Map<const Eigen::VectorXd>(mean.data(), at->at.size()), scale);
  if (!fit) return peak;
  const double b1 = fit->coefficients(1), b2 = fit->coefficients(2), top = b2 < 0.0 ? -b1 / (2.0 * b2) : 2.0;
  if (!(top >= -1.0 && top <= 1.0)) {
    peak.why = Reason::notGiven;
    return peak;
  }
  const auto inAges = [&](double x) { return at->middle + at->half * x; };
  peak.age = inAges(top);
  if (fit->residualSquares == 0.0) {
    peak.why = Reason::noSpread;
    return peak;
  }
  peak.why.reset();
  // The set of x with (b1 + 2 b2 x)^2 <= t^2 var(b1 + 2 b2 x): a x^2 + b x + c <= 0.
  const double t = studentPoint((1.0 - level) / 2.0, fit->df), v = t * t * fit->residualSquares / fit->df;
  const double a = 4.0 * (b2 * b2 - v * fit->unscaled(2, 2)), b = 4.0 * (b1 * b2 - v * fit->unscaled(1, 2)), c = b1 * b1 - v * fit->unscaled(1, 1);
  const auto side = [&](double end) -> std::optional<double> {
    if (!(a * end * end + b * end + c > 0.0)) return std::nullopt;  // this end of the ages is in the set
    // Outside at the end and inside at the top: exactly one root lies between, found by halving.
    double in = top, out = end;
    for (int step = 0; step < 100; ++step) {
      const double half = (in + out) / 2.0;
      (a * half * half + b * half + c > 0.0 ? out : in) = half;
    }
    return inAges(in);
  };
  peak.low = side(-1.0);
  peak.high = side(1.0);
  return peak;
}

}  // namespace oddglass::stats
