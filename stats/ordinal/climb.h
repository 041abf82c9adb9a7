#pragma once

#include "stats/ordinal/likelihood.h"

namespace oddglass::stats {

/// The top of an ordinal likelihood, or where the climb ended.
struct Climb {
  Eigen::VectorXd at;
  double value = 0.0;
  Eigen::MatrixXd covariance;  ///< inverse of minus the Hessian over the free parameters; zeros for an sd that is held
  bool isSettled = false;
  bool isEndless = false;  ///< the likelihood goes on rising towards infinite parameters
};

/// Climbs from `start` with NLopt (SLSQP, exact gradient), then by Newton steps. The sd is held where it starts unless `withSd`.
Climb climb(const OrdinalLikelihood& likelihood, const Eigen::VectorXd& start, bool withSd);

}  // namespace oddglass::stats
