#include "stats/checks/correspondence.h"

#include "stats/error.h"

#include <Eigen/SVD>

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

constexpr std::size_t mostLines = 300;
/// Singular values below this are rounding.
constexpr double leastSingular = 1e-12;

void requireCounts(const std::vector<std::vector<double>>& counts) {
  if (counts.size() > mostLines) throw BadInput("sample", "must not be more than 300");
  for (const auto& row : counts) {
    if (row.size() != counts.front().size()) throw BadInput("counts", "must have rows of one length");
    if (row.size() > mostLines) throw BadInput("descriptor", "must not be more than 300");
    for (double count : row)
      if (!(count >= 0.0 && count <= 1e12)) throw BadInput("counts", "must be from 0 to 1e12");
  }
}

std::vector<std::size_t> withCounts(const Eigen::VectorXd& sums) {
  std::vector<std::size_t> kept;
  for (Eigen::Index i = 0; i < sums.size(); ++i)
    if (sums[i] > 0.0) kept.push_back(static_cast<std::size_t>(i));
  return kept;
}

/// 1 or -1: the farthest column of this axis comes to lie on the positive side.
double signOf(const Eigen::VectorXd& axis) {
  const double farthest = axis.cwiseAbs().maxCoeff();
  for (double each : axis)
    if (std::abs(each) >= farthest * (1.0 - 1e-9)) return each < 0.0 ? -1.0 : 1.0;
  return 1.0;
}

void place(const Eigen::MatrixXd& coordinates, const std::vector<std::size_t>& kept, std::vector<std::optional<std::vector<double>>>& lines) {
  for (std::size_t i = 0; i < kept.size(); ++i) {
    const Eigen::VectorXd line = coordinates.row(static_cast<Eigen::Index>(i)).array() + 0.0;  // no negative zero
    lines[kept[i]] = std::vector<double>(line.begin(), line.end());
  }
}

}  // namespace

Correspondence correspondence(const std::vector<std::vector<double>>& counts) {
  requireCounts(counts);
  const std::size_t height = counts.size(), width = counts.empty() ? 0 : counts.front().size();
  Correspondence map{{}, std::vector<std::optional<std::vector<double>>>(height), std::vector<std::optional<std::vector<double>>>(width), {}};
  Eigen::MatrixXd all(static_cast<Eigen::Index>(height), static_cast<Eigen::Index>(width));
  for (std::size_t i = 0; i < height; ++i)
    for (std::size_t j = 0; j < width; ++j) all(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) = counts[i][j];
  const auto rows = withCounts(all.rowwise().sum()), columns = withCounts(all.colwise().sum());
  if (rows.size() < 2 || columns.size() < 2) {
    map.why = Reason::fewSamples;
    return map;
  }
  const Eigen::MatrixXd kept = all(rows, columns) / all.sum();
  const Eigen::VectorXd r = kept.rowwise().sum(), c = kept.colwise().sum();
  const Eigen::VectorXd overR = r.cwiseSqrt().cwiseInverse(), overC = c.cwiseSqrt().cwiseInverse();
  const Eigen::MatrixXd residuals = overR.asDiagonal() * (kept - r * c.transpose()) * overC.asDiagonal();
  const Eigen::JacobiSVD<Eigen::MatrixXd> parts(residuals, Eigen::ComputeThinU | Eigen::ComputeThinV);
  const Eigen::Index axes = std::min(residuals.rows(), residuals.cols()) - 1;
  Eigen::VectorXd singular = parts.singularValues().head(axes);
  for (double& each : singular) each = each < leastSingular ? 0.0 : each;
  if (singular[0] == 0.0) {
    map.why = Reason::noSpread;
    return map;
  }
  Eigen::MatrixXd ofRows = overR.asDiagonal() * parts.matrixU().leftCols(axes) * singular.asDiagonal();
  Eigen::MatrixXd ofColumns = overC.asDiagonal() * parts.matrixV().leftCols(axes) * singular.asDiagonal();
  for (Eigen::Index axis = 0; axis < axes; ++axis) {
    const double sign = signOf(ofColumns.col(axis));
    ofRows.col(axis) *= sign;
    ofColumns.col(axis) *= sign;
    map.inertia.push_back(singular[axis] * singular[axis]);
  }
  place(ofRows, rows, map.rows);
  place(ofColumns, columns, map.columns);
  return map;
}

}  // namespace oddglass::stats
