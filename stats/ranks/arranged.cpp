#include "stats/ranks/arranged.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace oddglass::stats {
namespace {

constexpr double mostSumSteps = mostArrangements;
constexpr std::size_t mostRanks = 5'000;

/// Up to 16 sums in two words, side by side.
using Packed = std::array<std::uint64_t, 2>;

/// Chances by packed sums: an open hash table.
class Chances {
 public:
  Chances() { resize(1024); }

  void add(const Packed& key, double chance) {
    if (2 * filled_ >= keys_.size()) grow();
    const std::size_t at = place(key);
    if (chances_[at] == 0.0) {
      keys_[at] = key;
      ++filled_;
    }
    chances_[at] += chance;
  }
  std::size_t size() const { return filled_; }

  template <class Visit>
  void each(Visit&& visit) const {
    for (std::size_t i = 0; i < keys_.size(); ++i)
      if (chances_[i] > 0.0) visit(keys_[i], chances_[i]);
  }

 private:
  std::size_t place(const Packed& key) const {
    std::uint64_t mixed = (key[0] ^ (key[1] * 0x9e3779b97f4a7c15ULL)) * 0xbf58476d1ce4e5b9ULL;
    std::size_t at = (mixed ^ (mixed >> 29)) & (keys_.size() - 1);
    while (chances_[at] > 0.0 && keys_[at] != key) at = (at + 1) & (keys_.size() - 1);
    return at;
  }
  void resize(std::size_t size) {
    keys_.assign(size, Packed{});
    chances_.assign(size, 0.0);
    filled_ = 0;
  }
  void grow() {
    const auto keys = std::move(keys_);
    const auto chances = std::move(chances_);
    resize(2 * keys.size());
    for (std::size_t i = 0; i < keys.size(); ++i)
      if (chances[i] > 0.0) add(keys[i], chances[i]);
  }

  std::vector<Packed> keys_;
  std::vector<double> chances_;
  std::size_t filled_ = 0;
};

/// Sums side by side in two words, so many bits each.
class Packing {
 public:
  explicit Packing(int sums) : sums_(static_cast<std::size_t>(sums)), inFirst_((sums_ + 1) / 2), bits_(64 / static_cast<int>(inFirst_)) {}

  bool holds(int most) const { return bits_ >= 31 || most < (1 << bits_); }
  Packed pack(const std::vector<int>& sums) const {
    Packed packed{};
    for (std::size_t i = 0; i < sums_; ++i) packed[i >= inFirst_] |= static_cast<std::uint64_t>(sums[i]) << shift(i);
    return packed;
  }
  void unpack(const Packed& packed, std::vector<int>& sums) const {
    const std::uint64_t mask = bits_ >= 64 ? ~std::uint64_t{0} : (std::uint64_t{1} << bits_) - 1;
    for (std::size_t i = 0; i < sums_; ++i) sums[i] = static_cast<int>((packed[i >= inFirst_] >> shift(i)) & mask);
  }

 private:
  int shift(std::size_t i) const { return bits_ * static_cast<int>(i >= inFirst_ ? i - inFirst_ : i); }

  std::size_t sums_, inFirst_;
  int bits_;
};

/// How many unlike arrangements the ranks of one taster have.
double unlikeArrangements(const std::vector<int>& sorted) {
  double count = std::tgamma(static_cast<double>(sorted.size()) + 1.0);
  for (std::size_t from = 0; from < sorted.size();) {
    std::size_t to = from;
    while (to < sorted.size() && sorted[to] == sorted[from]) ++to;
    count /= std::tgamma(static_cast<double>(to - from) + 1.0);
    from = to;
  }
  return std::round(count);
}

void sortFew(std::vector<int>& values) {
  for (std::size_t i = 1; i < values.size(); ++i)
    for (std::size_t k = i; k > 0 && values[k] < values[k - 1]; --k) std::swap(values[k], values[k - 1]);
}

std::size_t ranksIn(const RankBlocks& ranks) {
  std::size_t count = 0;
  for (const RankBlock& block : ranks.blocks) count += block.samples.size();
  return count;
}

/// Adds one taster to all sets of sums so far.
Chances withTaster(const Chances& before, const RankBlock& block, double ways, const Packing& packing, int samples, bool areSorted) {
  Chances after;
  std::vector<int> sums(static_cast<std::size_t>(samples)), next;
  before.each([&](const Packed& key, double chance) {
    packing.unpack(key, sums);
    std::vector<int> dealt = block.doubled;
    const double share = chance / ways;
    do {
      next = sums;
      for (std::size_t i = 0; i < dealt.size(); ++i) next[static_cast<std::size_t>(block.samples[i])] += dealt[i];
      if (areSorted) sortFew(next);
      after.add(packing.pack(next), share);
    } while (std::next_permutation(dealt.begin(), dealt.end()));
  });
  return after;
}

}  // namespace

