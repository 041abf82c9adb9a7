#pragma once

#include <Eigen/Core>

#include <optional>

namespace oddglass::stats {

/// A fit by ordinary least squares.
struct LeastSquares {
  Eigen::VectorXd coefficients;
  Eigen::MatrixXd unscaled;  ///< (X'X)^-1: times the residual variance it is the covariance of the coefficients
  double residualSquares = 0.0;  ///< exactly 0 where only rounding is left
  int df = 0;                    ///< rows - columns
};

/// Empty when the columns of `x` depend on each other or are more than its rows. `scale` is the size of the numbers that `y` came from, for rounding.
std::optional<LeastSquares> leastSquares(const Eigen::MatrixXd& x, const Eigen::VectorXd& y, double scale = 0.0);

}  // namespace oddglass::stats
