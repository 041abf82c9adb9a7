#pragma once

#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// How well sureness parts signal from noise.
struct RIndex {
  double rIndex;   ///< chance that a signal is rated above a noise, half of the ties counted; 0.5 by guessing
  double low;
  double high;
  double pValue;   ///< one-sided: as large or larger when the ratings are dealt at random over the trials
  bool isExact;    ///< every deal counted; else by the normal distribution with ties and continuity
};

/// Counts of the answers by class, from "sure it is the signal" to "sure it is not"; as many classes for both, from 2 to 100, counts >= 0, sums up to 10 million.
/// Empty without signals or without noises. level in (0, 1).
/// Sources: Brown 1974 (R = Mann-Whitney U / mn); exact permutation distribution (multivariate hypergeometric) by recursion, up to about
/// fifty million steps; interval by the score equation with the variance of Hanley and McNeil 1982 (Newcombe 2006, Stat Med 25:559, method 5).
std::optional<RIndex> rIndexOf(const std::vector<int>& signal, const std::vector<int>& noise, double level);

}  // namespace oddglass::stats
