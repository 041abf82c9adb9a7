#include "stats/panel/cells.h"

#include <Eigen/Dense>

#include <algorithm>
#include <numeric>

namespace oddglass::stats {
namespace {

constexpr int mostLevels = 1500;

int rootOf(std::vector<int>& parent, int node) {
  while (parent[static_cast<std::size_t>(node)] != node) node = parent[static_cast<std::size_t>(node)] = parent[static_cast<std::size_t>(parent[static_cast<std::size_t>(node)])];
  return node;
}

/// Effects of the side `inner` (short) with the side `outer` eliminated; one level of each part is held at 0.
struct Sides {
  std::vector<double> outer, inner;
};

Sides solve(const std::vector<Cell>& cells, int outerLevels, int innerLevels, bool rowsAreOuter, const std::vector<int>& innerOrder, const std::vector<char>& isHeld) {
  const auto outerOf = [&](const Cell& cell) { return static_cast<std::size_t>(rowsAreOuter ? cell.row : cell.column); };
  const auto innerOf = [&](const Cell& cell) { return static_cast<std::size_t>(rowsAreOuter ? cell.column : cell.row); };
  const int size = static_cast<int>(std::count_if(innerOrder.begin(), innerOrder.end(), [](int at) { return at >= 0; }));
  std::vector<std::vector<std::pair<int, double>>> groups(static_cast<std::size_t>(outerLevels));
  std::vector<double> outerMean(static_cast<std::size_t>(outerLevels));
  for (const Cell& cell : cells) groups[outerOf(cell)].emplace_back(innerOrder[innerOf(cell)], cell.mean);
  Eigen::MatrixXd normal = Eigen::MatrixXd::Zero(size, size);
  Eigen::VectorXd right = Eigen::VectorXd::Zero(size);
  for (std::size_t o = 0; o < groups.size(); ++o) {
    const double n = static_cast<double>(groups[o].size());
    if (groups[o].empty()) continue;
    for (const auto& [at, value] : groups[o]) outerMean[o] += value / n;
    for (const auto& [at, value] : groups[o]) {
      normal(at, at) += 1.0;
      right(at) += value - outerMean[o];
      for (const auto& other : groups[o]) normal(at, other.first) -= 1.0 / n;
    }
  }
  for (int at = 0; at < size; ++at)
    if (isHeld[static_cast<std::size_t>(at)]) {
      normal.row(at).setZero();
      normal.col(at).setZero();
      normal(at, at) = 1.0;
      right(at) = 0.0;
    }
  const Eigen::VectorXd effect = normal.ldlt().solve(right);
  Sides sides;
  sides.inner.resize(static_cast<std::size_t>(innerLevels));
  for (std::size_t i = 0; i < sides.inner.size(); ++i)
    if (innerOrder[i] >= 0) sides.inner[i] = effect(innerOrder[i]);
  sides.outer = outerMean;
  for (std::size_t o = 0; o < groups.size(); ++o)
    for (const auto& [at, value] : groups[o]) sides.outer[o] -= effect(at) / static_cast<double>(groups[o].size());
  return sides;
}

}  // namespace

std::vector<Cell> cellsOf(const std::vector<double>& values, const Factor& rows, const Factor& columns) {
  std::vector<std::size_t> order(values.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::stable_sort(order, {}, [&](std::size_t i) { return std::pair(rows.of[i], columns.of[i]); });
  std::vector<Cell> cells;
  for (std::size_t i : order) {
    if (cells.empty() || cells.back().row != rows.of[i] || cells.back().column != columns.of[i]) cells.push_back({rows.of[i], columns.of[i], 0, 0.0, 0.0});
    Cell& cell = cells.back();
    const double step = values[i] - cell.mean;
    cell.mean += step / ++cell.count;
    cell.squares += step * (values[i] - cell.mean);
  }
  return cells;
}

std::optional<Additive> additive(const std::vector<Cell>& cells, int rowLevels, int columnLevels) {
  std::vector<char> hasRow(static_cast<std::size_t>(rowLevels)), hasColumn(static_cast<std::size_t>(columnLevels));
  std::vector<int> parent(static_cast<std::size_t>(rowLevels + columnLevels));
  std::iota(parent.begin(), parent.end(), 0);
  for (const Cell& cell : cells) {
    hasRow[static_cast<std::size_t>(cell.row)] = hasColumn[static_cast<std::size_t>(cell.column)] = 1;
    parent[static_cast<std::size_t>(rootOf(parent, cell.row))] = rootOf(parent, rowLevels + cell.column);
  }
  const int rows = static_cast<int>(std::ranges::count(hasRow, 1)), columns = static_cast<int>(std::ranges::count(hasColumn, 1));
  if (std::min(rows, columns) > mostLevels) return std::nullopt;
  const bool rowsAreOuter = rows >= columns;
  const std::vector<char>& hasInner = rowsAreOuter ? hasColumn : hasRow;
  std::vector<int> innerOrder(hasInner.size(), -1), partOfRoot(parent.size(), -1);
  std::vector<char> isHeld;
  int parts = 0;
  for (std::size_t i = 0; i < hasInner.size(); ++i) {
    if (!hasInner[i]) continue;
    innerOrder[i] = static_cast<int>(isHeld.size());
    const auto root = static_cast<std::size_t>(rootOf(parent, static_cast<int>(i) + (rowsAreOuter ? rowLevels : 0)));
    isHeld.push_back(partOfRoot[root] < 0);
    if (partOfRoot[root] < 0) partOfRoot[root] = parts++;
  }
  Sides sides = solve(cells, rowsAreOuter ? rowLevels : columnLevels, rowsAreOuter ? columnLevels : rowLevels, rowsAreOuter, innerOrder, isHeld);
  Additive fit;
  fit.row = rowsAreOuter ? sides.outer : sides.inner;
  fit.column = rowsAreOuter ? sides.inner : sides.outer;
  fit.parts = parts;
  fit.residualDf = static_cast<int>(cells.size()) - rows - columns + parts;
  for (const Cell& cell : cells) {
    const double rest = cell.mean - fit.row[static_cast<std::size_t>(cell.row)] - fit.column[static_cast<std::size_t>(cell.column)];
    fit.residualSquares += rest * rest;
  }
  // Columns are centred within each part, and the rows of the part take up the shift.
  std::vector<double> shift(static_cast<std::size_t>(parts)), members(static_cast<std::size_t>(parts));
  const auto partAt = [&](int node) { return static_cast<std::size_t>(partOfRoot[static_cast<std::size_t>(rootOf(parent, node))]); };
  for (int c = 0; c < columnLevels; ++c)
    if (hasColumn[static_cast<std::size_t>(c)]) shift[partAt(rowLevels + c)] += fit.column[static_cast<std::size_t>(c)], members[partAt(rowLevels + c)] += 1.0;
  for (int c = 0; c < columnLevels; ++c)
    if (hasColumn[static_cast<std::size_t>(c)]) fit.column[static_cast<std::size_t>(c)] -= shift[partAt(rowLevels + c)] / members[partAt(rowLevels + c)];
  fit.part.assign(static_cast<std::size_t>(rowLevels), -1);
  for (int r = 0; r < rowLevels; ++r)
    if (hasRow[static_cast<std::size_t>(r)]) {
      fit.part[static_cast<std::size_t>(r)] = static_cast<int>(partAt(r));
      fit.row[static_cast<std::size_t>(r)] += shift[partAt(r)] / members[partAt(r)];
    }
  return fit;
}

}  // namespace oddglass::stats
