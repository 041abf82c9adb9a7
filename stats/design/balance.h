#pragma once

#include "stats/design/williams.h"

#include <vector>

namespace oddglass::stats {

/// How even a set of orders is, by counting. All tables have one row a sample.
struct Balance {
  std::vector<std::vector<int>> position;   ///< [sample][position]: how often it stands there; as many columns as the longest order
  std::vector<std::vector<int>> carryover;  ///< [before][after]: how often one stands just before the other
  std::vector<std::vector<int>> second;     ///< [before][after]: how often one stands just before the one before the other
  std::vector<std::vector<int>> pairs;      ///< [a][b]: in how many orders both stand; on the diagonal in how many one stands
};

/// Orders hold samples from 0 to samples - 1, 1 <= samples <= 1000, and may repeat one. BadInput for any other sample.
Balance balanceOf(const SampleOrders& orders, int samples);

}  // namespace oddglass::stats
