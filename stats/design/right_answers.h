#pragma once

#include "stats/design/servings.h"

#include <array>
#include <optional>
#include <vector>

namespace oddglass::stats {

/// What the right answer is for one order. Cups are numbered from 0 along the whole order, a marked cup included; sides are 1 and 2.
/// An order in which there is no such answer gives nothing. Source: the definition of each method.

/// Triangle: the cup that holds another side than the other two. (3-AFC: `onlyCup` of the target.)
std::optional<int> oddCup(const CupOrder& order);

/// Duo-trio: of the two coded cups after the marked one, the cup that holds what the marked one holds: 1 or 2.
std::optional<int> matchingCup(const CupOrder& order);

/// Directional pair and 3-AFC: the one cup that holds `side`.
std::optional<int> onlyCup(const CupOrder& order, Side side);

/// Tetrad and two-out-of-five: two cups that stand together in the right grouping, rising. For a tetrad the first cup and the one
/// like it, for two-out-of-five the two that are alike.
std::optional<std::array<int, 2>> rightGroup(const CupOrder& order);

/// Whether two cups were put together rightly: as `rightGroup`; in a tetrad the other two are the same grouping. False for cups
/// that do not exist, for one cup named twice, and where there is no right grouping.
bool isRightGroup(const CupOrder& order, std::array<int, 2> cups);

/// Same-different: whether the last two cups hold the same side. Nothing for fewer than two.
std::optional<bool> areSame(const CupOrder& order);

/// A-not-A: whether the last cup holds A (side 1). Nothing for no cup.
std::optional<bool> isA(const CupOrder& order);

}  // namespace oddglass::stats
