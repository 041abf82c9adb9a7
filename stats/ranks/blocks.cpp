#include "stats/ranks/blocks.h"

#include "stats/column.h"
#include "stats/error.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace oddglass::stats {
namespace {

std::vector<int> doubledMidranks(const std::vector<double>& values) {
  std::vector<std::size_t> order(values.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
  std::vector<int> doubled(values.size());
  for (std::size_t from = 0; from < order.size();) {
    std::size_t to = from + 1;
    while (to < order.size() && values[order[to]] == values[order[from]]) ++to;
    for (std::size_t i = from; i < to; ++i) doubled[order[i]] = static_cast<int>(from + to + 1);
    from = to;
  }
  return doubled;
}

}  // namespace

std::vector<double> midranks(const std::vector<double>& values) {
  for (double value : values)
    if (!std::isfinite(value)) throw BadInput("values", "must be finite numbers");
  std::vector<double> ranks;
  for (int doubled : doubledMidranks(values)) ranks.push_back(doubled / 2.0);
  return ranks;
}

RankBlocks rankBlocks(const std::vector<double>& values, const Factor& sample, const Factor& taster) {
  if (values.empty()) throw BadInput("rank", "there are no answers");
  for (double value : values)
    if (!std::isfinite(value)) throw BadInput("rank", "must be finite numbers");
  requireColumn("sample", sample, values.size());
  requireColumn("taster", taster, values.size());
  if (sample.levels < 2) throw BadInput("sample", "a comparison needs two samples or more");
  std::vector<std::vector<std::pair<int, double>>> given(static_cast<std::size_t>(taster.levels));
  for (std::size_t row = 0; row < values.size(); ++row) given[static_cast<std::size_t>(taster.of[row])].emplace_back(sample.of[row], values[row]);
  RankBlocks ranks{sample.levels, {}};
  for (auto& rows : given) {
    std::ranges::sort(rows);
    RankBlock block;
    std::vector<double> seen;
    for (const auto& [of, value] : rows) {
      if (!block.samples.empty() && block.samples.back() == of) throw BadInput("taster", "a taster ranked a sample twice");
      block.samples.push_back(of);
      seen.push_back(value);
    }
    block.doubled = doubledMidranks(seen);
    if (block.samples.size() > 1) ranks.blocks.push_back(std::move(block));
  }
  return ranks;
}

RankBlocks untiedBlocks(int samples, int tasters) {
  if (samples < 2) throw BadInput("samples", "a comparison needs two samples or more");
  if (tasters < 1) throw BadInput("tasters", "must be 1 or more");
  RankBlock block;
  for (int i = 0; i < samples; ++i) {
    block.samples.push_back(i);
    block.doubled.push_back(2 * (i + 1));
  }
  return {samples, std::vector<RankBlock>(static_cast<std::size_t>(tasters), block)};
}

bool isComplete(const RankBlocks& ranks) {
  return std::ranges::all_of(ranks.blocks, [&](const RankBlock& block) { return static_cast<int>(block.samples.size()) == ranks.samples; });
}

bool isAllTied(const RankBlocks& ranks) {
  return std::ranges::all_of(ranks.blocks, [](const RankBlock& block) { return std::ranges::all_of(block.doubled, [&](int rank) { return rank == block.doubled.front(); }); });
}

std::vector<int> doubledRankSums(const RankBlocks& ranks) {
  std::vector<int> sums(static_cast<std::size_t>(ranks.samples));
  for (const RankBlock& block : ranks.blocks)
    for (std::size_t i = 0; i < block.samples.size(); ++i) sums[static_cast<std::size_t>(block.samples[i])] += block.doubled[i];
  return sums;
}

double arrangements(const RankBlocks& ranks) {
  double product = 1.0;
  for (const RankBlock& block : ranks.blocks) product *= std::tgamma(static_cast<double>(block.samples.size()) + 1.0);
  return product;
}

}  // namespace oddglass::stats
