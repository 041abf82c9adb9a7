#pragma once

#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/special_functions/gamma.hpp>

#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

/// The distributions of many comparisons, integrated in another order and by another rule than in `stats`: the density of the range (of the largest
/// t at a known spread) first, then the chance that the spread is small enough. Adaptive Gauss-Kronrod throughout. Slow, and meant to be plain.
namespace direct {

using Rule = boost::math::quadrature::gauss_kronrod<double, 31>;

inline double phi(double x) { return std::exp(-x * x / 2) / std::sqrt(2 * std::numbers::pi); }
inline double Phi(double x) { return std::erfc(-x / std::numbers::sqrt2) / 2; }

inline double inPieces(const std::function<double(double)>& f, const std::vector<double>& points) {
  double sum = 0;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) sum += Rule::integrate(f, points[i], points[i + 1], 6, 1e-9);
  return sum;
}

/// k (k - 1) integral phi(x) phi(x + r) [Phi(x + r) - Phi(x)]^(k - 2) dx, the density of the range at r (Hartley 1942).
inline double rangeDensity(double r, int k) {
  const auto f = [&](double x) { return phi(x) * phi(x + r) * std::pow(x > 0 ? Phi(-x) - Phi(-x - r) : Phi(x + r) - Phi(x), k - 2); };
  return k * (k - 1.0) * Rule::integrate(f, -r / 2 - 9, -r / 2 + 9, 8, 1e-10);
}

/// P(range / s > q): the spread is below r / q.
inline double studentizedRangeAbove(double q, int k, double df) {
  return inPieces([&](double r) { return rangeDensity(r, k) * boost::math::gamma_p(df / 2, df * r * r / (2 * q * q)); },
                  {0, 0.5, 1, 2, 3, 4, 5, 6, 8, 10, 14, 20, 30, 60});
}

/// The density at d of the largest |t| (or t) of treatments against one control when the spread is known; t_i = sqrt(1 - b_i^2) y_i + b_i x.
inline double dunnettDensity(double d, const std::vector<double>& b, bool isTwoSided) {
  const auto at = [&](double x) {
    double sum = 0;
    for (std::size_t i = 0; i < b.size(); ++i) {
      const auto rest = [&](std::size_t j) { return std::sqrt(1 - b[j] * b[j]); };
      double product = phi((d - b[i] * x) / rest(i)) / rest(i);
      if (isTwoSided) product += phi((-d - b[i] * x) / rest(i)) / rest(i);
      for (std::size_t j = 0; j < b.size(); ++j)
        if (j != i) product *= Phi((d - b[j] * x) / rest(j)) - (isTwoSided ? Phi((-d - b[j] * x) / rest(j)) : 0);
      sum += product;
    }
    return phi(x) * sum;
  };
  return inPieces(at, {-d - 9, -d / 2 - 4, -2, 0, 2, d / 2 + 4, d + 9});
}

/// P(largest |t| (or t) > q), q above 0.
inline double dunnettAbove(double q, const std::vector<double>& b, bool isTwoSided, double df) {
  return inPieces([&](double d) { return dunnettDensity(d, b, isTwoSided) * boost::math::gamma_p(df / 2, df * d * d / (2 * q * q)); },
                  {0, 0.5, 1, 2, 3, 4, 5, 6, 8, 10, 14, 20, 30});
}

}  // namespace direct
