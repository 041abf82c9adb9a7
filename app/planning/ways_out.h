#pragma once

#include "planning/chances.h"
#include "planning/outlook.h"

#include <vector>

namespace oddglass::planning {

/// The chances of a plan.
struct Reach {
  std::optional<int> needed;
  double half = 0.0;             ///< to show what half can taste (what 3 in 4 prefer), the person as the unit
  std::optional<double> alike;   ///< to end alike when nobody can tell
};
Reach reachOf(const Setup& setup, const Size& size);

/// True when the plan does what is sought 8 times in 10 (customary power, *common practice*).
bool reachesFar(const Setup& setup, const Reach& reach);

/// The ways out of this plan in the order they are offered; empty when it reaches far and lies under the ceiling.
std::vector<WayOut> waysOutOf(const Setup& setup);

}  // namespace oddglass::planning
