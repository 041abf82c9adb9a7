#include "stats/posterior.h"

#include "stats/check.h"

#include <boost/math/special_functions/beta.hpp>

#include <algorithm>
#include <cmath>

namespace oddglass::stats {

std::optional<SharePosterior> SharePosterior::of(int correct, int trials, double guess) {
  requireCount("correct", correct, trials);
  if (!(guess >= 0.0 && guess < 1.0)) throw BadInput("guess", "must be from 0 to below 1");
  const double a = correct + 1.0, b = trials - correct + 1.0;
  const double mass = boost::math::ibetac(a, b, guess);
  if (!(mass > 1e-290)) return std::nullopt;
  return SharePosterior(a, b, guess, mass);
}

double SharePosterior::quantile(double q) const {
  requireOpenShare("q", q);
  const double pc = boost::math::ibetac_inv(a_, b_, (1.0 - q) * mass_);
  return std::clamp((pc - guess_) / (1.0 - guess_), 0.0, 1.0);
}

double SharePosterior::above(double share) const {
  requireShare("share", share);
  return std::clamp(boost::math::ibetac(a_, b_, guess_ + (1.0 - guess_) * share) / mass_, 0.0, 1.0);
}

double SharePosterior::density(double share) const {
  requireShare("share", share);
  return (1.0 - guess_) * boost::math::ibeta_derivative(a_, b_, guess_ + (1.0 - guess_) * share) / mass_;
}

double SharePosterior::mean() const {
  const double pc = a_ / (a_ + b_) * boost::math::ibetac(a_ + 1.0, b_, guess_) / mass_;
  return std::clamp((pc - guess_) / (1.0 - guess_), 0.0, 1.0);
}

std::optional<double> bayesFactorDifference(int correct, int trials, double guess) {
  requireCount("correct", correct, trials);
  requireOpenShare("guess", guess);
  const double a = correct + 1.0, b = trials - correct + 1.0;
  // The density of Beta(a, b) at the guess is (n + 1) times the binomial mass there.
  const double tail = boost::math::ibetac(a, b, guess), density = boost::math::ibeta_derivative(a, b, guess);
  const double factor = density > 0.0 ? tail / ((1.0 - guess) * density) : 0.0;
  if (!(density > 0.0) || !std::isfinite(factor)) return std::nullopt;
  return factor;
}

}  // namespace oddglass::stats
