#pragma once

namespace oddglass::stats {

/// Pc and its slope for two-out-of-five at d' >= 0. The taster takes the grouping with the least within-group sum of
/// squares: the lowest two when the median of the five lies above their mean, else the highest two. Accurate to 1e-9.
/// Source: definition of the rule; the integral over the middle cup is done in closed form (see the .cpp).
struct PcAndSlope {
  double pc;
  double slope;
};
PcAndSlope twoOutOfFive(double dPrime);

}  // namespace oddglass::stats
