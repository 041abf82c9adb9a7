#pragma once

#include "stats/drawn.h"

#include <Eigen/Core>

#include <vector>

namespace oddglass::stats {

/// Two symmetric matrices of one size whose rows and columns sum to 0.
struct Likeness {
  Eigen::MatrixXd one, other;
};

/// For each pair, all of one size n from 2 to 200: the share of the orders of n things under which the sum of products of `one` with the rearranged `other` is as large as
/// it is, or larger (1e-10 of their size counts as equal). All n! orders where these are at most `mostArrangements`, the error then 0; else `drawnArrangements` of the
/// fixed stream, as `drawnP`. Pairs are worked on side by side.
std::vector<DrawnP> asLikeRearranged(const std::vector<Likeness>& pairs);

}  // namespace oddglass::stats
