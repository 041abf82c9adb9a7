#pragma once

#include "stats/reason.h"
#include "stats/size.h"
#include "stats/signal/yes_no.h"

#include <optional>

namespace oddglass::stats {

/// Where planning puts the criterion unless it is stated: A-not-A without a bias, same-different with a tau of one standard deviation.
inline constexpr double plannedCriterion = 0.0;
inline constexpr double plannedTau = 1.0;

/// How often Fisher's exact test shows a difference.
struct FisherPower {
  double power;
  double alphaActual;  ///< the same when signal and noise are alike and both are called signal as often as the noise is: at most alpha
};

/// Signals and noises served, each at most 20,000; rates from 0 to 1, alpha in (0, 1). Source: exact sum over both binomials of the tables with p at or below alpha.
FisherPower fisherPower(int signals, int noises, const Rates& rates, double alpha);

/// Smallest even numbers of trials, half of them signals, for a wanted power; `critical` has no meaning here and is 0. Searched up to 2,000 trials
/// (why = beyondSearch). power and alpha in (0, 1); rates.hit above rates.falseAlarm. `stable`: power has held for 20 more and for half as many again.
Sizes fisherSizes(const Rates& rates, double power, double alpha);

}  // namespace oddglass::stats
