#pragma once

#include <boost/math/special_functions/gamma.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace oddglass::stats {

/// From this many degrees of freedom on, the estimated spread is taken as the true one: the difference is below 1e-9.
inline constexpr double asGoodAsKnown = 1e10;
inline constexpr double fewestDf = 0.1;

/// The step on log s of the integral below.
inline double spreadStep(double df, std::size_t values) { return std::min({0.1, 0.6 / std::sqrt(2.0 * df), 0.3 / (1.0 + std::log(static_cast<double>(values)))}); }

/// The mean of `chance(s)` over s = sqrt(chi-square / df), the ratio of an estimated standard deviation to the true one, df in [0.1, inf).
/// `chance` is a probability that never falls (`isRising`) or never rises with s, and is smooth;
/// the more `values` it is about, the narrower it changes. The trapezoidal rule on log s converges
/// exponentially here (error below 1e-13), wherever its points start: they lie at `offset` steps from 0, within half a step. It adds positive terms only,
/// so that small probabilities keep their digits.
template <class Chance>
double meanOverSpread(double df, std::size_t values, bool isRising, const Chance& chance, double offset = 0.0) {
  if (df >= asGoodAsKnown) return chance(1.0);
  const double step = spreadStep(df, values);
  const double scale = df * boost::math::gamma_p_derivative(df / 2.0, df / 2.0);
  const auto term = [&](double u) {
    const double density = scale * std::exp(-df * (std::expm1(2.0 * u) / 2.0 - u));
    return density > 0.0 ? density * chance(std::exp(u)) : 0.0;
  };
  double sum = term(offset * step);
  for (const double side : {-1.0, 1.0}) {
    // Towards the rise of `chance` terms may first be too small for any number; the density bounds how far that can go.
    const bool climbs = (side > 0.0) == isRising;
    const double farthest = side < 0.0 ? 0.5 + 800.0 / df : 0.5 * std::log(2.0 + 1600.0 / df);
    double before = 0.0;
    for (int i = 1; i * step <= farthest; ++i) {
      const double here = term((side * i + offset) * step);
      sum += here;
      if (here <= before && here <= 1e-18 * sum && (sum > 0.0 || !climbs)) break;
      before = here;
    }
  }
  return std::min(1.0, sum * step);
}

}  // namespace oddglass::stats
