#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>

namespace oddglass::stats {

/// A fixed stream of drawn numbers, so that a permutation p is the same on every machine and on every run: splitmix64 (Steele, Lea and Flood
/// 2014, OOPSLA; public domain), state 0 at the start. It serves resampling only; what must be hidden is drawn in `blinding`.
class DrawnStream {
 public:
  std::uint64_t next64() {
    std::uint64_t z = (state_ += 0x9e3779b97f4a7c15ULL);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
  }

  /// A whole number from 0 to n - 1, each equally likely. n is 1 or more.
  /// Rule: take the upper 32 bits w of next64() until w < 2^32 - (2^32 mod n); the number is w mod n.
  std::uint32_t below(std::uint32_t n) {
    const std::uint64_t end = (std::uint64_t{1} << 32) / n * n;
    std::uint64_t word = next64() >> 32;
    while (word >= end) word = next64() >> 32;
    return static_cast<std::uint32_t>(word % n);
  }

  /// Brings the items into a random order: for i from the last index down to 1, swap item i with item below(i + 1).
  template <class Items>
  void shuffle(Items&& items) {
    for (std::size_t i = items.size(); i > 1; --i) std::swap(items[i - 1], items[below(static_cast<std::uint32_t>(i))]);
  }

 private:
  std::uint64_t state_ = 0;
};

/// Above this many arrangements a permutation distribution is drawn, not counted.
inline constexpr double mostArrangements = 1e7;
/// How many arrangements are drawn then.
inline constexpr int drawnArrangements = 100'000;

/// A p from drawn arrangements, and its Monte Carlo standard error.
struct DrawnP {
  double pValue;
  double error;
};

/// (asFar + 1) / (draws + 1), the arrangement that was seen counted among the drawn; error sqrt(p (1 - p) / draws).
/// Source: Phipson and Smyth 2010, Stat. Appl. Genet. Mol. Biol. 9:39.
inline DrawnP drawnP(int asFar, int draws) {
  const double p = (asFar + 1.0) / (draws + 1.0);
  return {p, std::sqrt(p * (1.0 - p) / draws)};
}

}  // namespace oddglass::stats
