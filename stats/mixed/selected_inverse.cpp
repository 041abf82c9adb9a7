#include "stats/mixed/selected_inverse.h"

#include <vector>

namespace oddglass::stats {

Eigen::SparseMatrix<double> selectedInverse(const Eigen::SparseMatrix<double>& factor) {
  Eigen::SparseMatrix<double> inverse = factor;
  const int* starts = factor.outerIndexPtr();
  const int* rows = factor.innerIndexPtr();
  const double* l = factor.valuePtr();
  double* z = inverse.valuePtr();
  const auto size = static_cast<std::size_t>(factor.cols());
  std::vector<double> column(size, 0.0), sum(size, 0.0);
  for (int j = static_cast<int>(size) - 1; j >= 0; --j) {
    const int first = starts[j] + 1, end = starts[j + 1];
    const double pivot = l[starts[j]];
    for (int at = first; at < end; ++at) column[rows[at]] = l[at];
    // Each pair of rows below the pivot has an entry of the inverse already. Entries of a later column that are not below this pivot meet a zero.
    for (int at = first; at < end; ++at) {
      const int k = rows[at];
      const double below = l[at];
      double across = z[starts[k]] * below;
      for (int other = starts[k] + 1; other < starts[k + 1]; ++other) {
        sum[rows[other]] += z[other] * below;
        across += z[other] * column[rows[other]];
      }
      sum[k] += across;
    }
    double diagonal = 1.0 / pivot;
    for (int at = first; at < end; ++at) {
      z[at] = -sum[rows[at]] / pivot;
      diagonal -= l[at] * z[at];
    }
    z[starts[j]] = diagonal / pivot;
    for (int at = first; at < end; ++at) {
      for (int other = starts[rows[at]]; other < starts[rows[at] + 1]; ++other) sum[rows[other]] = 0.0;
      column[rows[at]] = 0.0;
    }
  }
  return inverse;
}

}  // namespace oddglass::stats
