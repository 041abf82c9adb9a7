#pragma once

#include "stats/mixed/penalised_squares.h"

#include <optional>

namespace oddglass::stats {

/// Where the criterion is least, in the scale log(1 + c ratio), c the mean number of rows at a level: 0 is no variance at all.
struct Ratios {
  Eigen::VectorXd at;       ///< ratios of the terms' variances to the residual variance
  std::vector<bool> isZero; ///< which of them are at the lower bound
  bool isEndless = false;   ///< some ratio grows without end: nothing is left for the residual
  /// Second derivatives of the criterion by the ratios, the residual variance held at its estimate. Settled to the last digits unless some ratio is zero.
  Eigen::MatrixXd curvature;
};

/// Searches with NLopt (SLSQP, exact gradient, from two starts) and polishes by Newton steps. `perLevel` is c of each term.
/// Empty when the search fails.
std::optional<Ratios> leastCriterion(PenalisedSquares& model, const Eigen::VectorXd& perLevel);

}  // namespace oddglass::stats
