#pragma once

#include <optional>
#include <vector>

namespace oddglass::stats {

/// The most values that `labelSplits` takes, both groups together.
inline constexpr int mostSplitValues = 1'000;

/// Two-sided p of a difference between two means, when the labels are dealt to the same values by chance alone.
struct SplitP {
  double pValue;  ///< share of splits whose difference of means is at least as far from zero
  bool isExact;   ///< every split counted; else 100,000 drawn from the fixed stream
  double error;   ///< Monte Carlo standard error, 0 where every split was counted
};

/// Both groups keep their sizes. Every split is counted where no more than 1e7 of them are unlike (splits that only swap equal values are one),
/// else 100,000 are drawn (`drawn.h`). Sums alike within 1e-9 of the sum of distances from the common mean count as equal.
/// Empty above `mostSplitValues` values. Values finite and at most 1e100 in size, one or more in each group; else BadInput.
/// Source: Fisher 1935, The Design of Experiments, 21; Pitman 1937, Suppl. J. R. Stat. Soc. 4:119.
std::optional<SplitP> labelSplits(const std::vector<double>& one, const std::vector<double>& other);

}  // namespace oddglass::stats
