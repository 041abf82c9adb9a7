#pragma once

#include <vector>

namespace oddglass::stats {

/// E[pi^hits (1 - pi)^misses] for pi ~ Beta with mean mu and gamma = 1 / (a + b + 1), from the rising products, so that
/// gamma 0 (one value) and gamma 1 (only 0 and 1) need no limit. mu, gamma in [0, 1], hits, misses >= 0.
/// Source: moments of the beta distribution.
double betaMoment(int hits, int misses, double mu, double gamma);

/// One person's count, x of n right, as a mixture over how many of the x were known and how many guessed.
/// guess in [0, 1), 0 <= x <= n <= 200. Source: the binomial of guess + (1 - guess) pi, multiplied out.
class CountMixture {
 public:
  CountMixture(int x, int n, double guess);
  /// P(x of n right).
  double probability(double mu, double gamma) const;
  /// Its part in which `known` of the x right answers were known, 0 <= known <= x.
  double part(int known, double mu, double gamma) const;
  int right() const { return x_; }
  int wrong() const { return n_ - x_; }

 private:
  int x_, n_;
  std::vector<double> weights_;
};

}  // namespace oddglass::stats
