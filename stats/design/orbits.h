#pragma once

#include <optional>
#include <vector>

namespace oddglass::stats {

/// A balanced incomplete block design with so many blocks out of whole orbits: blocks that a cyclic permutation of the samples turns into each other are
/// taken all or not at all, and the orbits must cover every pair of samples equally often. Cyclic designs come out first, then those with a
/// fixed sample, then two to four cycles. Sizes must meet r = b k / t and lambda = r (k - 1) / (t - 1) in whole numbers. Empty when the search finds none.
/// Source: Kramer and Mesner 1976, Discrete Math. 15:263; difference sets of 13, 21 and 31 by Singer 1938.
std::optional<std::vector<std::vector<int>>> blocksByOrbits(int samples, int size, int blocks);

}  // namespace oddglass::stats
