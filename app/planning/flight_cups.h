#pragma once

#include "planning/setup.h"

#include <array>
#include <vector>

namespace oddglass::planning {

/// How many cups of the two lots that are compared are poured for one flight, for each order that may be drawn: the lower lot, then the higher one. Where hands
/// hide them: what hands pour, the cup that is set aside among them.
using CupsOfOrder = std::array<int, 2>;
std::vector<CupsOfOrder> cupsOfOrders(const Setup& setup);

/// Cups poured for one flight of a comparison, at most.
int cupsPoured(const Setup& setup);

/// Cups of one of the two compared lots (side 1 or 2) in one round over `places`, at worst. Whole blocks hold every order once; a block that is
/// not full holds orders that differ, and the worst of these are taken. Source: counting over stats/design/servings.h.
int worstCups(const Setup& setup, int side, int places);

/// The pairs of lots that are compared, each as two indices into the setup's lots, lower first.
std::vector<std::array<int, 2>> comparedLots(const Setup& setup);

/// Grams of ethanol in one round of a person: a flight of each comparison, each with the order that holds most; nothing where a strength is missing.
std::optional<double> gramsOfRound(const Setup& setup, int cupMl);

}  // namespace oddglass::planning
