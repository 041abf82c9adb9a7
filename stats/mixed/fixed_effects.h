#pragma once

#include "stats/long_rows.h"

#include <Eigen/Core>

#include <string>
#include <vector>

namespace oddglass::stats {

/// Columns of a model that belong together, such as the contrasts of one factor.
struct Columns {
  int first = 0;
  int count = 0;
};

/// The fixed part of a linear model: one row an answer, columns with names, built piece by piece. Sizes must agree with the number
/// of rows (BadInput). A full column rank is not asked for here but by the fit.
class FixedEffects {
 public:
  /// An empty model of so many rows. BadInput without rows.
  explicit FixedEffects(std::size_t rows);

  /// The constant. Called first where there is one.
  Columns addIntercept();
  /// A covariate, finite numbers.
  Columns addNumber(const std::string& name, const std::vector<double>& values);
  /// Treatment contrasts: one column for each level after the first, which is the reference. `levels` may name them; else they are numbered from 1.
  Columns addFactor(const std::string& name, const Factor& factor, const std::vector<std::string>& levels = {});
  /// The products of every column of one part with every column of the other, the first running fastest.
  Columns addProducts(Columns one, Columns other);

  const Eigen::MatrixXd& matrix() const { return matrix_; }
  const std::vector<std::string>& names() const { return names_; }
  int rows() const { return static_cast<int>(matrix_.rows()); }
  int columns() const { return static_cast<int>(matrix_.cols()); }

  /// Rows of a contrast matrix that ask whether these columns are all zero: `part.count` by `columns()`.
  Eigen::MatrixXd allZero(Columns part) const;
  /// The same question asked one after another: each column less what those before it account for and what it shares with those after it
  /// (type I contrasts; rows of the Cholesky factor of X'X, first entry 1). Rows span the same space as `allZero` where nothing comes after the part.
  /// Source: Goodnight 1979, Am Stat 33:149. Asks for full column rank.
  Eigen::MatrixXd sequential(Columns part) const;
  /// A row of zeros of the right length, to be filled in.
  Eigen::VectorXd contrast() const { return Eigen::VectorXd::Zero(columns()); }

 private:
  Columns grow(int count);

  Eigen::MatrixXd matrix_;
  std::vector<std::string> names_;
};

}  // namespace oddglass::stats
