#pragma once

#include "stats/mixed/fixed_effects.h"

#include <Eigen/Core>

#include <optional>

namespace oddglass::stats {

/// The fixed part with columns of length one at right angles, and the way back.
struct Orthonormal {
  Eigen::MatrixXd q;
  Eigen::MatrixXd back;  ///< estimates = back * estimates by q
  double logScale;       ///< log|X'X|
};

/// Empty when the columns depend on each other; `about` then names the first that adds nothing to those before it.
/// As many rows as columns or more.
std::optional<Orthonormal> orthonormal(const FixedEffects& fixed, std::string& about);

}  // namespace oddglass::stats
