#include "stats/orders/order_effects.h"

#include "stats/check.h"
#include "stats/panel/cells.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace oddglass::stats {
namespace {

constexpr int mostColumns = 800;

/// One row of the design: the columns that are not 0, and what they hold.
using Row = std::vector<std::pair<int, double>>;

/// Numbers flights, and samples or (with repeats) taster-by-sample cells, one column each.
struct Nuisance {
  std::vector<Row> rows;
  int columns = 0;
};

Nuisance nuisanceOf(const ScoreRows& rows) {
  std::map<std::tuple<int, int, int>, int> flights;
  std::map<std::pair<int, int>, int> cells, samples;
  bool hasRepeats = false;
  for (const Cell& cell : cellsOf(rows.response, rows.taster, rows.sample)) hasRepeats = hasRepeats || cell.count > 1;
  Nuisance found;
  std::vector<int> second;
  for (std::size_t i = 0; i < rows.response.size(); ++i) {
    const auto flight = flights.try_emplace({rows.taster.of[i], rows.session ? rows.session->of[i] : 0, rows.round ? rows.round->of[i] : 0}, static_cast<int>(flights.size())).first->second;
    second.push_back(cells.try_emplace({hasRepeats ? rows.taster.of[i] : 0, rows.sample.of[i]}, static_cast<int>(cells.size())).first->second);
    found.rows.push_back({{flight, 1.0}});
  }
  for (std::size_t i = 0; i < second.size(); ++i) found.rows[i].emplace_back(static_cast<int>(flights.size()) + second[i], 1.0);
  found.columns = static_cast<int>(flights.size() + cells.size());
  return found;
}

/// A least-squares fit in which only the last `wanted` columns matter; the others may depend on each other.
struct Fit {
  Eigen::VectorXd effects;
  Eigen::MatrixXd unscaled;
  double residual = 0.0;  ///< variance; exactly 0 where only rounding is left
  double df = 0.0;
  std::optional<Reason> why;
};

Fit fit(const std::vector<Row>& design, int columns, int wanted, const std::vector<double>& y) {
  Fit found;
  if (columns > mostColumns) {
    found.why = Reason::tooLarge;
    return found;
  }
  double scale = 0.0, mean = 0.0;
  for (double value : y) scale = std::max(scale, std::fabs(value)), mean += value / static_cast<double>(y.size());
  Eigen::MatrixXd normal = Eigen::MatrixXd::Zero(columns, columns);
  Eigen::VectorXd right = Eigen::VectorXd::Zero(columns);
  for (std::size_t i = 0; i < design.size(); ++i)
    for (const auto& [c, v] : design[i]) {
      right(c) += v * (y[i] - mean);
      for (const auto& [d, w] : design[i]) normal(c, d) += v * w;
    }
  Eigen::CompleteOrthogonalDecomposition<Eigen::MatrixXd> parts;
  parts.setThreshold(1e-10);
  parts.compute(normal);
  const Eigen::MatrixXd inverse = parts.pseudoInverse();
  const Eigen::MatrixXd reached = (inverse.bottomRows(wanted) * normal);
  Eigen::MatrixXd unit = Eigen::MatrixXd::Zero(wanted, columns);
  unit.rightCols(wanted).setIdentity();
  if ((reached - unit).cwiseAbs().maxCoeff() > 1e-6) {
    found.why = Reason::emptyCell;
    return found;
  }
  const Eigen::VectorXd all = inverse * right;
  found.effects = all.tail(wanted);
  found.unscaled = inverse.bottomRightCorner(wanted, wanted);
  found.df = static_cast<double>(design.size()) - static_cast<double>(parts.rank());
  double squares = 0.0;
  for (std::size_t i = 0; i < design.size(); ++i) {
    double rest = y[i] - mean;
    for (const auto& [c, v] : design[i]) rest -= v * all(c);
    squares += rest * rest;
  }
  if (found.df < 1.0) found.why = Reason::fewTasters;
  else if (squares <= 1e-22 * scale * scale * static_cast<double>(y.size())) found.why = Reason::noSpread;
  else found.residual = squares / found.df;
  return found;
}

Estimated effectOf(const Fit& fit, const Eigen::VectorXd& contrast, double level) {
  if (fit.effects.size() == 0) return nothing(*fit.why);
  const double estimate = contrast.dot(fit.effects);
  if (fit.why) return alone(estimate, *fit.why);
  return byStudent(estimate, std::sqrt(fit.residual * contrast.dot(fit.unscaled * contrast)), fit.df, level);
}

OrderEffects::CarryOver carryOver(const ScoreRows& rows, const Nuisance& nuisance, const std::vector<int>& previous, double level) {
  OrderEffects::CarryOver found;
  if (previous.empty()) {
    found.why = Reason::notGiven;
    return found;
  }
  const int places = rows.position->levels - 1, wanted = rows.sample.levels - 1;
  if (places > mostColumns || wanted > mostColumns) {
    found.why = Reason::tooLarge;
    return found;
  }
  std::vector<Row> design = nuisance.rows;
  for (std::size_t i = 0; i < design.size(); ++i) {
    if (const int place = rows.position->of[i]; place > 0) design[i].emplace_back(nuisance.columns + place - 1, 1.0);
    if (previous[i] == wanted)
      for (int c = 0; c < wanted; ++c) design[i].emplace_back(nuisance.columns + places + c, -1.0);
    else if (previous[i] >= 0) design[i].emplace_back(nuisance.columns + places + previous[i], 1.0);
  }
  const Fit model = fit(design, nuisance.columns + places + wanted, wanted, rows.response);
  found.why = model.why;
  for (int sample = 0; sample <= wanted; ++sample) {
    Eigen::VectorXd contrast = Eigen::VectorXd::Zero(wanted);
    if (sample < wanted) contrast(sample) = 1.0;
    else contrast.setConstant(-1.0);
    found.previous.push_back({sample, effectOf(model, contrast, level)});
  }
  if (model.why) return found;
  const double f = model.effects.dot(model.unscaled.ldlt().solve(model.effects)) / wanted / model.residual;
  if (!std::isfinite(f)) {
    found.why = Reason::noSpread;
    return found;
  }
  found.F = f;
  found.df1 = wanted;
  found.df2 = model.df;
  found.pValue = fisherTail(f, wanted, model.df);
  return found;
}

}  // namespace

