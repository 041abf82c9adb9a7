#include "stats/preference.h"

#include "stats/check.h"

#include <boost/math/distributions/chi_squared.hpp>

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

/// The three cells with their counts.
struct Cells {
  int first, second, wrong;
  double guess;

  double rightAnd(double pd, double theta) const { return pd * theta + (1.0 - pd) * guess / 2.0; }
  static double part(int count, double p) { return count == 0 ? 0.0 : count * std::log(p); }

  double logLikelihood(double pd, double theta) const {
    return part(first, rightAnd(pd, theta)) + part(second, rightAnd(pd, 1.0 - theta)) + part(wrong, (1.0 - pd) * (1.0 - guess));
  }

  double slope(double pd, double theta) const {
    const auto part = [&](int count, double share) { return count == 0 ? 0.0 : count * (share - guess / 2.0) / rightAnd(pd, share); };
    return part(first, theta) + part(second, 1.0 - theta) - (wrong == 0 ? 0.0 : wrong / (1.0 - pd));
  }

  /// The greatest log-likelihood with this theta; the slope in pd only falls, so halving finds it.
  double profile(double theta) const {
    double low = 0.0, high = 1.0;
    for (int step = 0; step < 60; ++step) {
      const double middle = (low + high) / 2.0;
      (slope(middle, theta) > 0.0 ? low : high) = middle;
    }
    return logLikelihood((low + high) / 2.0, theta);
  }
};

}  // namespace

std::optional<Estimate> preferenceOfTellers(int first, int second, int wrong, double guess, double level) {
  requireTrials("first", first);
  requireTrials("second", second);
  requireTrials("wrong", wrong);
  requireOpenShare("guess", guess);
  requireOpenShare("level", level);
  const int right = first + second;
  if (right == 0) return std::nullopt;
  const double pc = static_cast<double>(right) / (right + wrong), pd = (pc - guess) / (1.0 - guess);
  if (pd <= 0.0) return std::nullopt;
  const Cells cells{first, second, wrong, guess};
  const double theta = std::clamp(0.5 + (static_cast<double>(first) / right - 0.5) * pc / pd, 0.0, 1.0);
  const double floor = cells.profile(theta) - boost::math::quantile(boost::math::chi_squared(1), level) / 2.0;
  // The profile rises to theta and falls after it, so each end is found by halving; where it never falls below the floor the end is 0 or 1.
  const auto end = [&](double outside) {
    if (cells.profile(outside) >= floor) return outside;
    double inside = theta;
    for (int step = 0; step < 60; ++step) {
      const double middle = (inside + outside) / 2.0;
      (cells.profile(middle) >= floor ? inside : outside) = middle;
    }
    return inside;
  };
  return Estimate{theta, end(0.0), end(1.0)};
}

}  // namespace oddglass::stats
