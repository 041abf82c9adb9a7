#pragma once

#include "stats/pairs/choices.h"

#include <Eigen/Dense>

#include <optional>
#include <vector>

namespace oddglass::stats {

/// What is fitted beside the worths; without `hasWorths` all worths are zero.
struct ChoiceTerms {
  bool hasWorths = true;
  bool hasTies = false;
  bool hasOrder = false;
};

/// Estimates with the inverse of the information: worths of all samples but the last (which is zero), then log nu, then the order effect.
struct ChoiceFit {
  Eigen::VectorXd estimate;
  Eigen::MatrixXd covariance;
  double logLikelihood = 0.0;
};

/// Maximum likelihood of the three chances of every pair by Newton's method with halved steps; the logarithm of the likelihood is concave. Empty
/// when it does not settle in 200 steps, or runs off to estimates above 30.
std::optional<ChoiceFit> fitChoices(const std::vector<PairCount>& counts, int samples, const ChoiceTerms& terms);

}  // namespace oddglass::stats
