#pragma once

namespace oddglass::stats {

/// P(X >= count) for X ~ Binomial(trials, p), kept up to date while trials and count grow by one at a time: a few operations a step in place of an
/// incomplete beta integral. Begins at one trial and a count of 1; p in (0, 1]; 1 <= count <= trials + 1.
/// Accurate to about 1e-12; every 256 steps it is worked out anew. Source: P(X_{n+1} >= c) = P(X_n >= c) + p P(X_n = c - 1), and
/// P(X >= c + 1) = P(X >= c) - P(X = c).
class TailWalk {
 public:
  explicit TailWalk(double p) : p_(p), tail_(p), mass_(1.0 - p) {}

  int trials() const { return trials_; }
  int count() const { return count_; }
  double tail() const { return tail_; }

  void oneMoreTrial();
  void oneMoreNeeded();

 private:
  double p_, tail_;
  double mass_;  ///< P(X = count - 1)
  int trials_ = 1, count_ = 1, steps_ = 0;
};

}  // namespace oddglass::stats
