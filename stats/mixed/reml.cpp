#include "stats/mixed/reml.h"

#include "stats/error.h"
#include "stats/mixed/ratios.h"

#include <Eigen/Eigenvalues>
#include <Eigen/QR>

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

/// The fixed part with columns of length one at right angles, and the way back.
struct Orthonormal {
  Eigen::MatrixXd q;
  Eigen::MatrixXd back;  ///< estimates = back * estimates by q
  double logScale;       ///< log|X'X|
};

/// Empty when the columns depend on each other; `about` then names the first that adds nothing to those before it.
std::optional<Orthonormal> orthonormal(const FixedEffects& fixed, std::string& about) {
  const Eigen::MatrixXd& x = fixed.matrix();
  const Eigen::Index p = x.cols();
  const Eigen::VectorXd lengths = x.colwise().norm();
  for (Eigen::Index i = 0; i < p; ++i)
    if (lengths[i] == 0.0) return about = fixed.names()[static_cast<std::size_t>(i)], std::nullopt;
  const Eigen::HouseholderQR<Eigen::MatrixXd> qr(x * lengths.cwiseInverse().asDiagonal());
  const Eigen::MatrixXd r = qr.matrixQR().topRows(p).triangularView<Eigen::Upper>();
  for (Eigen::Index i = 0; i < p; ++i)
    if (std::abs(r(i, i)) < 1e-7) return about = fixed.names()[static_cast<std::size_t>(i)], std::nullopt;
  Orthonormal made;
  made.q = qr.householderQ() * Eigen::MatrixXd::Identity(x.rows(), p);
  made.back = lengths.cwiseInverse().asDiagonal() * Eigen::MatrixXd(r.triangularView<Eigen::Upper>().solve(Eigen::MatrixXd::Identity(p, p)));
  made.logScale = 2.0 * (r.diagonal().array().abs() * lengths.array()).log().sum();
  return made;
}

/// Twice the inverse of a Hessian; along directions in which it does not curve upwards nothing is known and nothing is added.
Eigen::MatrixXd covarianceFrom(const Eigen::MatrixXd& hessian) {
  const Eigen::VectorXd scale = hessian.diagonal().cwiseAbs().cwiseMax(1e-300).cwiseSqrt().cwiseInverse();
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> eigen(scale.asDiagonal() * hessian * scale.asDiagonal());
  Eigen::VectorXd inverse = eigen.eigenvalues();
  for (double& value : inverse) value = value > 1e-8 ? 2.0 / value : 0.0;
  return scale.asDiagonal() * eigen.eigenvectors() * inverse.asDiagonal() * eigen.eigenvectors().transpose() * scale.asDiagonal();
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
  const int rows = fixed.rows(), freedom = rows - fixed.columns();
  if (freedom < 1) return none(Reason::fewAnswers);
  std::string about;
  const auto basis = orthonormal(fixed, about);
  if (!basis) return none(Reason::confounded, about);

  // The model of what least squares leave, in units of its spread.
  const Eigen::Map<const Eigen::VectorXd> y(response.data(), rows);
  const Eigen::VectorXd plain = basis->q.transpose() * y;
  Eigen::VectorXd left = y - basis->q * plain;
  const double unit = left.norm() / std::sqrt(static_cast<double>(freedom));
  if (left.squaredNorm() <= 1e-22 * y.squaredNorm() || !(unit > 1e-150)) return none(Reason::noSpread);
  left /= unit;

  RemlFit fit;
  fit.columns = fixed.names();
  std::vector<const Factor*> factors;
  for (const RandomTerm& term : random) {
    fit.terms.push_back({term.name, 0.0, TermState::estimated, std::vector<double>(static_cast<std::size_t>(term.factor.levels), 0.0)});
    factors.push_back(&term.factor);
  }
  std::optional<PenalisedSquares> model(std::in_place, basis->q, factors, left);
  const auto kept = [&] {
    std::vector<std::size_t> terms;
    for (std::size_t k = 0; k < fit.terms.size(); ++k)
      if (fit.terms[k].state == TermState::estimated) terms.push_back(k);
    return terms;
  };
  const auto rebuild = [&] {
    factors.clear();
    for (std::size_t k : kept()) factors.push_back(&random[k].factor);
    model.emplace(basis->q, factors, left);
  };
  const std::vector<bool> lost = model->confounded();
  for (std::size_t k = 0; k < lost.size(); ++k)
    if (lost[k]) fit.terms[k].state = TermState::confounded;
  if (factors.size() != kept().size()) rebuild();

  Ratios ratios{Eigen::VectorXd(0), {}, false, Eigen::MatrixXd(0, 0)};
  while (!factors.empty()) {
    Eigen::VectorXd perLevel(static_cast<Eigen::Index>(factors.size()));
    for (std::size_t k = 0; k < factors.size(); ++k) perLevel[static_cast<Eigen::Index>(k)] = static_cast<double>(rows) / static_cast<double>(std::set<int>(factors[k]->of.begin(), factors[k]->of.end()).size());
    const auto found = leastCriterion(*model, perLevel);
    if (!found) return none(Reason::noConvergence);
    if (found->isEndless) return none(Reason::noSpread);
    ratios = *found;
    const auto terms = kept();
    for (std::size_t k = 0; k < terms.size(); ++k)
      if (ratios.isZero[k]) fit.terms[terms[k]].state = TermState::zero, fit.singular = true;
    if (kept().size() == terms.size()) break;
    rebuild();
    ratios = {Eigen::VectorXd(0), {}, false, Eigen::MatrixXd(0, 0)};
  }

  const MixedPoint point = model->at(ratios.at, true);
  const double residual = point.squares / freedom;
  if (!(residual > 1e-12) || !std::isfinite(point.logDeterminants)) return none(Reason::noSpread);
  fit.residual = residual * unit * unit;
  fit.criterion = model->criterion(point) + basis->logScale + 2.0 * freedom * std::log(unit);
  fit.fixed = basis->back * (plain + unit * point.fixed);
  const Eigen::Index p = fit.fixed.size(), terms = ratios.at.size();
  const Eigen::MatrixXd unscaled = point.information.llt().solve(Eigen::MatrixXd::Identity(p, p));
  const auto back = [&](const Eigen::MatrixXd& in) { return Eigen::MatrixXd(basis->back * in * basis->back.transpose()); };
  fit.covariance = fit.residual * back(unscaled);

  const auto effects = model->effects(point);
  const auto names = kept();
  Eigen::MatrixXd hessian(terms + 1, terms + 1);
  hessian.topLeftCorner(terms, terms) = ratios.curvature;
  for (Eigen::Index k = 0; k < terms; ++k) {
    TermVariance& term = fit.terms[names[static_cast<std::size_t>(k)]];
    term.variance = ratios.at[k] * fit.residual;
    for (std::size_t i = 0; i < term.effects.size(); ++i) term.effects[i] = unit * effects[static_cast<std::size_t>(k)][i];
    hessian(k, terms) = hessian(terms, k) = -point.slopeOfSquares[k] / (residual * fit.residual);
    const Eigen::MatrixXd crossing = point.crossings[static_cast<std::size_t>(k)] * unscaled;
    fit.moves.push_back(fit.residual * back(crossing.transpose() * crossing));
  }
  hessian(terms, terms) = freedom / (fit.residual * fit.residual);
  fit.moves.push_back(fit.covariance / fit.residual);
  fit.parameterCovariance = covarianceFrom(hessian);
  return {std::move(fit), std::nullopt, {}};
}

}  // namespace oddglass::stats
