#include "stats/mixed/penalised_squares.h"

#include "stats/mixed/selected_inverse.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <unordered_map>

namespace oddglass::stats {

PenalisedSquares::PenalisedSquares(const Eigen::MatrixXd& x, const std::vector<const Factor*>& terms, const Eigen::VectorXd& y)
    : rows_(static_cast<int>(x.rows())), starts_{0}, xx_(x.transpose() * x), xy_(x.transpose() * y), yy_(y.squaredNorm()) {
  for (const Factor* term : terms) {
    terms_.insert(terms_.end(), static_cast<std::size_t>(term->levels), static_cast<int>(starts_.size()) - 1);
    starts_.push_back(starts_.back() + term->levels);
  }
  const int levels = starts_.back();
  const Eigen::Index p = x.cols();
  zx_ = Rows::Zero(levels, p + 1);
  Rows byRow(rows_, p + 1);
  byRow.leftCols(p) = x;
  byRow.col(p) = y;
  std::vector<Eigen::Triplet<double>> pairs;
  for (std::size_t one = 0; one < terms.size(); ++one) {
    for (int row = 0; row < rows_; ++row) zx_.row(starts_[one] + terms[one]->of[static_cast<std::size_t>(row)]) += byRow.row(row);
    for (std::size_t other = 0; other <= one; ++other) {
      std::unordered_map<std::int64_t, int> counts;
      for (int row = 0; row < rows_; ++row) {
        const std::int64_t a = terms[one]->of[static_cast<std::size_t>(row)], b = terms[other]->of[static_cast<std::size_t>(row)];
        ++counts[a * terms[other]->levels + b];
      }
      for (const auto& [cell, count] : counts)
        pairs.emplace_back(starts_[one] + static_cast<int>(cell / terms[other]->levels), starts_[other] + static_cast<int>(cell % terms[other]->levels), count);
    }
  }
  // The diagonal of the scaled matrix must have an entry even where a level has no rows.
  for (int level = 0; level < levels; ++level) pairs.emplace_back(level, level, 0.0);
  zz_.resize(levels, levels);
  zz_.setFromTriplets(pairs.begin(), pairs.end());
  scaled_ = zz_;
  if (levels > 0) cholesky_.analyzePattern(scaled_);
}

Eigen::Block<const PenalisedSquares::Rows> PenalisedSquares::rowsOf(const Rows& all, int term) const {
  const auto k = static_cast<std::size_t>(term);
  return all.block(starts_[k], 0, starts_[k + 1] - starts_[k], all.cols());
}

MixedPoint PenalisedSquares::at(const Eigen::VectorXd& ratios, bool withSlopes) {
  const Eigen::Index p = xx_.cols();
  Eigen::MatrixXd all(p + 1, p + 1);
  all << xx_, xy_, xy_.transpose(), yy_;
  MixedPoint point;
  if (terms() > 0) {
    lengths_.resize(starts_.back());
    for (int k = 0; k < terms(); ++k) lengths_.segment(starts_[static_cast<std::size_t>(k)], rowsOf(zx_, k).rows()).setConstant(std::sqrt(ratios[k]));
    for (int column = 0; column < zz_.cols(); ++column)
      for (int at = zz_.outerIndexPtr()[column]; at < zz_.outerIndexPtr()[column + 1]; ++at) {
        const int row = zz_.innerIndexPtr()[at];
        scaled_.valuePtr()[at] = zz_.valuePtr()[at] * lengths_[row] * lengths_[column] + (row == column ? 1.0 : 0.0);
      }
    cholesky_.factorize(scaled_);
    Rows half = cholesky_.permutationP() * (lengths_.asDiagonal() * zx_);
    cholesky_.matrixL().solveInPlace(half);
    all.noalias() -= half.transpose() * half;
    if (withSlopes) {
      cholesky_.matrixU().solveInPlace(half);
      solved_ = cholesky_.permutationPinv() * half;
    }
    point.logDeterminants = 2.0 * cholesky_.matrixL().nestedExpression().diagonal().array().log().sum();
  }
  point.information = all.topLeftCorner(p, p);
  const Eigen::LLT<Eigen::MatrixXd> factor(point.information);
  point.logDeterminants += 2.0 * Eigen::MatrixXd(factor.matrixL()).diagonal().array().log().sum();
  point.fixed = factor.solve(all.col(p).head(p));
  point.squares = all(p, p) - point.fixed.dot(all.col(p).head(p));
  if (withSlopes) addSlopes(point);
  return point;
}

double PenalisedSquares::criterion(const MixedPoint& point) const {
  return point.logDeterminants + freedom() * (1.0 + std::log(2.0 * std::numbers::pi * point.squares / freedom()));
}

Eigen::VectorXd PenalisedSquares::slope(const MixedPoint& point) const { return point.slopeOfLog + (freedom() / point.squares) * point.slopeOfSquares; }

void PenalisedSquares::addSlopes(MixedPoint& point) {
  const Eigen::Index p = xx_.cols();
  point.slopeOfLog = Eigen::VectorXd::Zero(terms());
  point.slopeOfSquares = Eigen::VectorXd::Zero(terms());
  if (terms() == 0) return;
  // Z'V^-1 [X, y] = Z'[X, y] - Z'Z L (L Z'Z L + I)^-1 L Z'[X, y]
  const Rows within = zx_ - Rows(zz_.selfadjointView<Eigen::Lower>() * Rows(lengths_.asDiagonal() * solved_));
  const Eigen::LLT<Eigen::MatrixXd> factor(point.information);
  for (int k = 0; k < terms(); ++k) {
    const Eigen::MatrixXd crossing = rowsOf(within, k).leftCols(p);
    const Eigen::VectorXd left = rowsOf(within, k).col(p) - crossing * point.fixed;
    point.slopeOfSquares[k] = -left.squaredNorm();
    point.slopeOfLog[k] = -(factor.solve(Eigen::MatrixXd(crossing.transpose() * crossing))).trace();
    point.crossings.push_back(crossing);
  }
  // tr(Z_k'V^-1 Z_k) from the inverse where Z'Z has entries: the diagonal of L^-1 (L Z'Z L + I)^-1 L Z'Z.
  const Sparse inverse = selectedInverse(cholesky_.matrixL().nestedExpression());
  if (places_.empty()) places_ = placesIn(inverse);
  for (int column = 0; column < zz_.cols(); ++column) {
    const int ofColumn = terms_[static_cast<std::size_t>(column)];
    for (int at = zz_.outerIndexPtr()[column]; at < zz_.outerIndexPtr()[column + 1]; ++at) {
      const int row = zz_.innerIndexPtr()[at];
      const double entry = inverse.valuePtr()[places_[static_cast<std::size_t>(at)]] * zz_.valuePtr()[at], ratio = lengths_[column] / lengths_[row];
      point.slopeOfLog[terms_[static_cast<std::size_t>(row)]] += entry * ratio;
      if (row != column) point.slopeOfLog[ofColumn] += entry / ratio;
    }
  }
}

std::vector<int> PenalisedSquares::placesIn(const Sparse& inverse) const {
  const auto& order = cholesky_.permutationP().indices();
  std::vector<int> places;
  for (int column = 0; column < zz_.cols(); ++column)
    for (int at = zz_.outerIndexPtr()[column]; at < zz_.outerIndexPtr()[column + 1]; ++at) {
      const int row = zz_.innerIndexPtr()[at];
      const int low = std::max(order[row], order[column]), high = std::min(order[row], order[column]);
      const int* first = inverse.innerIndexPtr() + inverse.outerIndexPtr()[high];
      const int* last = inverse.innerIndexPtr() + inverse.outerIndexPtr()[high + 1];
      places.push_back(static_cast<int>(std::lower_bound(first, last, low) - inverse.innerIndexPtr()));
    }
  return places;
}

std::vector<std::vector<double>> PenalisedSquares::effects(const MixedPoint& point) const {
  std::vector<std::vector<double>> all(static_cast<std::size_t>(terms()));
  const Eigen::Index p = xx_.cols();
  for (int k = 0; k < terms(); ++k) {
    const auto rows = rowsOf(solved_, k);
    const Eigen::VectorXd u = rows.col(p) - rows.leftCols(p) * point.fixed;
    for (Eigen::Index i = 0; i < u.size(); ++i) all[static_cast<std::size_t>(k)].push_back(lengths_[starts_[static_cast<std::size_t>(k)] + i] * u[i]);
  }
  return all;
}

std::vector<bool> PenalisedSquares::confounded() const {
  // tr(P V_k P V_l) for the residual and each term, P the projection off an orthonormal X; a term without a part of its own adds nothing.
  const Eigen::Index p = xx_.cols();
  const int all = terms() + 1;
  Eigen::MatrixXd overlap = Eigen::MatrixXd::Zero(all, all);
  Eigen::VectorXd whole = Eigen::VectorXd::Zero(all);  // the same before the projection
  whole[0] = rows_;
  std::vector<Eigen::MatrixXd> squares;
  overlap(0, 0) = freedom();
  for (int k = 0; k < terms(); ++k) {
    const Eigen::MatrixXd own = rowsOf(zx_, k).leftCols(p);
    squares.push_back(own.transpose() * own);
    overlap(0, k + 1) = overlap(k + 1, 0) = rows_ - own.squaredNorm();
    for (int l = 0; l <= k; ++l) {
      const double both = squares[static_cast<std::size_t>(k)].cwiseProduct(squares[static_cast<std::size_t>(l)]).sum();
      overlap(k + 1, l + 1) += both;
      if (l != k) overlap(l + 1, k + 1) += both;
    }
  }
  for (int column = 0; column < zz_.cols(); ++column)
    for (int at = zz_.outerIndexPtr()[column]; at < zz_.outerIndexPtr()[column + 1]; ++at) {
      const int row = zz_.innerIndexPtr()[at], k = terms_[static_cast<std::size_t>(row)] + 1, l = terms_[static_cast<std::size_t>(column)] + 1;
      const double count = zz_.valuePtr()[at], gain = count * count - 2.0 * count * zx_.row(row).head(p).dot(zx_.row(column).head(p));
      overlap(k, l) += gain;
      if (k == l) whole[k] += count * count;
      if (k != l) overlap(l, k) += gain;
    }
  std::vector<bool> lost;
  for (int k = 0; k < all; ++k) {
    // What is left of the diagonal after those before it (a Cholesky step).
    const bool isLost = overlap(k, k) <= 1e-9 * whole[k];
    if (k > 0) lost.push_back(isLost);
    if (isLost) {
      overlap.row(k).setZero();
      overlap.col(k).setZero();
      continue;
    }
    const Eigen::VectorXd column = overlap.col(k);
    overlap -= column * column.transpose() / column[k];
  }
  return lost;
}

}  // namespace oddglass::stats
