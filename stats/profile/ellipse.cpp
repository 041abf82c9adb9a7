#include "stats/profile/components.h"

#include "stats/estimated.h"

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace oddglass::stats {
namespace {

constexpr std::size_t fewestForAnEllipse = 5;

}  // namespace

SampleEllipse ellipseOf(int sample, std::vector<Eigen::Vector2d> points, double level, double scale) {
  SampleEllipse found;
  found.sample = sample;
  found.points = std::move(points);
  if (found.points.empty()) {
    found.why = Reason::emptyCell;
    return found;
  }
  const double n = static_cast<double>(found.points.size());
  Eigen::Vector2d center = Eigen::Vector2d::Zero();
  for (const Eigen::Vector2d& point : found.points) center += point / n;
  found.center = center;
  if (found.points.size() < fewestForAnEllipse) {
    found.why = Reason::fewTasters;
    return found;
  }
  Eigen::Matrix2d covariance = Eigen::Matrix2d::Zero();
  for (const Eigen::Vector2d& point : found.points) {
    covariance += (point - center) * (point - center).transpose() / (n - 1.0);
    scale = std::max(scale, point.cwiseAbs().maxCoeff());
  }
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> axes(covariance);
  // Rounding leaves a little of the longer axis in the shorter one.
  if (!(axes.eigenvalues()(0) > std::max(std::pow(1e-12 * scale, 2), 1e-14 * axes.eigenvalues()(1)))) {
    found.why = Reason::noSpread;
    return found;
  }
  const double factor = 2.0 * (n - 1.0) / (n * (n - 2.0)) * fisherPoint(1.0 - level, 2.0, n - 2.0);
  found.semiAxes = (axes.eigenvalues().reverse() * factor).cwiseSqrt();
  Eigen::Vector2d longer = axes.eigenvectors().col(1);
  if (longer.x() < 0.0 || (longer.x() == 0.0 && longer.y() < 0.0)) longer = -longer;
  found.angle = std::atan2(longer.y(), longer.x()) * 180.0 / std::numbers::pi;
  if (*found.angle < -90.0 + 1e-9) *found.angle += 180.0;
  return found;
}

}  // namespace oddglass::stats
