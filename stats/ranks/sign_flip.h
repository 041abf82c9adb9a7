#pragma once

#include "stats/drawn.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Whether paired differences lie around zero, by flipping their signs.
struct SignFlip {
  double mean = 0.0;
  double pTwoSided = 1.0;                 ///< share of sign patterns whose mean is at least as far from zero
  double pGreater = 1.0;                  ///< share of sign patterns whose mean is at least as large
  double smallestTwoSided = 1.0;          ///< the smallest two-sided p these differences could have shown: 2^(1 - n), n those that are not zero
  bool isExact = true;
  std::optional<double> monteCarloError;  ///< of the two-sided p, where patterns were drawn
};

/// One difference a taster; finite, at least one (BadInput otherwise). All 2^n patterns up to 1e7, else 100,000 from the fixed stream; sums alike
/// within 1e-9 of the sum of sizes count as equal. Five tasters can never show a difference at two-sided 5 %: the smallest p is 1/16.
/// On signed midranks of the differences that are not zero it is Wilcoxon's test. Source: Fisher 1935, The Design of Experiments, 21.
SignFlip signFlip(const std::vector<double>& differences);

}  // namespace oddglass::stats
