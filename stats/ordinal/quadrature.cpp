#include "stats/ordinal/quadrature.h"

#include "stats/error.h"

#include <Eigen/Eigenvalues>

#include <cmath>
#include <numbers>

namespace oddglass::stats {

Quadrature gaussHermite(int points) {
  if (points < 1 || points > 100) throw BadInput("points", "must be from 1 to 100");
  Eigen::VectorXd beside(points - 1);
  for (int i = 1; i < points; ++i) beside[i - 1] = std::sqrt(i / 2.0);
  Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> eigen;
  eigen.computeFromTridiagonal(Eigen::VectorXd::Zero(points), beside);
  Quadrature rule;
  for (int i = 0; i < points; ++i) {
    rule.points.push_back(eigen.eigenvalues()[i]);
    rule.weights.push_back(std::sqrt(std::numbers::pi) * std::pow(eigen.eigenvectors()(0, i), 2));
  }
  return rule;
}

}  // namespace oddglass::stats
