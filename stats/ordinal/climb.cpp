#include "stats/ordinal/climb.h"

#include <Eigen/Eigenvalues>
#include <nlopt.hpp>

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

/// Thresholds as the first and the logs of the gaps, so that every vector is possible.
struct AlongThresholds {
  const OrdinalLikelihood& likelihood;
  double heldSd;
  bool withSd;

  Eigen::VectorXd parameters(const std::vector<double>& free) const {
    Eigen::VectorXd all(likelihood.parameters());
    all[all.size() - 1] = heldSd;
    for (std::size_t k = 0; k < free.size(); ++k) all[static_cast<Eigen::Index>(k)] = free[k];
    for (int j = 1; j < likelihood.thresholds(); ++j) all[j] = all[j - 1] + std::exp(free[static_cast<std::size_t>(j)]);
    return all;
  }
  std::vector<double> freed(const Eigen::VectorXd& all) const {
    std::vector<double> free(all.data(), all.data() + all.size() - (withSd ? 0 : 1));
    for (int j = 1; j < likelihood.thresholds(); ++j) free[static_cast<std::size_t>(j)] = std::log(all[j] - all[j - 1]);
    return free;
  }
};

double likelihoodAt(const std::vector<double>& free, std::vector<double>& gradient, void* data) {
  const AlongThresholds& search = *static_cast<AlongThresholds*>(data);
  const Eigen::VectorXd all = search.parameters(free);
  Eigen::VectorXd slope;
  const double value = search.likelihood.at(all, slope);
  if (!std::isfinite(value)) {
    // An answer so unlikely that it underflows, or two thresholds joined by rounding.
    std::ranges::fill(gradient, 0.0);
    return -1e300;
  }
  for (std::size_t k = 0; k < gradient.size(); ++k) gradient[k] = slope[static_cast<Eigen::Index>(k)];
  const int thresholds = search.likelihood.thresholds();
  if (!gradient.empty()) {
    for (int j = thresholds - 2; j >= 0; --j) gradient[static_cast<std::size_t>(j)] += gradient[static_cast<std::size_t>(j) + 1];
    for (int j = 1; j < thresholds; ++j) gradient[static_cast<std::size_t>(j)] *= std::exp(free[static_cast<std::size_t>(j)]);
  }
  return value;
}

/// Second derivatives by central differences of the exact gradient.
Eigen::MatrixXd hessianAt(const OrdinalLikelihood& likelihood, const Eigen::VectorXd& at, Eigen::Index free) {
  Eigen::MatrixXd hessian(free, free);
  for (Eigen::Index k = 0; k < free; ++k) {
    double step = 2e-4;
    if (k < likelihood.thresholds()) {
      if (k > 0) step = std::min(step, (at[k] - at[k - 1]) / 4.0);
      if (k + 1 < likelihood.thresholds()) step = std::min(step, (at[k + 1] - at[k]) / 4.0);
    } else if (k + 1 == at.size()) {
      step = std::min(step, at[k] / 4.0);
    }
    const auto across = [&](double by) {
      Eigen::VectorXd up = at, down = at, above, below;
      up[k] += by;
      down[k] -= by;
      likelihood.at(up, above);
      likelihood.at(down, below);
      return Eigen::VectorXd((above - below).head(free) / (2.0 * by));
    };
    hessian.col(k) = across(step);
  }
  return (hessian + hessian.transpose()) / 2.0;
}

}  // namespace

Climb climb(const OrdinalLikelihood& likelihood, const Eigen::VectorXd& start, bool withSd) {
  const Eigen::Index free = start.size() - (withSd ? 0 : 1);
  AlongThresholds search{likelihood, start[start.size() - 1], withSd};
  std::vector<double> where = search.freed(start);
  nlopt::opt optimiser(nlopt::LD_SLSQP, static_cast<unsigned>(free));
  optimiser.set_max_objective(likelihoodAt, &search);
  std::vector<double> lower(static_cast<std::size_t>(free), -40.0), upper(static_cast<std::size_t>(free), 40.0);
  if (withSd) lower.back() = 1e-6;
  optimiser.set_lower_bounds(lower);
  optimiser.set_upper_bounds(upper);
  optimiser.set_xtol_abs(1e-4);
  optimiser.set_ftol_abs(1e-6);
  optimiser.set_maxeval(500);
  try {
    double value = 0.0;
    optimiser.optimize(where, value);
  } catch (const std::exception&) {
    // Stopped by rounding; Newton goes on from where it stands.
  }

  Climb climbed;
  climbed.at = search.parameters(where);
  Eigen::VectorXd slope, atStart;
  climbed.value = likelihood.at(climbed.at, slope);
  // A step so far out that the likelihood underflows may end the search anywhere: Newton's steps then go from the start.
  if (const double value = likelihood.at(start, atStart); !(climbed.value >= value)) {
    climbed.at = start;
    climbed.value = value;
    slope = atStart;
  }
  climbed.covariance = Eigen::MatrixXd::Zero(start.size(), start.size());
  if (!std::isfinite(climbed.value)) return climbed;
  for (int round = 0; round < 25; ++round) {
    if (withSd && climbed.at[free - 1] < 1e-4) return climbed;
    if (climbed.at.cwiseAbs().maxCoeff() > 35.0) break;
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> eigen(-hessianAt(likelihood, climbed.at, free));
    if (!(eigen.eigenvalues().cwiseAbs().minCoeff() > 1e-7)) break;
    // Where it does not curve down, upwards all the same.
    const Eigen::VectorXd inverse = eigen.eigenvalues().cwiseAbs().cwiseInverse();
    const bool isTop = eigen.eigenvalues()[0] > 0.0;
    Eigen::VectorXd step = eigen.eigenvectors() * (inverse.asDiagonal() * (eigen.eigenvectors().transpose() * slope.head(free)));
    climbed.covariance.topLeftCorner(free, free) = eigen.eigenvectors() * inverse.asDiagonal() * eigen.eigenvectors().transpose();
    const double length = step.cwiseAbs().maxCoeff();
    for (bool isBetter = false; !isBetter; step /= 2.0) {
      if (step.cwiseAbs().maxCoeff() < 1e-9) {
        climbed.isSettled = isTop && length < 1e-5;
        return climbed;
      }
      Eigen::VectorXd next = climbed.at, there;
      next.head(free) += step;
      if (withSd && !(next[free - 1] > 0.0)) continue;
      const double value = likelihood.at(next, there);
      if (!(value >= climbed.value - 1e-10)) continue;
      isBetter = true;
      climbed.at = next;
      climbed.value = value;
      slope = there;
    }
    climbed.isSettled = isTop && length < 1e-5;
    if (climbed.isSettled) return climbed;
  }
  // Flat, and still moving outwards: some parameter has no finite best value.
  climbed.isEndless = slope.head(free).cwiseAbs().maxCoeff() < 1e-2;
  return climbed;
}

}  // namespace oddglass::stats
