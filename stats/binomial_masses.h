#pragma once

#include <vector>

namespace oddglass::stats {

/// P(X = k) for k = 0 ... trials of a binomial count, all at once; below 1e-290 it is 0. trials from 0 to 10 million, p in [0, 1].
/// Source: the mass of the likeliest count (binomial.h) and the quotients of neighbouring masses. Accurate to about 1e-12.
std::vector<double> binomialMasses(int trials, double p);

/// P(X >= k) for k = 0 ... masses.size(), the last of them 0: sums from the far end.
std::vector<double> upperTails(const std::vector<double>& masses);

}  // namespace oddglass::stats
