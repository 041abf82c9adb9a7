#pragma once

#include <cmath>
#include <numbers>

namespace oddglass::stats {

/// P(Z <= z) of the standard normal distribution; exact to rounding in both tails. Source: by the complementary error function.
inline double normalBelow(double z) { return std::erfc(-z / std::numbers::sqrt2) / 2.0; }

/// The density of the standard normal distribution at z.
inline double normalDensity(double z) { return std::exp(-z * z / 2.0) / std::sqrt(2.0 * std::numbers::pi); }

}  // namespace oddglass::stats
