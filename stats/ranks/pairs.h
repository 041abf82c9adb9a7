#pragma once

#include "stats/ranks/durbin.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Two samples beside each other; the difference of rank sums is that of a minus that of b.
struct RankPair {
  int a = 0;
  int b = 0;
  double difference = 0.0;
  std::optional<double> pNemenyi;
  std::optional<double> pConoverHolm;
};

/// All pairs, a before b.
struct RankPairs {
  std::vector<RankPair> pairs;
  std::optional<Reason> whyNemenyi;  ///< oneTaster, allTied; emptyCell where the design is not balanced
  std::optional<Reason> whyConover;  ///< the same; noSpread where all rank alike
};

/// Complete blocks, or balanced incomplete ones; up to 300 samples (BadInput above). Nemenyi: |difference| over sqrt((k + 1) (r k - r + lambda) / 12), which is sqrt(n k (k + 1) / 12) in
/// complete blocks, against the studentized range with infinite df (Nemenyi 1963; Hollander and Wolfe 1999, 7.3; Skillings and Mack 1981), without
/// correction for ties. Conover: t = |difference| over its standard error from the ranks' own residual, adjusted over all pairs by Holm (Conover 1999,
/// 5.8; ties as they are).
RankPairs rankPairs(const RankBlocks& ranks);

}  // namespace oddglass::stats
