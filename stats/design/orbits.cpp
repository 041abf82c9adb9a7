#include "stats/design/orbits.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>

namespace oddglass::stats {
namespace {

using Block = std::vector<int>;

constexpr double mostBlocks = 25'000;
constexpr int mostNodes = 40'000;

double binomial(int n, int k) {
  double value = 1.0;
  for (int i = 1; i <= k; ++i) value = value * (n - k + i) / i;
  return value;
}

/// Samples in `cycles` cycles of one length, and perhaps one more that stays where it is.
std::vector<int> turn(int samples, int cycles, int fixed) {
  const int length = (samples - fixed) / cycles;
  std::vector<int> to(static_cast<std::size_t>(samples), samples - 1);
  for (int i = 0; i < samples - fixed; ++i) to[static_cast<std::size_t>(i)] = i / length * length + (i % length + 1) % length;
  return to;
}

std::vector<Block> orbitOf(const Block& block, const std::vector<int>& to) {
  std::vector<Block> orbit{block};
  for (Block next = block;;) {
    for (int& sample : next) sample = to[static_cast<std::size_t>(sample)];
    std::ranges::sort(next);
    if (next == block) return orbit;
    orbit.push_back(next);
  }
}

/// Block orbits, and how often each covers a pair of each pair orbit.
struct Cover {
  std::vector<std::vector<Block>> orbits;
  std::vector<std::vector<int>> covers;
};

Cover coverOf(int samples, int size, const std::vector<int>& to) {
  std::map<Block, std::size_t> pairOrbit;
  std::vector<int> pairOrbitSize;
  for (int a = 0; a < samples; ++a)
    for (int b = a + 1; b < samples; ++b)
      if (!pairOrbit.contains({a, b})) {
        const auto orbit = orbitOf({a, b}, to);
        for (const Block& pair : orbit) pairOrbit[pair] = pairOrbitSize.size();
        pairOrbitSize.push_back(static_cast<int>(orbit.size()));
      }
  Cover cover;
  std::set<Block> seen;
  Block block(static_cast<std::size_t>(size));
  std::iota(block.begin(), block.end(), 0);
  for (;;) {
    if (!seen.contains(block)) {
      auto orbit = orbitOf(block, to);
      seen.insert(orbit.begin(), orbit.end());
      std::vector<int> covers(pairOrbitSize.size(), 0);
      for (std::size_t i = 0; i < block.size(); ++i)
        for (std::size_t k = i + 1; k < block.size(); ++k) covers[pairOrbit.at({block[i], block[k]})] += 1;
      // A block covers so many pairs of an orbit; its whole orbit covers each of them so often.
      for (std::size_t p = 0; p < covers.size(); ++p) covers[p] = covers[p] * static_cast<int>(orbit.size()) / pairOrbitSize[p];
      cover.orbits.push_back(std::move(orbit));
      cover.covers.push_back(std::move(covers));
    }
    int at = size - 1;
    while (at >= 0 && block[static_cast<std::size_t>(at)] == samples - size + at) --at;
    if (at < 0) return cover;
    ++block[static_cast<std::size_t>(at)];
    for (int i = at + 1; i < size; ++i) block[static_cast<std::size_t>(i)] = block[static_cast<std::size_t>(i - 1)] + 1;
  }
}

/// Takes orbits until every pair orbit is covered as often as it has to be.
class OrbitSearch {
 public:
  OrbitSearch(const Cover& cover, int together) : cover_(cover), missing_(cover.covers.front().size(), together) {}

  bool finds(std::size_t from = 0, std::size_t lastPair = ~std::size_t{0}) {
    if (++nodes_ > mostNodes) return false;
    const auto open = std::ranges::find_if(missing_, [](int count) { return count > 0; });
    if (open == missing_.end()) return true;
    const auto pair = static_cast<std::size_t>(open - missing_.begin());
    for (std::size_t orbit = pair == lastPair ? from : 0; orbit < cover_.orbits.size(); ++orbit) {
      const auto& covers = cover_.covers[orbit];
      if (covers[pair] == 0 || !fits(covers)) continue;
      take(covers, -1);
      taken_.push_back(orbit);
      if (finds(orbit, pair)) return true;
      taken_.pop_back();
      take(covers, 1);
    }
    return false;
  }
  const std::vector<std::size_t>& taken() const { return taken_; }

 private:
  bool fits(const std::vector<int>& covers) const {
    for (std::size_t p = 0; p < covers.size(); ++p)
      if (covers[p] > missing_[p]) return false;
    return true;
  }
  void take(const std::vector<int>& covers, int sign) {
    for (std::size_t p = 0; p < covers.size(); ++p) missing_[p] += sign * covers[p];
  }

  const Cover& cover_;
  std::vector<int> missing_;
  std::vector<std::size_t> taken_;
  int nodes_ = 0;
};

std::optional<std::vector<Block>> developed(int samples, int size, int blocks) {
  static const std::map<std::pair<int, int>, Block> differences{{{13, 4}, {0, 1, 3, 9}}, {{21, 5}, {0, 1, 4, 14, 16}}, {{31, 6}, {0, 1, 3, 8, 12, 18}}};
  const auto known = differences.find({samples, size});
  if (known == differences.end() || blocks != samples) return std::nullopt;
  return orbitOf(known->second, turn(samples, 1, 0));
}

}  // namespace

std::optional<std::vector<Block>> blocksByOrbits(int samples, int size, int blocks) {
  if (auto known = developed(samples, size, blocks)) return known;
  if (binomial(samples, size) > mostBlocks) return std::nullopt;
  const int together = blocks * size / samples * (size - 1) / (samples - 1);
  for (int cycles = 1; cycles <= 4; ++cycles)
    for (int fixed : {0, 1}) {
      if ((samples - fixed) % cycles != 0 || (samples - fixed) / cycles < 2) continue;
      const Cover cover = coverOf(samples, size, turn(samples, cycles, fixed));
      OrbitSearch search(cover, together);
      if (!search.finds()) continue;
      std::vector<Block> all;
      for (std::size_t orbit : search.taken()) all.insert(all.end(), cover.orbits[orbit].begin(), cover.orbits[orbit].end());
      return all;
    }
  return std::nullopt;
}

}  // namespace oddglass::stats
