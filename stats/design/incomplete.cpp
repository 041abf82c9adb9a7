#include "stats/design/incomplete.h"

#include "stats/design/orbits.h"
#include "stats/drawn.h"
#include "stats/error.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

constexpr int mostLookedAt = 300;

void requireBlockSizes(int samples, int size, int blocks) {
  if (samples < 3 || samples > 60) throw BadInput("samples", "must be from 3 to 60");
  if (size < 2 || size >= samples) throw BadInput("size", "must be from 2 to one less than the samples");
  if (blocks < 1 || blocks > 1000) throw BadInput("tasters", "must be from 1 to 1000");
}

/// Pair counts from which the unevenness is kept up to date while samples are exchanged.
class Exchange {
 public:
  Exchange(int samples, const Blocks& blocks) : samples_(samples), together_(static_cast<std::size_t>(samples * samples), 0), blocks_(blocks) {
    for (const auto& block : blocks_)
      for (int a : block)
        for (int b : block) ++at(a, b);
  }

  /// How much more uneven it is when this place of this block holds another sample; samples count more than pairs.
  int change(std::size_t block, std::size_t place, int in) {
    const int out = blocks_[block][place];
    int change = weight_ * 2 * (at(in, in) - at(out, out) + 1);
    for (std::size_t i = 0; i < blocks_[block].size(); ++i)
      if (i != place) change += 2 * (at(in, blocks_[block][i]) - at(out, blocks_[block][i]) + 1);
    return change;
  }
  void put(std::size_t block, std::size_t place, int in) {
    const int out = blocks_[block][place];
    for (std::size_t i = 0; i < blocks_[block].size(); ++i)
      if (const int other = blocks_[block][i]; i != place) {
        --at(out, other), --at(other, out);
        ++at(in, other), ++at(other, in);
      }
    --at(out, out), ++at(in, in);
    blocks_[block][place] = in;
  }
  bool holds(std::size_t block, int sample) const { return std::ranges::find(blocks_[block], sample) != blocks_[block].end(); }
  const Blocks& blocks() const { return blocks_; }
  long long unevenness() {
    long long sum = 0;
    for (int a = 0; a < samples_; ++a)
      for (int b = a; b < samples_; ++b) sum += (a == b ? weight_ : 1) * static_cast<long long>(at(a, b)) * at(a, b);
    return sum;
  }

 private:
  int& at(int a, int b) { return together_[static_cast<std::size_t>(a * samples_ + b)]; }

  static constexpr int weight_ = 4;
  int samples_;
  std::vector<int> together_;
  Blocks blocks_;
};

/// As even as simulated annealing finds; the same on every machine.
Blocks exchanged(int samples, int size, int blocks) {
  Blocks start;
  for (int i = 0, next = 0; i < blocks; ++i) {
    start.emplace_back();
    for (int k = 0; k < size; ++k, next = (next + 1) % samples) start.back().push_back(next);
  }
  Exchange exchange(samples, start);
  Blocks best = start;
  long long bestSoFar = exchange.unevenness(), here = bestSoFar;
  DrawnStream stream;
  constexpr int steps = 200'000;
  for (int step = 0; step < steps; ++step) {
    const std::size_t block = stream.below(static_cast<std::uint32_t>(blocks)), place = stream.below(static_cast<std::uint32_t>(size));
    const int in = static_cast<int>(stream.below(static_cast<std::uint32_t>(samples)));
    if (exchange.holds(block, in)) continue;
    const int change = exchange.change(block, place, in);
    const double heat = 10.0 * std::pow(2e-2, static_cast<double>(step) / steps);
    if (change > 0 && static_cast<double>(stream.below(1U << 30)) / (1U << 30) >= std::exp(-change / heat)) continue;
    exchange.put(block, place, in);
    here += change;
    if (here < bestSoFar) {
      bestSoFar = here;
      best = exchange.blocks();
    }
  }
  return best;
}

}  // namespace

BlockBalance blockBalance(const Blocks& blocks, int samples) {
  if (samples < 2 || samples > 1000) throw BadInput("samples", "must be from 2 to 1000");
  const auto t = static_cast<std::size_t>(samples);
  std::vector<std::vector<int>> together(t, std::vector<int>(t, 0));
  bool isEven = !blocks.empty();
  for (const auto& block : blocks) {
    for (int a : block)
      if (a < 0 || a >= samples) throw BadInput("blocks", "hold a sample that is not there");
    for (int a : block) {
      for (int b : block) ++together[static_cast<std::size_t>(a)][static_cast<std::size_t>(b)];
      isEven = isEven && std::ranges::count(block, a) == 1;
    }
    isEven = isEven && block.size() == blocks[0].size();
  }
  BlockBalance balance;
  if (!isEven) return balance;
  balance.size = static_cast<int>(blocks[0].size());
  balance.repeats = together[0][0];
  balance.together = together[0][1];
  for (std::size_t a = 0; a < t; ++a)
    for (std::size_t b = 0; b < t; ++b) isEven = isEven && together[a][b] == (a == b ? balance.repeats : balance.together);
  balance.isBalanced = isEven && balance.together > 0;
  if (balance.isBalanced) balance.efficiency = static_cast<double>(balance.together) * samples / (static_cast<double>(balance.repeats) * balance.size);
  return balance;
}

std::optional<Blocks> balancedBlocks(int samples, int size, int blocks) {
  requireBlockSizes(samples, size, blocks);
  const int cups = blocks * size;
  if (blocks < samples || cups % samples != 0 || cups / samples * (size - 1) % (samples - 1) != 0) return std::nullopt;
  // The smaller of a design and its complement is looked for.
  if (2 * size > samples) {
    const auto others = samples - size == 1 ? (blocks % samples == 0 ? std::optional(Blocks()) : std::nullopt) : balancedBlocks(samples, samples - size, blocks);
    if (!others) return std::nullopt;
    Blocks all;
    for (int i = 0; i < blocks; ++i) {
      all.emplace_back();
      for (int sample = 0; sample < samples; ++sample)
        if (others->empty() ? sample != i % samples : std::ranges::find((*others)[static_cast<std::size_t>(i)], sample) == (*others)[static_cast<std::size_t>(i)].end()) all.back().push_back(sample);
    }
    return all;
  }
  return blocksByOrbits(samples, size, blocks);
}

std::optional<Blocks> smallestBalancedBlocks(int samples, int size) {
  requireBlockSizes(samples, size, 1);
  for (int count = samples; count <= mostLookedAt; ++count)
    if (auto found = balancedBlocks(samples, size, count)) return found;
  return std::nullopt;
}

Blocks incompleteBlocks(int samples, int size, int tasters) {
  requireBlockSizes(samples, size, tasters);
  std::optional<Blocks> largest;
  for (int count = samples; count <= std::min(tasters, mostLookedAt); ++count) {
    if (largest && tasters % count != 0) continue;
    auto found = balancedBlocks(samples, size, count);
    if (!found) continue;
    largest = std::move(found);
    if (tasters % count == 0) break;
  }
  Blocks blocks;
  if (largest)
    while (blocks.size() + largest->size() <= static_cast<std::size_t>(tasters)) blocks.insert(blocks.end(), largest->begin(), largest->end());
  // Whole copies are even by themselves, so that only the rest has to be made even.
  if (const int rest = tasters - static_cast<int>(blocks.size()); rest > 0) {
    const Blocks more = exchanged(samples, size, rest);
    blocks.insert(blocks.end(), more.begin(), more.end());
  }
  return blocks;
}

}  // namespace oddglass::stats
