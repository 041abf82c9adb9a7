#pragma once

#include "stats/long_rows.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// The answers that fell into one cell of a two-way table, such as one taster and one sample.
struct Cell {
  int row = 0, column = 0;
  int count = 0;         ///< 1 or more
  double mean = 0.0;
  double squares = 0.0;  ///< sum of squared deviations from the mean
};

/// The cells that hold an answer, by row and within it by column. Both factors have as many entries as `values`.
std::vector<Cell> cellsOf(const std::vector<double>& values, const Factor& rows, const Factor& columns);

/// Effects of rows and columns of a two-way table, fitted to the means of its cells by least squares: value = row + column.
/// A complete table gives the means of its rows and columns. Where cells are missing, a row's effect is freed of which columns it lacks.
struct Additive {
  std::vector<double> row;     ///< levels of the rows at the average column
  std::vector<double> column;  ///< sums to 0 over the columns that hold an answer; 0 for the others
  std::vector<int> part;       ///< for each row the part of the table it belongs to, -1 when it holds no answer; rows of different parts cannot be compared
  int parts = 0;
  double residualSquares = 0.0;
  int residualDf = 0;          ///< cells - rows - columns + parts
};

/// Empty when both sides have more than 1,500 levels with an answer. Effects of a row hold within its part only.
/// Source: two-way layout without interaction, normal equations with the longer side eliminated (Scheffe 1959, chapter 4).
std::optional<Additive> additive(const std::vector<Cell>& cells, int rowLevels, int columnLevels);

}  // namespace oddglass::stats
