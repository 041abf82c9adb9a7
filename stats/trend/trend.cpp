#include "stats/trend/trend.h"

#include "stats/check.h"
#include "stats/trend/incomplete.h"
#include "stats/trend/line.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

/// Session means over the tasters; where visits are missing, the session effects of visit ~ taster + session. Empty where sessions share no taster.
std::optional<std::vector<double>> sessionMeans(const Visits& visits, const std::optional<Additive>& fit) {
  if (!fit || fit->parts != 1) return std::nullopt;
  double level = 0.0;
  for (std::size_t t = 0; t < fit->row.size(); ++t)
    if (fit->part[t] >= 0) level += fit->row[t] / visits.tasters;
  std::vector<double> means = fit->column;
  for (double& mean : means) mean += level;
  return means;
}

Estimated slopeOfMeans(const Visits& visits, const std::vector<double>& means, double level, double& residual) {
  const Eigen::Index n = visits.sessions();
  if (n < 2) return nothing(Reason::oneSession);
  const Eigen::VectorXd age = Eigen::Map<const Eigen::VectorXd>(visits.age.data(), n);
  if (!(age.maxCoeff() > age.minCoeff())) return nothing(Reason::oneAge);
  const double half = (age.maxCoeff() - age.minCoeff()) / 2.0;
  Eigen::MatrixXd x(n, 2);
  x << Eigen::VectorXd::Ones(n), (age.array() - age.mean()) / half;
  const auto line = leastSquares(x, Eigen::Map<const Eigen::VectorXd>(means.data(), n), visits.scale);
  if (!line) return nothing(Reason::oneAge);
  const double slope = line->coefficients(1) / half;
  if (line->df < 1) return alone(slope, Reason::fewSessions);
  residual = line->residualSquares / line->df;
  return byStudent(slope, std::sqrt(residual * line->unscaled(1, 1)) / half, line->df, level);
}

/// Components of a complete table: `beside` is the variance of session means beside the line.
TimeVariance varianceOf(const Visits& visits, const Additive& fit, std::optional<double> beside) {
  TimeVariance variance;
  const double tasters = visits.tasters, sessions = visits.sessions();
  const auto notBelow = [&](double value) {
    variance.isAtZero = variance.isAtZero || value <= 0.0;
    return std::max(0.0, value);
  };
  if (fit.residualDf < 1) {
    variance.why = visits.tasters < 2 ? Reason::oneTaster : Reason::oneSession;
    if (visits.tasters < 2 && beside) variance.session = *beside;
    return variance;
  }
  const double residual = fit.residualSquares / fit.residualDf;
  std::vector<double> levels;
  for (std::size_t t = 0; t < fit.row.size(); ++t)
    if (fit.part[t] >= 0) levels.push_back(fit.row[t]);
  const double spread = *meanAndSpread(levels, visits.scale).sd;
  variance.residual = residual;
  variance.taster = notBelow(spread * spread - residual / sessions);
  if (beside) variance.session = notBelow(*beside - residual / tasters);
  else variance.why = Reason::fewSessions;
  return variance;
}

}  // namespace

Trend trend(const TimeRows& rows, double level) {
  requireOpenShare("level", level);
  const Visits visits = visitsOf(rows);
  Trend found;
  found.isConfounded = !rows.hasControl();
  found.sessions = visits.sessions();
  found.tasters = visits.tasters;
  if (visits.sessions() == 0) {
    found.slope = found.changeSinceFirst = nothing(Reason::emptyCell);
    found.variance.why = found.shape.why = found.peak.why = Reason::emptyCell;
    return found;
  }
  const auto fit = additive(visits.cells, visits.tasterLevels, visits.sessions());
  const auto means = sessionMeans(visits, fit);
  if (visits.isComplete() && means) {
    double beside = -1.0;
    found.slope = slopeOfMeans(visits, *means, level, beside);
    found.variance = varianceOf(visits, *fit, beside >= 0.0 ? std::optional(beside) : std::nullopt);
  } else {
    found.fit = TrendFit::reml;
    fitIncomplete(visits, level, found.slope, found.variance);
  }
  found.peak.why = Reason::notGiven;
  if (means) {
    found.shape = chooseShape(visits.age, *means, visits.scale);
    if (found.shape.chosen == Shape::quadratic) found.peak = peakOf(visits.age, *means, level, visits.scale);
  } else {
    found.shape.why = fit ? Reason::notConnected : Reason::tooLarge;
  }
  const std::vector<double> change = visits.sessions() < 2 ? std::vector<double>{} : changes(visits, 0, visits.sessions() - 1);
  found.satInBoth = static_cast<int>(change.size());
  found.changeSinceFirst = visits.sessions() < 2 ? nothing(Reason::oneSession) : meanOf(change, level, Reason::fewTasters, visits.scale);
  return found;
}

Alike lastTwoAlike(const TimeRows& rows, double limit, double alpha) {
  const Visits visits = visitsOf(rows);
  const int last = visits.sessions() - 1;
  Alike found = pairedAlike(last < 1 ? std::vector<double>{} : changes(visits, last - 1, last), limit, alpha);
  if (last < 1) found.why = Reason::oneSession;
  return found;
}

}  // namespace oddglass::stats
