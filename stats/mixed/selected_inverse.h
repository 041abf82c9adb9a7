#pragma once

#include <Eigen/SparseCore>

namespace oddglass::stats {

/// The entries of (L L')^-1 where the Cholesky factor L has entries, as a lower triangle with the pattern of L.
/// L is lower triangular and compressed, rows sorted, its diagonal positive. Source: Takahashi, Fagan and Chin 1973; Erisman and Tinney 1975, CACM 18:177.
Eigen::SparseMatrix<double> selectedInverse(const Eigen::SparseMatrix<double>& factor);

}  // namespace oddglass::stats
