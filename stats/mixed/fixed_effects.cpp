#include "stats/mixed/fixed_effects.h"

#include "stats/error.h"

#include <Eigen/QR>

#include <cmath>

namespace oddglass::stats {

FixedEffects::FixedEffects(std::size_t rows) : matrix_(static_cast<Eigen::Index>(rows), 0) {
  if (rows == 0) throw BadInput("response", "there are no answers");
}

Columns FixedEffects::grow(int count) {
  const Columns added{columns(), count};
  matrix_.conservativeResize(Eigen::NoChange, matrix_.cols() + count);
  matrix_.rightCols(count).setZero();
  return added;
}

Columns FixedEffects::addIntercept() {
  const Columns added = grow(1);
  matrix_.col(added.first).setOnes();
  names_.push_back("(Intercept)");
  return added;
}

Columns FixedEffects::addNumber(const std::string& name, const std::vector<double>& values) {
  if (static_cast<int>(values.size()) != rows()) throw BadInput(name, "must have as many rows as the response");
  for (double value : values)
    if (!std::isfinite(value)) throw BadInput(name, "must be finite numbers");
  const Columns added = grow(1);
  matrix_.col(added.first) = Eigen::Map<const Eigen::VectorXd>(values.data(), rows());
  names_.push_back(name);
  return added;
}

Columns FixedEffects::addFactor(const std::string& name, const Factor& factor, const std::vector<std::string>& levels) {
  if (static_cast<int>(factor.of.size()) != rows()) throw BadInput(name, "must have as many rows as the response");
  if (factor.levels < 1) throw BadInput(name, "has no levels");
  if (!levels.empty() && static_cast<int>(levels.size()) != factor.levels) throw BadInput(name, "must have a name for each level");
  for (int level : factor.of)
    if (level < 0 || level >= factor.levels) throw BadInput(name, "holds a label that is not among its levels");
  const Columns added = grow(factor.levels - 1);
  for (int row = 0; row < rows(); ++row)
    if (const int level = factor.of[static_cast<std::size_t>(row)]; level > 0) matrix_(row, added.first + level - 1) = 1.0;
  for (int level = 1; level < factor.levels; ++level) names_.push_back(name + (levels.empty() ? std::to_string(level + 1) : levels[static_cast<std::size_t>(level)]));
  return added;
}

Columns FixedEffects::addProducts(Columns one, Columns other) {
  const Columns added = grow(one.count * other.count);
  int at = added.first;
  for (int b = other.first; b < other.first + other.count; ++b)
    for (int a = one.first; a < one.first + one.count; ++a) {
      matrix_.col(at++) = matrix_.col(a).cwiseProduct(matrix_.col(b));
      names_.push_back(names_[static_cast<std::size_t>(a)] + ':' + names_[static_cast<std::size_t>(b)]);
    }
  return added;
}

Eigen::MatrixXd FixedEffects::allZero(Columns part) const {
  Eigen::MatrixXd rowsOf = Eigen::MatrixXd::Zero(part.count, columns());
  for (int i = 0; i < part.count; ++i) rowsOf(i, part.first + i) = 1.0;
  return rowsOf;
}

Eigen::MatrixXd FixedEffects::sequential(Columns part) const {
  const Eigen::HouseholderQR<Eigen::MatrixXd> qr(matrix_);
  Eigen::MatrixXd rowsOf = Eigen::MatrixXd::Zero(part.count, columns());
  for (int i = 0; i < part.count; ++i) {
    const int at = part.first + i;
    rowsOf.row(i).tail(columns() - at) = qr.matrixQR().row(at).tail(columns() - at) / qr.matrixQR()(at, at);
  }
  return rowsOf;
}

}  // namespace oddglass::stats
