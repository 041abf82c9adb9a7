#include "stats/mixed/reml.h"

#include "stats/check.h"

#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <Eigen/Eigenvalues>

#include <cmath>

namespace oddglass::stats {
namespace {

double freedomOf(const RemlFit& fit, const Eigen::VectorXd& weights) {
  Eigen::VectorXd moves(static_cast<Eigen::Index>(fit.moves.size()));
  for (Eigen::Index k = 0; k < moves.size(); ++k) moves[k] = weights.dot(fit.moves[static_cast<std::size_t>(k)] * weights);
  const double variance = weights.dot(fit.covariance * weights);
  return 2.0 * variance * variance / moves.dot(fit.parameterCovariance * moves);
}

}  // namespace

std::optional<ContrastEstimate> contrast(const RemlFit& fit, const Eigen::VectorXd& weights, double level) {
  requireOpenShare("level", level);
  if (weights.size() != fit.fixed.size()) throw BadInput("weights", "must be one for each fixed effect");
  if (!weights.allFinite() || weights.isZero(0.0)) throw BadInput("weights", "must be finite and not all zero");
  const double se = std::sqrt(weights.dot(fit.covariance * weights)), df = freedomOf(fit, weights), value = weights.dot(fit.fixed);
  if (!(se > 0.0) || !(df > 0.05) || !std::isfinite(df)) return std::nullopt;
  const boost::math::students_t t(df);
  const double half = boost::math::quantile(boost::math::complement(t, (1.0 - level) / 2.0)) * se;
  if (!std::isfinite(half)) return std::nullopt;
  return ContrastEstimate{value, se, df, value - half, value + half, 2.0 * boost::math::cdf(boost::math::complement(t, std::abs(value) / se))};
}

FTest fTest(const RemlFit& fit, const Eigen::MatrixXd& combinations) {
  if (combinations.cols() != fit.fixed.size()) throw BadInput("combinations", "must have a column for each fixed effect");
  if (combinations.rows() == 0 || !combinations.allFinite() || combinations.isZero(0.0)) throw BadInput("combinations", "must be finite and not all zero");
  // Independent t statistics along the axes of the combinations' covariance.
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> eigen(combinations * fit.covariance * combinations.transpose());
  const Eigen::VectorXd values = eigen.eigenvectors().transpose() * (combinations * fit.fixed);
  const double least = 1e-8 * eigen.eigenvalues().maxCoeff();
  double sum = 0.0, freedom = 0.0, expected = 0.0, lowest = 0.0, highest = 0.0;
  int rank = 0;
  for (Eigen::Index i = 0; i < values.size(); ++i) {
    if (!(eigen.eigenvalues()[i] > least)) continue;
    const double df = freedomOf(fit, combinations.transpose() * eigen.eigenvectors().col(i));
    sum += values[i] * values[i] / eigen.eigenvalues()[i];
    freedom += df;
    expected += df / (df - 2.0);
    lowest = rank == 0 ? df : std::min(lowest, df);
    highest = rank == 0 ? df : std::max(highest, df);
    ++rank;
  }
  double df2 = 2.0;
  if (highest - lowest < 1e-6 * highest) df2 = freedom / rank;
  else if (lowest > 2.0) df2 = 2.0 * expected / (expected - rank);
  const double F = sum / rank;
  return {F, rank, df2, boost::math::cdf(boost::math::complement(boost::math::fisher_f(rank, df2), F))};
}

}  // namespace oddglass::stats
