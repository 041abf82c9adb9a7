#pragma once

#include "stats/mixed/fixed_effects.h"
#include "stats/reason.h"

#include <Eigen/Core>

#include <optional>
#include <string>
#include <vector>

namespace oddglass::stats {

/// A random intercept for each level of a factor: tasters, tasters within samples, sessions. Crossed or nested in any way.
struct RandomTerm {
  std::string name;
  Factor factor;
};

/// The combinations of two factors that occur, numbered in the order of (one, other): `taster:sample`.
Factor combined(const Factor& one, const Factor& other);

/// What became of a random term.
enum class TermState {
  estimated,   ///< a variance above zero
  zero,        ///< estimated at zero: the term left the model
  confounded,  ///< the data cannot tell it from the residual, the fixed part or an earlier term: it was left out
};

/// The variance of a random term, and what each level is thought to add to the mean (best linear unbiased predictions).
struct TermVariance {
  std::string name;
  double variance = 0.0;
  TermState state = TermState::estimated;
  std::vector<double> effects;  ///< one for each level of the factor; zeros where the term left
};

/// A linear mixed model fitted by restricted maximum likelihood.
struct RemlFit {
  std::vector<std::string> columns;  ///< names of the fixed effects
  Eigen::VectorXd fixed;             ///< their estimates
  Eigen::MatrixXd covariance;        ///< and their covariance
  std::vector<TermVariance> terms;   ///< in the order given
  double residual = 0.0;             ///< residual variance
  /// -2 log restricted likelihood, with the constant of lme4: log|V| + log|X'V^-1 X| + (n - p)(1 + log(2 pi s2)), V in units of s2.
  double criterion = 0.0;
  bool singular = false;  ///< some variance is zero

  /// For Satterthwaite: how the covariance moves with each variance parameter (ratios to the residual of the estimated terms, then
  /// the residual variance), and the covariance of those parameters, twice the inverse Hessian of the criterion.
  std::vector<Eigen::MatrixXd> moves;
  Eigen::MatrixXd parameterCovariance;
};

/// A fit, or why there is none. `about` names what is in the way: a column of the fixed part, say.
struct Reml {
  std::optional<RemlFit> fit;
  std::optional<Reason> why;
  std::string about;
};

/// Fits y = X b + sum of Z_k u_k + e by REML: penalised least squares with a sparse Cholesky factor, the residual variance profiled
/// out. `response` has as many finite numbers as the other parts have rows. A term whose variance is estimated at zero leaves the model.
/// No fit: confounded (columns of X depend on each other), fewAnswers (no more rows than columns), noSpread (the fixed and random
/// parts leave no residual), noConvergence. BadInput for columns of unlike length, no columns, labels outside their levels.
/// Source: Bates, Maechler, Bolker and Walker 2015, J Stat Softw 67(1), equations 14 to 42; the gradient as in Harville 1977, JASA 72:320.
Reml fitReml(const FixedEffects& fixed, const std::vector<RandomTerm>& random, const std::vector<double>& response);

/// A linear combination of fixed effects, with a two-sided t test of zero and an interval at the level asked for.
struct ContrastEstimate {
  double estimate;
  double se;
  double df;
  double low;
  double high;
  double pValue;
};

/// The combination with these weights, one for each column; df by Satterthwaite. level in (0, 1). Empty where the df are too small for
/// any finite interval. BadInput for the wrong length or weights that are all zero.
/// Source: Giesbrecht and Burns 1985, Biometrics 41:477; Kuznetsova, Brockhoff and Christensen 2017, J Stat Softw 82(13).
std::optional<ContrastEstimate> contrast(const RemlFit& fit, const Eigen::VectorXd& weights, double level = 0.95);

/// An F test that several combinations are all zero.
struct FTest {
  double F;
  int df1;  ///< the rank of the combinations
  double df2;
  double pValue;
};

/// One row a combination. F does not depend on how the question is put in rows, df2 a little: lmerTest uses `FixedEffects::sequential`
/// where the factor is the only fixed term, and `allZero` for each of several main effects. Source: Fai and Cornelius 1996, J Stat Comput Simul 54:363; Kuznetsova et al. 2017.
/// BadInput for the wrong number of columns or no combination at all.
FTest fTest(const RemlFit& fit, const Eigen::MatrixXd& combinations);

}  // namespace oddglass::stats
