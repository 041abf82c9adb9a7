#pragma once

#include "stats/ranks/blocks.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// The distribution of a weighted sum of doubled rank sums when ranks are dealt by chance: chance[i] is that of lowest + i.
struct WeightedSums {
  long long lowest = 0;
  std::vector<double> chance;

  /// P(sum >= value).
  double atLeast(long long value) const;
};

/// One whole weight for each sample, from 0 to 1000; every taster ranked every sample, else BadInput. Empty when counting would take too long
/// (more than 12 samples, or about 5e8 steps). Source: convolution over the tasters; within one, over the subsets of ranks dealt so far.
std::optional<WeightedSums> weightedSums(const RankBlocks& ranks, const std::vector<int>& weights);

}  // namespace oddglass::stats
