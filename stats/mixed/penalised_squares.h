#pragma once

#include "stats/mixed/reml.h"

#include <Eigen/Core>
#include <Eigen/SparseCholesky>

#include <vector>

namespace oddglass::stats {

/// A mixed model at given ratios of the random variances to the residual variance.
struct MixedPoint {
  double logDeterminants = 0.0;  ///< log|V| + log|X'V^-1 X|, V in units of the residual variance
  double squares = 0.0;          ///< y'Py, the penalised sum of squares
  Eigen::VectorXd fixed;         ///< generalised least squares estimates
  Eigen::MatrixXd information;   ///< X'V^-1 X
  /// With slopes only: derivatives of the two numbers by each ratio, and Z_k'V^-1 X of each term.
  Eigen::VectorXd slopeOfLog, slopeOfSquares;
  std::vector<Eigen::MatrixXd> crossings;
};

/// Cross products of a mixed model, made once, and what they come to at any ratios. Sizes were checked by the caller.
/// V = I + sum of ratio_k Z_k Z_k'; works on the sparse Cholesky factor of L Z'Z L + I, L = diag(sqrt(ratio)).
class PenalisedSquares {
 public:
  PenalisedSquares(const Eigen::MatrixXd& x, const std::vector<const Factor*>& terms, const Eigen::VectorXd& y);

  int terms() const { return static_cast<int>(starts_.size()) - 1; }
  int levels() const { return starts_.back(); }
  int freedom() const { return rows_ - static_cast<int>(xx_.cols()); }

  /// All ratios above zero, one for each term.
  MixedPoint at(const Eigen::VectorXd& ratios, bool withSlopes);
  /// REML criterion with the residual variance profiled out, in the constant of lme4.
  double criterion(const MixedPoint& point) const;
  /// Its slope by each ratio. The point must have slopes.
  Eigen::VectorXd slope(const MixedPoint& point) const;
  /// Predicted effects of all levels, term after term, at the point of the last call of `at`.
  std::vector<std::vector<double>> effects(const MixedPoint& point) const;
  /// For each term: does it, within what the fixed part leaves, depend on the residual and the terms before it?
  std::vector<bool> confounded() const;

 private:
  using Sparse = Eigen::SparseMatrix<double>;
  using Rows = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

  void addSlopes(MixedPoint& point);
  std::vector<int> placesIn(const Sparse& inverse) const;
  Eigen::Block<const Rows> rowsOf(const Rows& all, int term) const;

  int rows_;
  std::vector<int> starts_;   ///< where each term's levels begin; the end of the last
  std::vector<int> terms_;    ///< the term of each level
  std::vector<int> places_;   ///< where the entries of Z'Z stand in the inverse; empty until asked for
  Eigen::MatrixXd xx_;        ///< X'X
  Eigen::VectorXd xy_;        ///< X'y
  double yy_;                 ///< y'y
  Sparse zz_;                 ///< lower triangle of Z'Z
  Rows zx_;                   ///< Z'X, and Z'y as its last column
  Sparse scaled_;             ///< lower triangle of L Z'Z L + I
  Eigen::VectorXd lengths_;   ///< sqrt(ratio) of each level
  Eigen::SimplicialLLT<Sparse, Eigen::Lower> cholesky_;
  Rows solved_;               ///< (L Z'Z L + I)^-1 L [Z'X, Z'y]
};

}  // namespace oddglass::stats
