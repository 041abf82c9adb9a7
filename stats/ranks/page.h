#pragma once

#include "stats/ranks/arranged.h"
#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Whether samples rise in an order that was stated before.
struct Page {
  double l = 0.0;                       ///< sum of place in the order (from 1) times rank sum
  std::optional<double> z;              ///< without correction for ties, so on the safe side
  std::optional<double> pValue;         ///< upper tail of the normal
  std::optional<double> pExact;         ///< by dealing each taster's own ranks, ties as they are
  std::optional<DrawnP> drawn;          ///< where that takes too long
  std::optional<Reason> why;            ///< oneTaster, allTied, emptyCell: why there is no p
};

/// `order` names every sample once, from the one expected to have the lowest ranks to the highest; else BadInput. Every taster ranked every
/// sample, else `why` is emptyCell. Source: Page 1963, JASA 58:216: mean n k (k + 1)^2 / 4, variance n k^2 (k + 1)^2 (k - 1) / 144.
Page page(const RankBlocks& ranks, const std::vector<int>& order);

/// z of an L from n tasters and k samples, by the same mean and variance.
double pageZ(double l, int samples, int tasters);

}  // namespace oddglass::stats
