#pragma once

#include "stats/replicated.h"

#include <optional>

namespace oddglass::stats {

/// What is known of a change, `after` minus `before`.
struct ChangeOfShare {
  double median;
  double low;   ///< equal tails at the level asked for
  double high;
};

/// The change of the share of one person's trials in which they tell, pd, on its scale from -1 to 1: both shares uniform on [0, 1] beforehand and
/// independent, right answers binomial with guess + pd (1 - guess). Empty without trials on either side, and where the counts lie so far below guessing that
/// the posterior has no numbers. guess in [0, 1), level in (0, 1).
/// Source: Bayes' rule as in stats/posterior.h; the difference by quadrature over the first share.
std::optional<ChangeOfShare> changeOfShare(PersonCount before, PersonCount after, double guess, double level);

/// How many times as far one spread is as another: sd after / sd before, from two sums of squares with their degrees of freedom.
struct RatioOfSpreads {
  double ratio;
  double low;
  double high;
};

/// Normal deviations around means that were taken off already. Empty where there is no degree of freedom, or no spread, on either side.
/// Sums of squares >= 0, level in (0, 1). Source: Fisher's F of two independent variances.
std::optional<RatioOfSpreads> ratioOfSpreads(double squaresBefore, double dfBefore, double squaresAfter, double dfAfter, double level);

}  // namespace oddglass::stats
