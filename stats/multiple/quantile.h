#pragma once

#include <boost/math/tools/toms748_solve.hpp>

#include <cmath>
#include <cstdint>
#include <limits>

namespace oddglass::stats {

/// Where the upper tail, which falls from 1 to 0, is `probability`; `upper` and `lower` add up to 1, and the smaller of them is used.
/// From `least` upwards (minus infinity: anywhere).
template <class Upper, class Lower>
double whereUpperTailIs(double probability, double least, const Upper& upper, const Lower& lower) {
  constexpr double smallest = std::numeric_limits<double>::min();
  const auto excess = [&](double at) {
    return probability <= 0.5 ? std::log(std::max(upper(at), smallest) / probability) : -std::log(std::max(lower(at), smallest) / (1.0 - probability));
  };
  double low = std::max(least, 0.0), high = 1.0;
  if (low == 0.0 && std::isinf(least) && excess(0.0) < 0.0) {
    low = -1.0;
    high = 0.0;
    while (excess(low) < 0.0) high = low, low *= 2.0;
  } else {
    while (excess(high) > 0.0) low = high, high *= 2.0;
  }
  std::uintmax_t steps = 200;
  const auto ends = boost::math::tools::toms748_solve(excess, low, high, boost::math::tools::eps_tolerance<double>(48), steps);
  return (ends.first + ends.second) / 2.0;
}

}  // namespace oddglass::stats
