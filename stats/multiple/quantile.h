#pragma once

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>

namespace oddglass::stats {

/// Where the upper tail, which falls from 1 to 0, is `probability`; `upper` and `lower` add up to 1, and the smaller of them is used.
/// Looks at values from 0 upwards, or anywhere when there may be `belowZero` as well. The search is on a scale that is even near 0 and
/// logarithmic far out, since few degrees of freedom have very long tails. Empty where no number is large enough.
template <class Upper, class Lower>
std::optional<double> whereUpperTailIs(double probability, bool belowZero, const Upper& upper, const Lower& lower) {
  constexpr double smallest = std::numeric_limits<double>::min(), farthest = 700.0;
  const auto excess = [&](double t) {
    const double at = std::sinh(t);
    return probability <= 0.5 ? std::log(std::max(upper(at), smallest) / probability) : -std::log(std::max(lower(at), smallest) / (1.0 - probability));
  };
  const double side = belowZero && excess(0.0) < 0.0 ? -1.0 : 1.0;
  double near = 0.0, far = 1.0;
  while (side * excess(side * far) > 0.0) {
    if (far >= farthest) return std::nullopt;
    near = far;
    far = std::min(2.0 * far, farthest);
  }
  std::uintmax_t steps = 300;
  const auto ends = boost::math::tools::toms748_solve(excess, std::min(side * near, side * far), std::max(side * near, side * far), boost::math::tools::eps_tolerance<double>(48), steps);
  return std::sinh((ends.first + ends.second) / 2.0);
}

}  // namespace oddglass::stats
