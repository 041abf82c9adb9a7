#pragma once

#include <vector>

namespace oddglass::stats {

/// For 0, 1, ..., `noises` false alarms the fewest hits among `signals` that Fisher's one-sided test (fisher.h) puts at or below alpha, signals + 1
/// where none does. The numbers never fall. signals and noises from 0 to 20,000, alpha in (0, 1).
/// Source: hypergeometric tails, each from logarithms of factorials and the quotients of neighbouring masses.
std::vector<int> fewestHits(int signals, int noises, double alpha);

}  // namespace oddglass::stats
