#include "stats/ranks/weighted.h"

#include "stats/error.h"

#include <algorithm>
#include <bit>
#include <map>

namespace oddglass::stats {
namespace {

constexpr double mostDealSteps = 5e8;

/// One taster: ways[subset][value] while the samples are filled one after the other from the ranks that are left.
WeightedSums ofOneTaster(const std::vector<int>& ranks, const std::vector<int>& weights) {
  const std::size_t k = ranks.size();
  int most = 0;
  for (std::size_t i = 0; i < k; ++i) most += weights[i] * ranks[k - 1];
  std::vector<std::vector<double>> ways(std::size_t{1} << k);
  ways[0].assign(static_cast<std::size_t>(most) + 1, 0.0);
  ways[0][0] = 1.0;
  for (std::size_t subset = 0; subset + 1 < ways.size(); ++subset) {
    const std::size_t filled = static_cast<std::size_t>(std::popcount(subset));
    for (std::size_t rank = 0; rank < k; ++rank) {
      if (subset >> rank & 1U) continue;
      const std::size_t add = static_cast<std::size_t>(weights[filled] * ranks[rank]);
      auto& next = ways[subset | std::size_t{1} << rank];
      if (next.empty()) next.assign(static_cast<std::size_t>(most) + 1, 0.0);
      for (std::size_t value = 0; value + add <= static_cast<std::size_t>(most); ++value)
        if (ways[subset][value] > 0.0) next[value + add] += ways[subset][value] / static_cast<double>(k - filled);
    }
    std::vector<double>().swap(ways[subset]);
  }
  WeightedSums sums{0, std::move(ways.back())};
  std::size_t first = 0;
  while (sums.chance[first] == 0.0) ++first;
  while (sums.chance.back() == 0.0) sums.chance.pop_back();
  sums.chance.erase(sums.chance.begin(), sums.chance.begin() + static_cast<std::ptrdiff_t>(first));
  sums.lowest = static_cast<long long>(first);
  return sums;
}

WeightedSums both(const WeightedSums& a, const WeightedSums& b) {
  WeightedSums sums{a.lowest + b.lowest, std::vector<double>(a.chance.size() + b.chance.size() - 1, 0.0)};
  for (std::size_t i = 0; i < a.chance.size(); ++i)
    if (a.chance[i] > 0.0)
      for (std::size_t j = 0; j < b.chance.size(); ++j) sums.chance[i + j] += a.chance[i] * b.chance[j];
  return sums;
}

}  // namespace

double WeightedSums::atLeast(long long value) const {
  double p = 0.0;
  // The far tail first: small chances are not lost beside large ones.
  for (std::size_t i = chance.size(); i-- > 0 && lowest + static_cast<long long>(i) >= value;) p += chance[i];
  return std::min(p, 1.0);
}

std::optional<WeightedSums> weightedSums(const RankBlocks& ranks, const std::vector<int>& weights) {
  if (!isComplete(ranks) || ranks.blocks.empty()) throw BadInput("ranks", "every taster must have ranked every sample");
  if (weights.size() != static_cast<std::size_t>(ranks.samples)) throw BadInput("weights", "must be one for each sample");
  for (int weight : weights)
    if (weight < 0 || weight > 1000) throw BadInput("weights", "must be from 0 to 1000");
  if (ranks.samples > 12) return std::nullopt;
  double most = 0.0;
  for (int weight : weights) most += 2.0 * weight * ranks.samples;
  const double subsets = static_cast<double>((std::size_t{1} << ranks.samples) * static_cast<std::size_t>(ranks.samples)) * most;
  std::map<std::vector<int>, WeightedSums> known;
  WeightedSums sums{0, {1.0}};
  double steps = 0.0;
  for (const RankBlock& block : ranks.blocks) {
    std::vector<int> pattern = block.doubled;
    std::ranges::sort(pattern);
    if (!known.contains(pattern)) {
      steps += subsets;
      if (steps > mostDealSteps) return std::nullopt;
      known[pattern] = ofOneTaster(pattern, weights);
    }
    const WeightedSums& one = known[pattern];
    steps += static_cast<double>(one.chance.size()) * static_cast<double>(sums.chance.size());
    if (steps > mostDealSteps) return std::nullopt;
    sums = both(one, sums);
  }
  return sums;
}

}  // namespace oddglass::stats
