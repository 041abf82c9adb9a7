#include "stats/panel/panel.h"

#include "stats/panel/cells.h"

#include <set>

namespace oddglass::stats {

MeanTable meanTable(const ScoreRows& rows) {
  requireSound(rows);
  const std::vector<Cell> cells = cellsOf(rows.response, rows.sample, rows.taster);
  std::set<int> samples, tasters;
  for (const Cell& cell : cells) samples.insert(cell.row), tasters.insert(cell.column);
  if (tasters.size() < 2) return {{}, Reason::oneTaster};
  if (samples.size() < 2) return {{}, Reason::fewSamples};
  if (cells.size() != samples.size() * tasters.size()) return {{}, Reason::emptyCell};
  Eigen::MatrixXd table(samples.size(), tasters.size());
  // Cells come by sample and within it by taster, and none is missing.
  for (std::size_t i = 0; i < cells.size(); ++i) table(static_cast<Eigen::Index>(i / tasters.size()), static_cast<Eigen::Index>(i % tasters.size())) = cells[i].mean;
  return {std::move(table), {}};
}

}  // namespace oddglass::stats
