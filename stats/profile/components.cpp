#include "stats/profile/components.h"

#include "stats/check.h"

#include <Eigen/SVD>

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

/// The descriptors that take part, and the panel's means in them: each centred and divided by its scale.
struct Centred {
  std::vector<Eigen::Index> descriptors;
  std::vector<PanelMeans> means;
  Eigen::MatrixXd table;   ///< samples by descriptors
  Eigen::VectorXd scale;
  double size = 0.0;       ///< of the numbers before centring, in the scale of the table
};

Centred centred(const ProfileCells& cells, bool isScaled, std::vector<std::optional<Reason>>& leftOut) {
  Centred kept;
  std::vector<Eigen::VectorXd> columns;
  std::vector<double> scales;
  for (std::size_t d = 0; d < cells.descriptors.size(); ++d) {
    PanelMeans means = panelMeans(cells.descriptors[d], cells.tasters, cells.samples);
    leftOut.push_back(means.why);
    if (means.why) continue;
    const double size = means.samples->cwiseAbs().maxCoeff();
    Eigen::VectorXd column = means.samples->array() - means.samples->mean();
    if (column.cwiseAbs().maxCoeff() <= 1e-13 * size) column.setZero();
    const double sd = column.norm() / std::sqrt(cells.samples - 1.0);
    if (isScaled && !(sd > 0.0)) {
      leftOut.back() = Reason::noSpread;
      continue;
    }
    scales.push_back(isScaled ? sd : 1.0);
    columns.push_back(column / scales.back());
    kept.size = std::max(kept.size, size / scales.back());
    kept.descriptors.push_back(static_cast<Eigen::Index>(d));
    kept.means.push_back(std::move(means));
  }
  kept.table.resize(cells.samples, static_cast<Eigen::Index>(columns.size()));
  kept.scale = Eigen::Map<const Eigen::VectorXd>(scales.data(), static_cast<Eigen::Index>(scales.size()));
  for (std::size_t d = 0; d < columns.size(); ++d) kept.table.col(static_cast<Eigen::Index>(d)) = columns[d];
  return kept;
}

/// The axes with the loading of largest size positive; among loadings of one size the first.
void sign(Eigen::MatrixXd& scores, Eigen::MatrixXd& loadings) {
  for (Eigen::Index axis = 0; axis < loadings.cols(); ++axis) {
    const double largest = loadings.col(axis).cwiseAbs().maxCoeff();
    Eigen::Index at = 0;
    while (std::abs(loadings(at, axis)) < (1.0 - 1e-9) * largest) ++at;
    if (loadings(at, axis) > 0.0) continue;
    loadings.col(axis) *= -1.0;
    scores.col(axis) *= -1.0;
  }
}

/// The tasters' own tables, less their levels, on the first two axes.
std::vector<SampleEllipse> ellipses(const ProfileCells& cells, const Centred& kept, const Eigen::MatrixXd& loadings, double level) {
  std::vector<TasterTable> tables;
  for (Eigen::Index d : kept.descriptors) tables.push_back(tasterTable(cells.descriptors[static_cast<std::size_t>(d)], cells.tasters, cells.samples));
  const Eigen::Index axes = std::min<Eigen::Index>(2, loadings.cols());
  std::vector<SampleEllipse> all;
  for (int sample = 0; sample < cells.samples; ++sample) {
    std::vector<Eigen::Vector2d> points;
    for (int taster = 0; taster < cells.tasters; ++taster) {
      Eigen::Vector2d point = Eigen::Vector2d::Zero();
      bool isWhole = true;
      for (std::size_t d = 0; isWhole && d < tables.size(); ++d) {
        isWhole = tables[d].has(taster, sample);
        const auto at = static_cast<Eigen::Index>(d);
        point.head(axes) += (tables[d].mean(taster, sample) - kept.means[d].level(taster)) / kept.scale(at) * loadings.row(at).head(axes).transpose();
      }
      if (isWhole) points.push_back(point);
    }
    all.push_back(ellipseOf(sample, std::move(points), level, kept.size));
    if (axes < 2 && !all.back().why) all.back().why = Reason::noSpread;
  }
  return all;
}

}  // namespace

ProfileComponents componentsOf(const ProfileCells& cells, bool isScaled, double level) {
  requireOpenShare("level", level);
  ProfileComponents found;
  const Centred kept = centred(cells, isScaled, found.leftOut);
  if (kept.descriptors.empty()) {
    found.why = found.leftOut.empty() ? Reason::fewAnswers : *found.leftOut.front();
    return found;
  }
  const Eigen::BDCSVD<Eigen::MatrixXd> parts(kept.table, Eigen::ComputeThinU | Eigen::ComputeThinV);
  const Eigen::VectorXd& values = parts.singularValues();
  const double nothing = std::max(1e-12 * values(0), 1e-13 * kept.size);
  Eigen::Index axes = 0;
  while (axes < values.size() && axes < cells.samples - 1 && values(axes) > nothing) ++axes;
  if (axes == 0) {
    found.why = Reason::noSpread;
    return found;
  }
  Eigen::MatrixXd loadings = parts.matrixV().leftCols(axes);
  found.samples = parts.matrixU().leftCols(axes) * values.head(axes).asDiagonal();
  for (Eigen::Index d = 0; d < kept.table.cols(); ++d)
    if (kept.table.col(d).isZero(0.0)) loadings.row(d).setZero();
  sign(found.samples, loadings);
  const double whole = values.head(axes).squaredNorm();
  for (Eigen::Index axis = 0; axis < axes; ++axis) {
    found.variances.push_back(values(axis) * values(axis) / (cells.samples - 1.0));
    found.shares.push_back(values(axis) * values(axis) / whole);
  }
  found.descriptors = Eigen::MatrixXd::Zero(static_cast<Eigen::Index>(cells.descriptors.size()), axes);
  for (std::size_t d = 0; d < kept.descriptors.size(); ++d) found.descriptors.row(kept.descriptors[d]) = loadings.row(static_cast<Eigen::Index>(d));
  found.ellipses = ellipses(cells, kept, loadings, level);
  return found;
}

}  // namespace oddglass::stats
