#include "stats/mixed/ratios.h"

#include <Eigen/Eigenvalues>
#include <Eigen/LU>
#include <nlopt.hpp>

#include <cmath>

namespace oddglass::stats {
namespace {

constexpr double most = 23.0;   // log(1 + c ratio): the residual is a ten thousand millionth part
constexpr double floor = 1e-12; // c ratio of a variance that is zero: small enough to change nothing, and the slope there is that at zero

struct Search {
  PenalisedSquares& model;
  const Eigen::VectorXd& perLevel;

  Eigen::VectorXd ratios(const Eigen::VectorXd& s) const { return ((s.array().exp() - 1.0).max(0.0) + floor) / perLevel.array(); }
};

double criterionAt(const std::vector<double>& s, std::vector<double>& gradient, void* data) {
  const Search& search = *static_cast<Search*>(data);
  const Eigen::Map<const Eigen::VectorXd> where(s.data(), static_cast<Eigen::Index>(s.size()));
  const MixedPoint point = search.model.at(search.ratios(where), !gradient.empty());
  if (!gradient.empty()) {
    const Eigen::VectorXd slope = search.model.slope(point);
    for (Eigen::Index k = 0; k < where.size(); ++k) gradient[static_cast<std::size_t>(k)] = slope[k] * std::exp(where[k]) / search.perLevel[k];
  }
  return search.model.criterion(point);
}

/// The best end of searches from a middling and, where that costs little, from a small ratio.
std::optional<Eigen::VectorXd> searched(Search& search) {
  const auto terms = static_cast<unsigned>(search.model.terms());
  std::optional<Eigen::VectorXd> best;
  double least = 0.0;
  for (double start : {1.0, 0.1}) {
    if (best && search.model.levels() > 2000) break;
    nlopt::opt optimiser(nlopt::LD_SLSQP, terms);
    optimiser.set_min_objective(criterionAt, &search);
    optimiser.set_lower_bounds(0.0);
    optimiser.set_upper_bounds(most);
    optimiser.set_xtol_abs(1e-7);
    optimiser.set_ftol_abs(1e-10);
    optimiser.set_maxeval(500);
    std::vector<double> s(terms, start);
    double value = 0.0;
    try {
      optimiser.optimize(s, value);
    } catch (const std::exception&) {
      // Stopped by rounding: where it stands is still a candidate.
      std::vector<double> none;
      value = criterionAt(s, none, &search);
    }
    if (!std::isfinite(value) || (best && value >= least)) continue;
    least = value;
    best = Eigen::Map<Eigen::VectorXd>(s.data(), static_cast<Eigen::Index>(terms));
  }
  return best;
}

/// Second derivatives by central differences of the exact gradient, the residual variance held.
Eigen::MatrixXd curvatureAt(Search& search, const Eigen::VectorXd& ratios, double residual) {
  const Eigen::Index terms = ratios.size();
  Eigen::MatrixXd curvature(terms, terms);
  for (Eigen::Index k = 0; k < terms; ++k) {
    const double step = std::min(2e-4 * (ratios[k] + 1.0 / search.perLevel[k]), ratios[k] / 3.0);
    const auto slope = [&](double by) {
      Eigen::VectorXd moved = ratios;
      moved[k] += by;
      const MixedPoint point = search.model.at(moved, true);
      return Eigen::VectorXd(point.slopeOfLog + point.slopeOfSquares / residual);
    };
    curvature.col(k) = (slope(step) - slope(-step)) / (2.0 * step);
  }
  return (curvature + curvature.transpose()) / 2.0;
}

}  // namespace

std::optional<Ratios> leastCriterion(PenalisedSquares& model, const Eigen::VectorXd& perLevel) {
  Search search{model, perLevel};
  const auto found = searched(search);
  if (!found) return std::nullopt;
  Eigen::VectorXd s = *found;
  const Eigen::Index terms = s.size();
  Ratios result;
  bool anyZero = false;
  const auto lookForZeros = [&] {
    result.isZero.assign(static_cast<std::size_t>(terms), false);
    for (Eigen::Index k = 0; k < terms; ++k)
      if (s[k] < 1e-6) anyZero = result.isZero[static_cast<std::size_t>(k)] = true;
  };
  lookForZeros();
  result.isEndless = s.maxCoeff() > most - 1e-3;
  for (int round = 0; round < 5 && !anyZero && !result.isEndless; ++round) {
    const Eigen::VectorXd ratios = search.ratios(s), scale = s.array().exp() / perLevel.array();
    const MixedPoint point = model.at(ratios, true);
    const double freedom = model.freedom(), residual = point.squares / freedom;
    result.curvature = curvatureAt(search, ratios, residual);
    const Eigen::VectorXd slope = model.slope(point).cwiseProduct(scale), moves = point.slopeOfSquares.cwiseProduct(scale) / residual;
    Eigen::MatrixXd hessian = scale.asDiagonal() * result.curvature * scale.asDiagonal();
    hessian -= moves * moves.transpose() / freedom;
    hessian.diagonal() += slope;
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> eigen(hessian);
    if (!(eigen.eigenvalues()[0] > 1e-9 * eigen.eigenvalues()[terms - 1])) break;
    const Eigen::VectorXd step = eigen.eigenvectors() * (eigen.eigenvectors().transpose() * slope).cwiseQuotient(eigen.eigenvalues());
    if (step.cwiseAbs().maxCoeff() > 0.5) break;
    s = (s - step).cwiseMax(0.0);
    lookForZeros();
    if (step.cwiseAbs().maxCoeff() < 1e-5) break;
  }
  result.at = search.ratios(s);
  return result;
}

}  // namespace oddglass::stats