bool eachRankSums(const RankBlocks& ranks, double steps, const std::function<void(const std::vector<int>&, double)>& visit) {
  if (ranks.samples > 16 || ranks.blocks.empty()) return false;
  const bool areSorted = isComplete(ranks);
  const Packing packing(ranks.samples);
  int most = 0;
  std::vector<std::pair<double, RankBlock>> blocks;
  for (RankBlock block : ranks.blocks) {
    std::ranges::sort(block.doubled);
    most += block.doubled.back();
    if (!packing.holds(most)) return false;
    blocks.emplace_back(unlikeArrangements(block.doubled), std::move(block));
  }
  // The largest first, while there are few sets of sums.
  std::ranges::stable_sort(blocks, [](const auto& a, const auto& b) { return a.first > b.first; });
  Chances chances;
  std::vector<int> sums(static_cast<std::size_t>(ranks.samples));
  std::size_t from = 0;
  if (areSorted) {
    sums = blocks[0].second.doubled;
    from = 1;
  }
  chances.add(packing.pack(sums), 1.0);
  double taken = 0.0, left = 0.0;
  for (std::size_t i = from; i < blocks.size(); ++i) left += blocks[i].first;
  for (std::size_t i = from; i < blocks.size(); ++i) {
    // A taster more never leaves fewer sets of sums (ranks added in the order of the sums keep them apart), so it is known early when all that is left would be too much.
    if (taken + static_cast<double>(chances.size()) * left > steps) return false;
    taken += static_cast<double>(chances.size()) * blocks[i].first;
    left -= blocks[i].first;
    chances = withTaster(chances, blocks[i].second, blocks[i].first, packing, ranks.samples, areSorted);
  }
  chances.each([&](const Packed& key, double chance) {
    packing.unpack(key, sums);
    visit(sums, chance);
  });
  return true;
}

std::optional<DrawnP> drawnRankP(const RankBlocks& ranks, const std::function<double(const std::vector<int>&)>& statistic) {
  if (ranksIn(ranks) > mostRanks) return std::nullopt;
  const double seen = statistic(doubledRankSums(ranks)), least = seen - 1e-9 * std::abs(seen);
  RankBlocks dealt = ranks;
  DrawnStream stream;
  int asFar = 0;
  for (int draw = 0; draw < drawnArrangements; ++draw) {
    for (RankBlock& block : dealt.blocks) stream.shuffle(block.doubled);
    asFar += statistic(doubledRankSums(dealt)) >= least;
  }
  return drawnP(asFar, drawnArrangements);
}

ArrangedP arrangedP(const RankBlocks& ranks, const std::function<double(const std::vector<int>&)>& statistic) {
  const double seen = statistic(doubledRankSums(ranks)), least = seen - 1e-9 * std::abs(seen);
  double p = 0.0;
  if (eachRankSums(ranks, mostSumSteps, [&](const std::vector<int>& sums, double chance) { p += statistic(sums) >= least ? chance : 0.0; })) return {std::min(p, 1.0), std::nullopt};
  return {std::nullopt, drawnRankP(ranks, statistic)};
}

}  // namespace oddglass::stats
