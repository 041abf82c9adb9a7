#include "stats/trend/line.h"

#include <Eigen/QR>

#include <algorithm>

namespace oddglass::stats {

std::optional<LeastSquares> leastSquares(const Eigen::MatrixXd& x, const Eigen::VectorXd& y, double scale) {
  if (x.cols() > x.rows()) return std::nullopt;
  Eigen::ColPivHouseholderQR<Eigen::MatrixXd> qr(x);
  qr.setThreshold(1e-9);
  if (qr.rank() < x.cols()) return std::nullopt;
  LeastSquares fit;
  fit.coefficients = qr.solve(y);
  const Eigen::MatrixXd r = qr.matrixR().topLeftCorner(x.cols(), x.cols()).triangularView<Eigen::Upper>();
  const Eigen::MatrixXd inverse = qr.colsPermutation() * r.triangularView<Eigen::Upper>().solve(Eigen::MatrixXd::Identity(x.cols(), x.cols())).eval();
  fit.unscaled = inverse * inverse.transpose();
  fit.residualSquares = (y - x * fit.coefficients).squaredNorm();
  const double size = std::max(scale, y.cwiseAbs().maxCoeff());
  if (fit.residualSquares <= 1e-24 * size * size * static_cast<double>(y.size())) fit.residualSquares = 0.0;
  fit.df = static_cast<int>(x.rows() - x.cols());
  return fit;
}

}  // namespace oddglass::stats
