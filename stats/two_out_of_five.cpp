#include "stats/two_out_of_five.h"

#include <boost/math/quadrature/gauss.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace oddglass::stats {

namespace {

// The two odd cups Y ~ N(d, 1) are picked as the highest two when all three X ~ N(0, 1) lie below them and the largest X,
// m, lies below the mean of all five: (Y1 + Y2 - 2m) >= (2m - X1 - X2). With u and v for the two sides, Y1 + Y2 and X1 + X2
// are N(2d, 2) and N(0, 2), and given a sum the two stand on the right side of m with probability 2 Phi(u / sqrt 2) - 1 =
// erf(u / 2). The product of the three normal densities in m integrates to G(u, v), which leaves two integrals, v < u.
double side(double u) { return std::erf(u / 2.0); }

PcAndSlope highestTwo(double d) {
  using Rule = boost::math::quadrature::gauss<double, 30>;
  const auto panels = [](auto&& f, double low, double high, int count) {
    PcAndSlope sum{0.0, 0.0};
    const double half = (high - low) / (2.0 * count);
    for (int k = 0; k < count; ++k) {
      const double middle = low + (2 * k + 1) * half;
      for (std::size_t i = 0; i < Rule::abscissa().size(); ++i)
        for (const double sign : {-1.0, 1.0}) {
          const PcAndSlope at = f(middle + sign * half * Rule::abscissa()[i]);
          sum.pc += at.pc * Rule::weights()[i] * half;
          sum.slope += at.slope * Rule::weights()[i] * half;
        }
    }
    return sum;
  };
  const auto outer = [&](double u) {
    const double a = u - 2.0 * d;
    const auto inner = [&](double v) {
      const double g = std::exp(-0.15 * a * a - 0.15 * v * v - 0.2 * a * v) * side(v);
      return PcAndSlope{g, g * (0.6 * a + 0.4 * v)};
    };
    // In v the density is normal with mean -2a/3 and variance 10/3; ten standard deviations hold all of it.
    const double low = std::max(0.0, -2.0 * a / 3.0 - 18.3), high = std::min(u, std::max(0.0, -2.0 * a / 3.0) + 18.3);
    if (high <= low) return PcAndSlope{0.0, 0.0};
    PcAndSlope sum = panels(inner, low, high, 2);
    sum.pc *= side(u);
    sum.slope *= side(u);
    return sum;
  };
  const double low = std::max(0.0, 2.0 * d - 22.0), high = std::max(2.0 * d, 0.0) + 22.0;
  PcAndSlope sum = panels(outer, low, high, 4);
  const double scale = 3.0 / (4.0 * std::numbers::pi * std::sqrt(5.0));
  return {sum.pc * scale, sum.slope * scale};
}

}  // namespace

PcAndSlope twoOutOfFive(double dPrime) {
  // Being the lowest two is being the highest two with every sign turned round.
  const PcAndSlope high = highestTwo(dPrime), low = highestTwo(-dPrime);
  return {high.pc + low.pc, high.slope - low.slope};
}

}  // namespace oddglass::stats
