#include "stats/profile/profile_cells.h"

#include <algorithm>

namespace oddglass::stats {

ProfileCells profileCells(const ProfileRows& rows) {
  requireSound(rows);
  ProfileCells cells{rows.scores.taster.levels, rows.scores.sample.levels, {}};
  for (const ScoreRows& part : byDescriptor(rows)) cells.descriptors.push_back(cellsOf(part.response, part.taster, part.sample));
  return cells;
}

PanelMeans panelMeans(const std::vector<Cell>& cells, int tasters, int samples, std::optional<int> without) {
  PanelMeans means{{}, Eigen::VectorXd::Zero(tasters), {}};
  const auto refused = [&](Reason why) {
    means.why = why;
    return means;
  };
  std::vector<Cell> kept = cells;
  if (without) std::erase_if(kept, [&](const Cell& cell) { return cell.row == *without; });
  std::vector<char> isScored(static_cast<std::size_t>(samples)), isThere(static_cast<std::size_t>(tasters));
  for (const Cell& cell : kept) isScored[static_cast<std::size_t>(cell.column)] = isThere[static_cast<std::size_t>(cell.row)] = 1;
  const auto present = std::ranges::count(isThere, 1);
  if (std::ranges::count(isScored, 1) != samples) return refused(Reason::emptyCell);
  if (kept.size() == static_cast<std::size_t>(present) * static_cast<std::size_t>(samples)) {
    means.samples = Eigen::VectorXd::Zero(samples);
    for (const Cell& cell : kept) {
      (*means.samples)(cell.column) += cell.mean / static_cast<double>(present);
      means.level(cell.row) += cell.mean / samples;
    }
    return means;
  }
  const auto fit = additive(kept, tasters, samples);
  if (!fit) return refused(Reason::tooLarge);
  if (fit->parts != 1) return refused(Reason::notConnected);
  means.level = Eigen::Map<const Eigen::VectorXd>(fit->row.data(), tasters);
  // Rows without an answer are zero, so the sum is over those who are there.
  means.samples = (Eigen::Map<const Eigen::VectorXd>(fit->column.data(), samples).array() + means.level.sum() / static_cast<double>(present)).matrix();
  return means;
}

TasterTable tasterTable(const std::vector<Cell>& cells, int tasters, int samples) {
  TasterTable table{Eigen::MatrixXd::Zero(tasters, samples), Eigen::Array<bool, Eigen::Dynamic, Eigen::Dynamic>::Constant(tasters, samples, false)};
  for (const Cell& cell : cells) {
    table.mean(cell.row, cell.column) = cell.mean;
    table.has(cell.row, cell.column) = true;
  }
  return table;
}

}  // namespace oddglass::stats
