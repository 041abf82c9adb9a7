#pragma once

#include "stats/ranks/friedman.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// How tasters and samples meet when nobody ranks everything.
struct BlockSizes {
  int tasters = 0;
  bool isBalanced = false;  ///< blocks of one size, samples equally often, pairs equally often
  int size = 0;             ///< samples a taster ranked; meant where balanced, as the next two
  int repeats = 0;          ///< tasters a sample had
  int together = 0;         ///< tasters who ranked a pair
};

BlockSizes blockSizes(const RankBlocks& ranks);

/// Whether samples differ anywhere, from incomplete blocks.
struct Durbin {
  BlockSizes blocks;
  std::vector<double> rankSums;
  int df = 0;                         ///< samples - 1
  std::optional<double> statistic;
  std::optional<double> pValue;       ///< upper tail of chi-square
  ArrangedP arranged;                 ///< by dealing each taster's own ranks; neither above 60 samples in an unbalanced pattern
  std::optional<RankF> f;             ///< balanced only; empty when all rank alike
  std::optional<Reason> why;          ///< oneTaster, allTied, notConnected
};

/// Balanced: Durbin's statistic with ties, (t - 1) sum (R - r (k + 1) / 2)^2 / (sum of squared ranks - b k (k + 1)^2 / 4), and its F form on
/// t - 1 and b k - b - t + 1 df. Source: Durbin 1951, Br. J. Psychol. Stat. 4:85; Conover 1999, 5.8.
/// In any other pattern of missing samples: A' V^- A, A the sums of ranks less each taster's mean rank, V their variance when ranks are dealt within
/// the tasters. It is Friedman's statistic where blocks are complete. Source: Benard and van Elteren 1953, Indag. Math. 15:358; Prentice 1979, Biometrika 66:167.
Durbin durbin(const RankBlocks& ranks);

/// The same difference as for complete blocks, from a balanced incomplete design: z sqrt((k + 1) (r k - r + lambda) / 6). Source: ISO 8587:2006 (from
/// memory; it follows from the variance of ranks within the tasters). Empty where the design is not balanced.
std::optional<double> leastSignificantDifference(const BlockSizes& blocks, double alpha);

}  // namespace oddglass::stats
