#include "stats/ranks/durbin.h"

#include "stats/check.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

/// What does not change when ranks are dealt anew: each sample's expected doubled sum, and the variance of the doubled sums.
struct Dealt {
  Eigen::VectorXd mean;
  Eigen::MatrixXd variance;
};

Dealt dealt(const RankBlocks& ranks) {
  Dealt all{Eigen::VectorXd::Zero(ranks.samples), Eigen::MatrixXd::Zero(ranks.samples, ranks.samples)};
  for (const RankBlock& block : ranks.blocks) {
    const double k = static_cast<double>(block.samples.size());
    double spread = 0.0;
    for (int rank : block.doubled) spread += (rank - (k + 1)) * (rank - (k + 1));
    spread /= k - 1;
    for (int a : block.samples) {
      all.mean(a) += k + 1;
      for (int b : block.samples) all.variance(a, b) += spread * ((a == b) - 1.0 / k);
    }
  }
  return all;
}

/// The pseudo-inverse, and how many directions it covers.
std::pair<Eigen::MatrixXd, int> inverseOf(const Eigen::MatrixXd& variance) {
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver(variance);
  const Eigen::VectorXd values = solver.eigenvalues();
  Eigen::VectorXd inverse = Eigen::VectorXd::Zero(values.size());
  int rank = 0;
  for (Eigen::Index i = 0; i < values.size(); ++i)
    if (values(i) > 1e-9 * values.maxCoeff()) {
      inverse(i) = 1.0 / values(i);
      ++rank;
    }
  return {solver.eigenvectors() * inverse.asDiagonal() * solver.eigenvectors().transpose(), rank};
}

void measure(const std::vector<int>& sums, const Eigen::VectorXd& mean, Eigen::VectorXd& away) {
  for (Eigen::Index i = 0; i < mean.size(); ++i) away(i) = sums[static_cast<std::size_t>(i)] - mean(i);
}

void judgeBalanced(const RankBlocks& ranks, double between, Durbin& result) {
  double squares = 0.0;
  const int k = result.blocks.size, b = result.blocks.tasters, t = ranks.samples;
  for (const RankBlock& block : ranks.blocks)
    for (int rank : block.doubled) squares += (rank - (k + 1)) * (rank - (k + 1));
  const double T = (t - 1) * between / squares;
  result.statistic = T;
  const double left = b * (k - 1.0) - T;
  const int df2 = b * k - b - t + 1;
  if (df2 > 0 && left > 1e-9 * b) {
    RankF f{T / (t - 1) / (left / df2), t - 1, df2, 0.0};
    f.pValue = boost::math::cdf(boost::math::complement(boost::math::fisher_f(f.df1, f.df2), f.F));
    result.f = f;
  }
}

}  // namespace

BlockSizes blockSizes(const RankBlocks& ranks) {
  BlockSizes sizes;
  sizes.tasters = static_cast<int>(ranks.blocks.size());
  if (ranks.blocks.empty()) return sizes;
  Eigen::MatrixXi together = Eigen::MatrixXi::Zero(ranks.samples, ranks.samples);
  bool isEven = true;
  for (const RankBlock& block : ranks.blocks) {
    isEven = isEven && block.samples.size() == ranks.blocks[0].samples.size();
    for (int a : block.samples)
      for (int b : block.samples) ++together(a, b);
  }
  sizes.size = static_cast<int>(ranks.blocks[0].samples.size());
  sizes.repeats = together(0, 0);
  sizes.together = together(0, 1);
  for (int a = 0; a < ranks.samples; ++a)
    for (int b = 0; b < ranks.samples; ++b) isEven = isEven && together(a, b) == (a == b ? sizes.repeats : sizes.together);
  sizes.isBalanced = isEven && sizes.together > 0;
  return sizes;
}

Durbin durbin(const RankBlocks& ranks) {
  if (ranks.samples > 1000) throw BadInput("samples", "must not be above 1000");
  Durbin result;
  result.blocks = blockSizes(ranks);
  result.df = ranks.samples - 1;
  const std::vector<int> sums = doubledRankSums(ranks);
  for (int sum : sums) result.rankSums.push_back(sum / 2.0);
  if (isAllTied(ranks)) result.why = Reason::allTied;
  else if (ranks.blocks.size() < 2) result.why = Reason::oneTaster;
  if (result.why) return result;
  const Dealt all = dealt(ranks);
  const auto [inverse, rank] = inverseOf(all.variance);
  if (rank < result.df) {
    result.why = Reason::notConnected;
    return result;
  }
  // Called for every arrangement: nothing is allocated here.
  Eigen::VectorXd away(ranks.samples), turned(ranks.samples);
  const auto general = [&, &weights = inverse](const std::vector<int>& doubled) {
    measure(doubled, all.mean, away);
    turned.noalias() = weights * away;
    return away.dot(turned);
  };
  const auto even = [&](const std::vector<int>& doubled) {
    measure(doubled, all.mean, away);
    return away.squaredNorm();
  };
  if (result.blocks.isBalanced) judgeBalanced(ranks, even(sums), result);
  else result.statistic = general(sums);
  result.pValue = boost::math::cdf(boost::math::complement(boost::math::chi_squared(result.df), *result.statistic));
  if (result.blocks.isBalanced) result.arranged = arrangedP(ranks, even);
  else if (ranks.samples <= 60) result.arranged = arrangedP(ranks, general);
  return result;
}

std::optional<double> leastSignificantDifference(const BlockSizes& blocks, double alpha) {
  requireOpenShare("alpha", alpha);
  if (!blocks.isBalanced) return std::nullopt;
  const double z = boost::math::quantile(boost::math::complement(boost::math::normal(), alpha / 2)), k = blocks.size;
  return z * std::sqrt((k + 1) * (blocks.repeats * (k - 1) + blocks.together) / 6.0);
}

}  // namespace oddglass::stats
