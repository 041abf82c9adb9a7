#pragma once

#include "stats/reason.h"
#include "stats/size.h"

#include <optional>

namespace oddglass::stats {

/// How often a two-sided preference is shown when each of `people` has one vote.
struct PreferencePower {
  std::optional<int> critical;  ///< of the larger side when everybody votes; empty where no count reaches alpha
  double alphaActual;           ///< chance of a false alarm when tastes are evenly parted, at most alpha
  double power;                 ///< that any preference is shown
  double powerThisWay;          ///< that it is shown for the side that is truly preferred (or for the first, at one half)
};

/// `share` in [0, 1] of those who vote prefer the first; `none` in [0, 1) of the people say "no preference" and are left out of the test, whose count of
/// votes then falls by chance. 0 <= people <= 10 million (100,000 with `none` above 0), alpha in (0, 1).
/// Source: ISO 5495:2005, two-sided; exact binomial, summed over the number of votes.
PreferencePower preferencePower(int people, double share, double alpha, double none = 0.0);

/// Smallest numbers of people for a wanted power, first and stable; as sizeFor. share from 0 to 1 but not one half.
Sizes preferenceSizes(double share, double power, double alpha);

}  // namespace oddglass::stats
