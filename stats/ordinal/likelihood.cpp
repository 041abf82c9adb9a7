#include "stats/ordinal/likelihood.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>

namespace oddglass::stats {
namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

}  // namespace

/// The log of a group's joint density of answers and u, its derivatives by u, and the gradients of the first three by the parameters.
struct OrdinalLikelihood::Sums {
  double value = 0.0;
  double slope = 0.0;  ///< by u
  double depth = 1.0;  ///< minus the second derivative by u
  double depthByU = 0.0;
  Eigen::VectorXd byParameters, slopeBy, depthBy;
};

OrdinalLikelihood::OrdinalLikelihood(const Eigen::MatrixXd& x, const Factor& group, const std::vector<int>& category, int categories, Link link, int points)
    : x_(x), groups_(static_cast<std::size_t>(group.levels)), modes_(groups_.size(), 0.0), categories_(categories), link_(link), rule_(gaussHermite(points)) {
  std::vector<Eigen::Index> order(category.size());
  std::iota(order.begin(), order.end(), 0);
  const auto compare = [&](Eigen::Index one, Eigen::Index other) {
    const auto a = static_cast<std::size_t>(one), b = static_cast<std::size_t>(other);
    if (group.of[a] != group.of[b]) return group.of[a] < group.of[b] ? -1 : 1;
    if (category[a] != category[b]) return category[a] < category[b] ? -1 : 1;
    for (Eigen::Index k = 0; k < x.cols(); ++k)
      if (x(one, k) != x(other, k)) return x(one, k) < x(other, k) ? -1 : 1;
    return 0;
  };
  std::ranges::sort(order, [&](Eigen::Index one, Eigen::Index other) { return compare(one, other) < 0; });
  for (std::size_t i = 0; i < order.size(); ++i) {
    const auto row = static_cast<std::size_t>(order[i]);
    auto& cells = groups_[static_cast<std::size_t>(group.of[row])];
    if (i > 0 && compare(order[i - 1], order[i]) == 0) cells.back().count += 1.0;
    else cells.push_back({order[i], category[row], 1.0});
  }
}

OrdinalLikelihood::Sums OrdinalLikelihood::sumsAt(const std::vector<Cell>& cells, const Eigen::VectorXd& parameters, const Eigen::VectorXd& shift, double u,
                                                  bool withGradients) const {
  const double sd = parameters[parameters.size() - 1];
  const Eigen::Index last = parameters.size() - 1, effects = x_.cols();
  Sums sums;
  sums.value = -u * u / 2.0;
  sums.slope = -u;
  if (withGradients) sums.byParameters = sums.slopeBy = sums.depthBy = Eigen::VectorXd::Zero(parameters.size());
  for (const Cell& cell : cells) {
    const double middle = shift[cell.row] + sd * u, n = cell.count;
    const bool hasA = cell.category < thresholds(), hasB = cell.category > 0;
    const Slice slice = sliceOf(link_, hasA ? parameters[cell.category] - middle : endless, hasB ? parameters[cell.category - 1] - middle : -endless);
    sums.value += n * slice.log;
    sums.slope -= n * sd * slice.slope;
    sums.depth -= n * sd * sd * slice.bend;
    const double bends = slice.bendByA + slice.bendByB;
    sums.depthByU += n * sd * sd * sd * bends;
    if (!withGradients) continue;
    if (hasA) {
      sums.byParameters[cell.category] += n * slice.byA;
      sums.slopeBy[cell.category] -= n * sd * slice.slopeByA;
      sums.depthBy[cell.category] -= n * sd * sd * slice.bendByA;
    }
    if (hasB) {
      sums.byParameters[cell.category - 1] += n * slice.byB;
      sums.slopeBy[cell.category - 1] -= n * sd * slice.slopeByB;
      sums.depthBy[cell.category - 1] -= n * sd * sd * slice.bendByB;
    }
    const auto x = x_.row(cell.row).transpose();
    sums.byParameters.segment(thresholds(), effects) -= n * slice.slope * x;
    sums.slopeBy.segment(thresholds(), effects) += n * sd * slice.bend * x;
    sums.depthBy.segment(thresholds(), effects) += n * sd * sd * bends * x;
    sums.byParameters[last] -= n * u * slice.slope;
    sums.slopeBy[last] += n * (sd * u * slice.bend - slice.slope);
    sums.depthBy[last] += n * sd * (sd * u * bends - 2.0 * slice.bend);
  }
  return sums;
}

double OrdinalLikelihood::groupAt(std::size_t group, const Eigen::VectorXd& parameters, const Eigen::VectorXd& shift, Eigen::VectorXd& gradient) const {
  const std::vector<Cell>& cells = groups_[group];
  // The mode: the density is log-concave, so damped Newton steps reach it.
  double& u = modes_[group];
  Sums here = sumsAt(cells, parameters, shift, u, false);
  if (!std::isfinite(here.value) || !std::isfinite(here.slope)) here = sumsAt(cells, parameters, shift, u = 0.0, false);
  for (int round = 0; round < 100; ++round) {
    double step = here.slope / here.depth;
    if (std::abs(step) < 1e-13 * (1.0 + std::abs(u))) break;
    Sums next = sumsAt(cells, parameters, shift, u + step, false);
    while (!(next.value >= here.value) && std::abs(step) > 1e-13) next = sumsAt(cells, parameters, shift, u + (step /= 2.0), false);
    u += step;
    here = std::move(next);
  }
  here = sumsAt(cells, parameters, shift, u, true);
  const Eigen::VectorXd modeBy = here.slopeBy / here.depth, depthBy = here.depthBy + here.depthByU * modeBy;
  const double width = std::numbers::sqrt2 / std::sqrt(here.depth);
  std::vector<double> logs;
  std::vector<Eigen::VectorXd> slopes;
  for (std::size_t q = 0; q < rule_.points.size(); ++q) {
    const double z = rule_.points[q], away = z * width;
    const Sums there = rule_.points.size() == 1 ? here : sumsAt(cells, parameters, shift, u + away, true);
    logs.push_back(std::log(rule_.weights[q]) + z * z + there.value);
    slopes.push_back(there.byParameters + there.slope * (modeBy - away / (2.0 * here.depth) * depthBy));
  }
  const double top = *std::ranges::max_element(logs);
  double sum = 0.0;
  for (double value : logs) sum += std::exp(value - top);
  for (std::size_t q = 0; q < logs.size(); ++q) gradient += std::exp(logs[q] - top) / sum * slopes[q];
  gradient -= depthBy / (2.0 * here.depth);
  return top + std::log(sum) - std::log(std::numbers::pi * here.depth) / 2.0;
}

double OrdinalLikelihood::at(const Eigen::VectorXd& parameters, Eigen::VectorXd& gradient) const {
  gradient = Eigen::VectorXd::Zero(parameters.size());
  for (int j = 1; j < thresholds(); ++j)
    if (!(parameters[j] > parameters[j - 1])) return -endless;
  const Eigen::VectorXd shift = x_ * parameters.segment(thresholds(), x_.cols());
  double sum = 0.0;
  for (std::size_t group = 0; group < groups_.size(); ++group)
    if (!groups_[group].empty()) sum += groupAt(group, parameters, shift, gradient);
  return sum;
}

}  // namespace oddglass::stats
