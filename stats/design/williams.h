#pragma once

#include <vector>

namespace oddglass::stats {

/// Orders of several samples; samples are numbered from 0.
using SampleOrders = std::vector<std::vector<int>>;

/// Latin squares in which every sample stands once in each position, and in which, over all squares together, every sample follows every
/// other one equally often. One square for an even number of samples, two for an odd number. 2 <= samples <= 60.
/// Source: Williams 1949, Aust J Sci Res A 2:149, by the zigzag construction.
std::vector<SampleOrders> williamsSquares(int samples);

}  // namespace oddglass::stats
