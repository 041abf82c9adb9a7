#include "stats/mixed/reml.h"

#include "stats/error.h"
#include "stats/mixed/orthonormal.h"
#include "stats/mixed/ratios.h"

#include <Eigen/Eigenvalues>

#include <cmath>
#include <map>
#include <set>

namespace oddglass::stats {
namespace {

void requireSound(const FixedEffects& fixed, const std::vector<RandomTerm>& random, const std::vector<double>& response) {
  if (static_cast<int>(response.size()) != fixed.rows()) throw BadInput("response", "must have as many rows as the fixed effects");
  if (fixed.columns() == 0) throw BadInput("fixed", "must have a column");
  for (double value : response)
    if (!std::isfinite(value)) throw BadInput("response", "must be finite numbers");
  for (const RandomTerm& term : random) {
    if (term.factor.of.size() != response.size()) throw BadInput(term.name, "must have as many rows as the response");
    for (int level : term.factor.of)
      if (level < 0 || level >= term.factor.levels) throw BadInput(term.name, "holds a label that is not among its levels");
  }
}

/// What least squares leave of the response, in units of its spread.
struct Left {
  Eigen::VectorXd plain;     ///< estimates by least squares, in the orthonormal basis
  Eigen::VectorXd residual;  ///< with mean square one
  double unit = 0.0;
};

std::optional<Left> leastSquares(const Eigen::MatrixXd& q, const std::vector<double>& response) {
  const Eigen::Map<const Eigen::VectorXd> y(response.data(), q.rows());
  Left left{q.transpose() * y, {}, 0.0};
  left.residual = y - q * left.plain;
  left.unit = left.residual.norm() / std::sqrt(static_cast<double>(q.rows() - q.cols()));
  if (left.residual.squaredNorm() <= 1e-22 * y.squaredNorm() || !(left.unit > 1e-150)) return std::nullopt;
  left.residual /= left.unit;
  return left;
}

double rowsPerLevel(const Factor& factor) { return static_cast<double>(factor.of.size()) / static_cast<double>(std::set<int>(factor.of.begin(), factor.of.end()).size()); }

/// The model with the terms that stay, at its best ratios.
class Settling {
 public:
  Settling(const Eigen::MatrixXd& q, const Eigen::VectorXd& y, const std::vector<RandomTerm>& random) : q_(q), y_(y), random_(random), states(random.size(), TermState::estimated) { build(); }

  /// Leaves out the terms that cannot be told apart, then, one search after another, those whose variance is zero.
  std::optional<Reason> settle() {
    const std::vector<bool> lost = model->confounded();
    for (std::size_t k = 0; k < lost.size(); ++k)
      if (lost[k]) states[k] = TermState::confounded;
    for (build(); !kept.empty(); build()) {
      Eigen::VectorXd perLevel(static_cast<Eigen::Index>(kept.size()));
      for (std::size_t k = 0; k < kept.size(); ++k) perLevel[static_cast<Eigen::Index>(k)] = rowsPerLevel(random_[kept[k]].factor);
      const auto found = leastCriterion(*model, perLevel);
      if (!found) return Reason::noConvergence;
      if (found->isEndless) return Reason::noSpread;
      ratios = *found;
      bool anyZero = false;
      for (std::size_t k = 0; k < kept.size(); ++k)
        if (found->isZero[k]) states[kept[k]] = TermState::zero, anyZero = true;
      if (!anyZero) return std::nullopt;
    }
    ratios = Ratios{Eigen::VectorXd(0), {}, false, Eigen::MatrixXd(0, 0)};
    return std::nullopt;
  }

 private:
  void build() {
    std::vector<std::size_t> stay;
    for (std::size_t k = 0; k < states.size(); ++k)
      if (states[k] == TermState::estimated) stay.push_back(k);
    if (model && stay == kept) return;
    kept = stay;
    std::vector<const Factor*> factors;
    for (std::size_t k : kept) factors.push_back(&random_[k].factor);
    model.emplace(q_, factors, y_);
  }

  const Eigen::MatrixXd& q_;
  const Eigen::VectorXd& y_;
  const std::vector<RandomTerm>& random_;

