#pragma once

#include "stats/pairs/choices.h"

#include <vector>

namespace oddglass::stats {

/// True when every sample won, or tied, its way to every other one, so that worths have finite estimates: the graph of wins, ties as wins of both, is
/// strongly connected. Source: Ford 1957, Am. Math. Mon. 64:28.
bool isBeatenAllRound(const std::vector<PairCount>& counts, int samples);

/// True when the advantage of the left place has a finite estimate that the pairs themselves do not explain: some pair was tasted both ways round,
/// and neither for a left nor for a right advantage are there worths that explain every choice (no feasible system of difference constraints,
/// Bellman and Ford). Worths must have finite estimates without it.
bool isOrderEstimable(const std::vector<PairCount>& counts, int samples);

}  // namespace oddglass::stats
