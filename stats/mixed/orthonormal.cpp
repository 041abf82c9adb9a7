#include "stats/mixed/orthonormal.h"

#include <Eigen/QR>

#include <cmath>

namespace oddglass::stats {

std::optional<Orthonormal> orthonormal(const FixedEffects& fixed, std::string& about) {
  const Eigen::MatrixXd& x = fixed.matrix();
  const Eigen::Index p = x.cols();
  const Eigen::VectorXd lengths = x.colwise().norm();
  for (Eigen::Index i = 0; i < p; ++i)
    if (lengths[i] == 0.0) return about = fixed.names()[static_cast<std::size_t>(i)], std::nullopt;
  const Eigen::HouseholderQR<Eigen::MatrixXd> qr(x * lengths.cwiseInverse().asDiagonal());
  const Eigen::MatrixXd r = qr.matrixQR().topRows(p).triangularView<Eigen::Upper>();
  for (Eigen::Index i = 0; i < p; ++i)
    if (std::abs(r(i, i)) < 1e-7) return about = fixed.names()[static_cast<std::size_t>(i)], std::nullopt;
  Orthonormal made;
  made.q = qr.householderQ() * Eigen::MatrixXd::Identity(x.rows(), p);
  made.back = lengths.cwiseInverse().asDiagonal() * Eigen::MatrixXd(r.triangularView<Eigen::Upper>().solve(Eigen::MatrixXd::Identity(p, p)));
  made.logScale = 2.0 * (r.diagonal().array().abs() * lengths.array()).log().sum();
  return made;
}

}  // namespace oddglass::stats
