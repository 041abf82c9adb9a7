#pragma once

#include "stats/drawn.h"
#include "stats/ranks/blocks.h"

#include <functional>
#include <optional>
#include <vector>

namespace oddglass::stats {

/// Rank sums when each taster's ranks, ties as they are, are dealt to that taster's samples by chance alone.
///
/// Visits every possible set of doubled rank sums with its chance; the chances add up to 1. Where every taster ranked every sample the sums come
/// sorted, for then only the set of sums matters; otherwise they come by sample. False, and no visit, when counting takes more than `mostSteps`
/// (a step adds one arrangement of one taster to one set of sums), or with more than 16 samples.
/// Source: the permutation distribution by convolution over the tasters, sets of sums that are alike kept once.
bool eachRankSums(const RankBlocks& ranks, double mostSteps, const std::function<void(const std::vector<int>& doubledSums, double chance)>& visit);

/// A p from all arrangements, or from 100,000 drawn ones; empty where there is neither (`why` of the caller: tooLarge).
struct ArrangedP {
  std::optional<double> exact;
  std::optional<DrawnP> drawn;
};

/// The chance that a statistic of the doubled rank sums is at least as large as the one seen, with a relative allowance of 1e-9 for rounding.
/// The statistic must not depend on the order of the sums where every taster ranked every sample. Counted within 1e7 steps, else drawn from the
/// fixed stream (`drawn.h`); neither above 5,000 ranks.
ArrangedP arrangedP(const RankBlocks& ranks, const std::function<double(const std::vector<int>& doubledSums)>& statistic);

/// Only the drawn p: for statistics that depend on which sample has which sum. Empty above 5,000 ranks.
std::optional<DrawnP> drawnRankP(const RankBlocks& ranks, const std::function<double(const std::vector<int>& doubledSums)>& statistic);

}  // namespace oddglass::stats
