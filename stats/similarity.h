#pragma once

#include "stats/methods.h"

#include <optional>

namespace oddglass::stats {

/// The test for alikeness: that fewer than a share `limit` of people can tell. It is met when so few right answers would
/// come up at most alpha of the time had the share been exactly the limit.
/// Source: ISO 4120:2021 and ISO 10399:2017 (similarity), exact binomial.
/// limit in (0, 1), guess in (0, 1), alpha in (0, 1), 0 <= correct <= trials; BadInput otherwise.

/// The largest count x with P(X <= x | guess + limit (1 - guess)) <= alpha; empty when not even 0 right is few enough.
std::optional<int> largestAlike(int trials, double guess, double limit, double alpha);

/// P(X <= correct) when exactly the limit share can tell.
double alikePValue(int correct, int trials, double guess, double limit);

/// Chance that the count ends at or below the largest, when a share `truePd` in [0, 1] can tell; 0 where there is none.
double alikePower(int trials, double guess, double limit, double alpha, double truePd);

}  // namespace oddglass::stats
