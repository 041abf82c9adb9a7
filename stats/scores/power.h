#pragma once

#include "stats/reason.h"

#include <optional>

namespace oddglass::stats {

/// A plan of scores: every taster scores every sample in every round.
/// Tasters 2 to 10,000, samples 2 to 500, rounds 1 to 1,000; standard deviations in points of the scale, 0 or more.
struct ScorePlan {
  int tasters = 0, samples = 2, rounds = 1;
  double sdInteraction = 1.0;  ///< how much tasters differ in what they find between samples (1 on nine points until there is something better)
  double sdRepeat = 1.0;       ///< how much one taster differs from round to round (likewise)
};

/// What such a plan shows. `power`: chance that the F test of the samples ends below alpha when two samples lie `difference` apart and the others
/// midway (of all patterns with that gap, the one that shows least); with two samples, the two-sided paired t test. `smallestDifference`:
/// the gap that this shows with chance `wanted`. Empty with a reason: oneTaster; noSpread where both deviations are 0.
struct ScorePower {
  std::optional<double> power, smallestDifference;
  std::optional<Reason> why;
};

/// difference any finite number (its size counts), alpha and wanted in (0, 1), alpha below wanted. BadInput otherwise.
/// Source: noncentral F with s - 1 and (s - 1)(t - 1) df, noncentrality t r d^2 / (2 (r sd_interaction^2 + sd_repeat^2)); Scheffe 1959.
ScorePower scorePower(const ScorePlan& plan, double difference, double alpha = 0.05, double wanted = 0.8);

/// P(F > f) of the noncentral F distribution. f >= 0, df above 0, noncentrality from 0 to 1e8. A Poisson mixture of beta tails.
double noncentralFisherTail(double f, double df1, double df2, double noncentrality);

}  // namespace oddglass::stats