 public:
  std::vector<TermState> states;
  std::vector<std::size_t> kept;  ///< which terms the model has
  std::optional<PenalisedSquares> model;
  Ratios ratios{Eigen::VectorXd(0), {}, false, Eigen::MatrixXd(0, 0)};
};

/// Twice the inverse of a Hessian; along directions in which it does not curve upwards nothing is known and nothing is added.
Eigen::MatrixXd covarianceFrom(const Eigen::MatrixXd& hessian) {
  const Eigen::VectorXd scale = hessian.diagonal().cwiseAbs().cwiseMax(1e-300).cwiseSqrt().cwiseInverse();
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> eigen(scale.asDiagonal() * hessian * scale.asDiagonal());
  Eigen::VectorXd inverse = eigen.eigenvalues();
  for (double& value : inverse) value = value > 1e-8 ? 2.0 / value : 0.0;
  return scale.asDiagonal() * eigen.eigenvectors() * inverse.asDiagonal() * eigen.eigenvectors().transpose() * scale.asDiagonal();
}

/// Estimates, variances and their covariances in the units and columns of the caller. `fit` holds its terms and the residual variance.
void fillIn(RemlFit& fit, const Settling& settled, const MixedPoint& point, const Orthonormal& basis, const Left& left) {
  const Eigen::Index p = point.fixed.size(), terms = settled.ratios.at.size();
  const double freedom = settled.model->freedom(), residual = point.squares / freedom;
  const auto back = [&](const Eigen::MatrixXd& in) { return Eigen::MatrixXd(basis.back * in * basis.back.transpose()); };
  const Eigen::MatrixXd unscaled = point.information.llt().solve(Eigen::MatrixXd::Identity(p, p));
  fit.fixed = basis.back * (left.plain + left.unit * point.fixed);
  fit.covariance = fit.residual * back(unscaled);
  const auto effects = settled.model->effects(point);
  Eigen::MatrixXd hessian(terms + 1, terms + 1);
  hessian.topLeftCorner(terms, terms) = settled.ratios.curvature;
  for (Eigen::Index k = 0; k < terms; ++k) {
    const auto at = static_cast<std::size_t>(k);
    TermVariance& term = fit.terms[settled.kept[at]];
    term.variance = settled.ratios.at[k] * fit.residual;
    for (std::size_t i = 0; i < term.effects.size(); ++i) term.effects[i] = left.unit * effects[at][i];
    hessian(k, terms) = hessian(terms, k) = -point.slopeOfSquares[k] / (residual * fit.residual);
    const Eigen::MatrixXd crossing = point.crossings[at] * unscaled;
    fit.moves.push_back(fit.residual * back(crossing.transpose() * crossing));
  }
  hessian(terms, terms) = freedom / (fit.residual * fit.residual);
  fit.moves.push_back(fit.covariance / fit.residual);
  fit.parameterCovariance = covarianceFrom(hessian);
}

Reml none(Reason why, std::string about = {}) { return {std::nullopt, why, std::move(about)}; }

}  // namespace

Factor combined(const Factor& one, const Factor& other) {
  if (one.of.size() != other.of.size()) throw BadInput("factor", "both must have as many rows");
  std::map<std::pair<int, int>, int> cells;
  for (std::size_t row = 0; row < one.of.size(); ++row) cells[{one.of[row], other.of[row]}];
  Factor factor;
  for (auto& [cell, number] : cells) number = factor.levels++;
  for (std::size_t row = 0; row < one.of.size(); ++row) factor.of.push_back(cells[{one.of[row], other.of[row]}]);
  return factor;
}

Reml fitReml(const FixedEffects& fixed, const std::vector<RandomTerm>& random, const std::vector<double>& response) {
  requireSound(fixed, random, response);
  if (fixed.rows() <= fixed.columns()) return none(Reason::fewAnswers);
  std::string about;
  const auto basis = orthonormal(fixed, about);
  if (!basis) return none(Reason::confounded, about);
  const auto left = leastSquares(basis->q, response);
  if (!left) return none(Reason::noSpread);
  Settling settled(basis->q, left->residual, random);
  if (const auto why = settled.settle()) return none(*why);

  const MixedPoint point = settled.model->at(settled.ratios.at, true);
  const double freedom = settled.model->freedom(), residual = point.squares / freedom;
  if (!(residual > 1e-12) || !std::isfinite(point.logDeterminants)) return none(Reason::noSpread);
  RemlFit fit;
  fit.columns = fixed.names();
  fit.residual = residual * left->unit * left->unit;
  fit.criterion = settled.model->criterion(point) + basis->logScale + 2.0 * freedom * std::log(left->unit);
  for (std::size_t k = 0; k < random.size(); ++k) {
    fit.terms.push_back({random[k].name, 0.0, settled.states[k], std::vector<double>(static_cast<std::size_t>(random[k].factor.levels), 0.0)});
    fit.singular = fit.singular || settled.states[k] == TermState::zero;
  }
  fillIn(fit, settled, point, *basis, *left);
  return {std::move(fit), std::nullopt, {}};
}

}  // namespace oddglass::stats
