#include "stats/ordinal/ordinal.h"

#include "stats/error.h"
#include "stats/ordinal/climb.h"

#include <Eigen/QR>

#include <algorithm>
#include <cmath>
#include <set>

namespace oddglass::stats {
namespace {

Ordinal unfitted(Reason why, std::string about = {}) { return {std::nullopt, why, std::move(about)}; }

/// The first column that depends on the constant and those before it; the number of columns when none does.
Eigen::Index firstDependent(const Eigen::MatrixXd& x) {
  Eigen::MatrixXd all(x.rows(), x.cols() + 1);
  all << Eigen::VectorXd::Ones(x.rows()), x;
  if (all.rows() < all.cols()) return x.cols() - 1;
  for (Eigen::Index k = 0; k < all.cols(); ++k) all.col(k) /= std::max(all.col(k).norm(), 1e-300);
  const Eigen::HouseholderQR<Eigen::MatrixXd> qr(all);
  for (Eigen::Index k = 1; k < all.cols(); ++k)
    if (std::abs(qr.matrixQR()(k, k)) < 1e-7) return k - 1;
  return x.cols();
}

/// Thresholds from the shares of the categories, no effects.
Eigen::VectorXd startOf(const std::vector<int>& category, int categories, Eigen::Index parameters, Link link) {
  std::vector<double> counts(static_cast<std::size_t>(categories), 0.0);
  for (int each : category) counts[static_cast<std::size_t>(each)] += 1.0;
  Eigen::VectorXd start = Eigen::VectorXd::Zero(parameters);
  double below = 0.0;
  for (int j = 0; j + 1 < categories; ++j) {
    below += counts[static_cast<std::size_t>(j)];
    const double share = below / static_cast<double>(category.size());
    start[j] = std::log(share / (1.0 - share)) * (link == Link::logit ? 1.0 : 0.6);
  }
  return start;
}

}  // namespace

Ordinal fitOrdinal(const FixedEffects& fixed, const std::optional<Factor>& group, const std::vector<int>& category, Link link, int points) {
  if (static_cast<int>(category.size()) != fixed.rows()) throw BadInput("category", "must have as many rows as the fixed effects");
  if (group && group->of.size() != category.size()) throw BadInput("taster", "must have as many rows as the answers");
  if (group)
    for (int level : group->of)
      if (level < 0 || level >= group->levels) throw BadInput("taster", "holds a label that is not among its levels");
  gaussHermite(points);  // refuses a number of points that cannot be

  OrdinalFit fit;
  const std::set<int> used(category.begin(), category.end());
  fit.categories.assign(used.begin(), used.end());
  if (fit.categories.size() < 2) return unfitted(Reason::noSpread);
  if (group && std::set<int>(group->of.begin(), group->of.end()).size() < 2) return unfitted(Reason::oneTaster);
  if (const Eigen::Index at = firstDependent(fixed.matrix()); at < fixed.columns()) return unfitted(Reason::confounded, fixed.names()[static_cast<std::size_t>(at)]);
  std::vector<int> numbered;
  for (int each : category) numbered.push_back(static_cast<int>(std::ranges::lower_bound(fit.categories, each) - fit.categories.begin()));
  const int categories = static_cast<int>(fit.categories.size()), thresholds = categories - 1;

  const Factor all{std::vector<int>(category.size(), 0), 1};
  const OrdinalLikelihood likelihood(fixed.matrix(), group ? *group : all, numbered, categories, link, points);
  const Eigen::VectorXd start = startOf(numbered, categories, likelihood.parameters(), link);
  Climb top = climb(likelihood, start, false);
  if (!top.isSettled) return unfitted(top.isEndless ? Reason::separated : Reason::noConvergence);
  if (group) {
    Eigen::VectorXd spread = top.at;
    spread[spread.size() - 1] = 1.0;
    const Climb random = climb(likelihood, spread, true);
    const double sd = random.at[spread.size() - 1];
    // No variance at all is the better account, or as good a one: the search has come down to it.
    fit.singular = random.value <= top.value + 1e-9 || sd < 1e-4;
    if (!fit.singular && !random.isSettled) return unfitted(random.isEndless ? Reason::separated : Reason::noConvergence);
    if (!fit.singular) top = random, fit.groupSd = sd;
  }
  fit.thresholds = top.at.head(thresholds);
  fit.fixed = top.at.segment(thresholds, fixed.columns());
  fit.covariance = top.covariance.topLeftCorner(thresholds + fixed.columns(), thresholds + fixed.columns());
  fit.logLikelihood = top.value;
  return {std::move(fit), std::nullopt, {}};
}

}  // namespace oddglass::stats