OrderEffects orderEffects(const ScoreRows& rows, const std::vector<int>& previous, double level) {
  requireSound(rows);
  requireOpenShare("level", level);
  if (!rows.position) throw BadInput("position", "must be given");
  if (!previous.empty() && previous.size() != rows.response.size()) throw BadInput("previous", "must have as many rows as the response");
  for (int sample : previous)
    if (sample < -1 || sample >= rows.sample.levels) throw BadInput("previous", "holds a label that is not among the samples");
  const Nuisance nuisance = nuisanceOf(rows);
  std::vector<Row> design = nuisance.rows;
  for (std::size_t i = 0; i < design.size(); ++i)
    if (rows.position->of[i] == 0) design[i].emplace_back(nuisance.columns, 1.0);
  OrderEffects found;
  found.firstPosition = effectOf(fit(design, nuisance.columns + 1, 1, rows.response), Eigen::VectorXd::Ones(1), level);
  found.carryOver = carryOver(rows, nuisance, previous, level);
  return found;
}

Halo halo(const ScoreRows& rows, const std::vector<double>& second) {
  requireSound(rows);
  if (second.size() != rows.response.size()) throw BadInput("second", "must have as many rows as the response");
  double scale[2]{};
  for (std::size_t i = 0; i < second.size(); ++i) {
    if (!std::isfinite(second[i])) throw BadInput("second", "must be finite numbers");
    scale[0] = std::max(scale[0], std::fabs(rows.response[i]));
    scale[1] = std::max(scale[1], std::fabs(second[i]));
  }
  const auto refused = [](Reason why) { return Halo{{}, {}, {}, why}; };
  const std::vector<Cell> one = cellsOf(rows.response, rows.taster, rows.sample), two = cellsOf(second, rows.taster, rows.sample);
  const auto fitOne = additive(one, rows.taster.levels, rows.sample.levels), fitTwo = additive(two, rows.taster.levels, rows.sample.levels);
  if (!fitOne || !fitTwo) return refused(Reason::tooLarge);
  if (fitOne->residualDf < 2) return refused(Reason::fewTasters);
  const double n = static_cast<double>(one.size());
  if (fitOne->residualSquares <= 1e-24 * scale[0] * scale[0] * n || fitTwo->residualSquares <= 1e-24 * scale[1] * scale[1] * n) return refused(Reason::noSpread);
  double together = 0.0;
  for (std::size_t i = 0; i < one.size(); ++i) {
    const auto row = static_cast<std::size_t>(one[i].row), column = static_cast<std::size_t>(one[i].column);
    together += (one[i].mean - fitOne->row[row] - fitOne->column[column]) * (two[i].mean - fitTwo->row[row] - fitTwo->column[column]);
  }
  const double r = std::clamp(together / std::sqrt(fitOne->residualSquares) / std::sqrt(fitTwo->residualSquares), -1.0, 1.0);
  Halo found{r, {}, fitOne->residualDf - 1, {}};
  const double left = 1.0 - r * r;
  found.pValue = left > 0.0 ? std::min(1.0, 2.0 * studentTail(std::fabs(r) * std::sqrt(*found.df / left), *found.df)) : 0.0;
  return found;
}

}  // namespace oddglass::stats
