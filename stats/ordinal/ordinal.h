#pragma once

#include "stats/mixed/fixed_effects.h"
#include "stats/ordinal/link.h"
#include "stats/reason.h"

#include <Eigen/Core>

#include <optional>
#include <string>
#include <vector>

namespace oddglass::stats {

/// A cumulative link model, P(Y <= j) = F(threshold_j - x'b - u), u normal with mean 0 and a standard deviation of its own for the
/// levels of a factor. A positive effect is a higher category.
struct OrdinalFit {
  std::vector<int> categories;  ///< those that occur, ascending; others are left out of the model
  Eigen::VectorXd thresholds;   ///< between neighbours among them
  Eigen::VectorXd fixed;
  Eigen::MatrixXd covariance;   ///< of thresholds, then fixed effects
  double groupSd = 0.0;         ///< of u; zero where no variance fits best, or without a factor
  bool singular = false;        ///< a factor was given and its variance is zero
  double logLikelihood = 0.0;
};

/// A fit, or why there is none. `about` names what is in the way.
struct Ordinal {
  std::optional<OrdinalFit> fit;
  std::optional<Reason> why;
  std::string about;
};

/// Fits by greatest likelihood. `fixed` has no constant (the thresholds stand for it) and may have no columns; `category` is one
/// whole number a row. points 1 is Laplace's approximation, 2 to 100 adaptive Gauss-Hermite quadrature.
/// No fit: noSpread (one category only), oneTaster (the factor has one level), confounded (columns depend on each other), separated
/// (answers fall apart so cleanly that an estimate would be infinite), noConvergence. BadInput for columns of unlike length or points out of range.
/// Sources: McCullagh 1980, JRSS B 42:109; Tutz and Hennevogl 1996, Comput Stat Data Anal 22:537.
Ordinal fitOrdinal(const FixedEffects& fixed, const std::optional<Factor>& group, const std::vector<int>& category, Link link = Link::logit, int points = 1);

/// A sample against the first one.
struct SampleShift {
  double estimate;
  double se;
  double pValue;  ///< two-sided, Wald
};

/// Ratings of samples by tasters.
struct RatedSamples {
  std::optional<OrdinalFit> fit;
  std::vector<SampleShift> samples;  ///< of the second sample and those after it; empty without a fit
  std::optional<double> ratio;       ///< twice the gain in log-likelihood over samples all alike
  int ratioDf = 0;
  std::optional<double> pValue;      ///< of the ratio, chi-square
  std::optional<Reason> why;
};

/// Samples by treatment contrasts, tasters at random; rounds are repeated rows; session and position, where given, are fixed factors.
/// `rows.response` holds whole numbers (BadInput otherwise).
RatedSamples rateSamples(const ScoreRows& rows, int points = 1);

}  // namespace oddglass::stats
