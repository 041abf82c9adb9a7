#pragma once

#include "stats/long_rows.h"
#include "stats/ordinal/link.h"
#include "stats/ordinal/quadrature.h"

#include <Eigen/Core>

#include <vector>

namespace oddglass::stats {

/// The likelihood of a cumulative link model with a random intercept: P(Y <= j) = F(threshold_j - x'b - sd u), u standard normal.
/// Parameters in this order: thresholds (increasing), effects, sd (at least zero).
/// One point is Laplace's approximation, more are adaptive Gauss-Hermite quadrature about each mode.
/// Sources: Tutz and Hennevogl 1996, Comput Stat Data Anal 22:537; Pinheiro and Bates 1995, J Comput Graph Stat 4:12.
class OrdinalLikelihood {
 public:
  /// `category` counts from 0 and every one of `categories` occurs; `group` is the random intercept. Equal rows are taken together.
  OrdinalLikelihood(const Eigen::MatrixXd& x, const Factor& group, const std::vector<int>& category, int categories, Link link, int points);

  int thresholds() const { return categories_ - 1; }
  int parameters() const { return categories_ + static_cast<int>(x_.cols()); }
  /// Log-likelihood and its gradient; minus infinity, and no gradient, where thresholds do not increase.
  double at(const Eigen::VectorXd& parameters, Eigen::VectorXd& gradient) const;

 private:
  struct Cell {
    Eigen::Index row;  ///< of x_
    int category;
    double count;
  };
  struct Sums;

  Sums sumsAt(const std::vector<Cell>& cells, const Eigen::VectorXd& parameters, const Eigen::VectorXd& shift, double u, bool withGradients) const;
  double groupAt(std::size_t group, const Eigen::VectorXd& parameters, const Eigen::VectorXd& shift, Eigen::VectorXd& gradient) const;

  Eigen::MatrixXd x_;
  std::vector<std::vector<Cell>> groups_;
  mutable std::vector<double> modes_;  ///< where each group's mode was last: only a place to start from
  int categories_;
  Link link_;
  Quadrature rule_;
};

}  // namespace oddglass::stats
