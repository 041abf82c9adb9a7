#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>

/// Chance for simulations: the same on every machine. std::mt19937_64 is fixed by the standard; its distributions are not, so these are made here.
namespace simulated {

class Chance {
 public:
  explicit Chance(std::uint64_t seed) : engine_(seed) {}
  double uniform() { return static_cast<double>(engine_() >> 11) * 0x1.0p-53; }
  /// Normal with mean 0, by Box and Muller.
  double normal(double sd = 1.0) {
    const double radius = std::sqrt(-2.0 * std::log(1.0 - uniform()));
    return sd * radius * std::cos(2.0 * std::numbers::pi * uniform());
  }
  /// A whole number from 0 to n - 1.
  int below(int n) { return static_cast<int>(uniform() * n); }

 private:
  std::mt19937_64 engine_;
};

/// A share of hits among draws, and how far chance moves it: four standard errors of a true share.
struct Share {
  int hits = 0, draws = 0;
  void add(bool hit) { hits += hit, ++draws; }
  double value() const { return static_cast<double>(hits) / draws; }
  double slack(double truth) const { return 4.0 * std::sqrt(truth * (1.0 - truth) / draws); }
};

}  // namespace simulated
