#include "stats/panel/panel.h"

#include "stats/panel/cells.h"
#include "stats/ranks/blocks.h"

#include <cmath>
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

Concordance concordance(const Eigen::MatrixXd& table) {
  const double size = table.cwiseAbs().maxCoeff(), grain = size > 0.0 ? 1e-10 * size : 1.0;
  std::vector<double> values;
  Factor sample{{}, static_cast<int>(table.rows())}, taster{{}, static_cast<int>(table.cols())};
  for (Eigen::Index t = 0; t < table.cols(); ++t)
    for (Eigen::Index s = 0; s < table.rows(); ++s) {
      values.push_back(std::round(table(s, t) / grain));
      sample.of.push_back(static_cast<int>(s));
      taster.of.push_back(static_cast<int>(t));
    }
  const RankBlocks ranks = rankBlocks(values, sample, taster);
  if (isAllTied(ranks)) return {{}, Reason::allTied};
  // All in halves of a rank, so that everything is whole: the middle of the rank sums is m (k + 1), that of the ranks k + 1.
  const double k = static_cast<double>(table.rows()), m = static_cast<double>(table.cols());
  double between = 0.0, within = 0.0;
  for (int sum : doubledRankSums(ranks)) between += (sum - m * (k + 1.0)) * (sum - m * (k + 1.0));
  for (const RankBlock& block : ranks.blocks)
    for (int rank : block.doubled) within += (rank - k - 1.0) * (rank - k - 1.0);
  return {between / (m * within), {}};
}

}  // namespace oddglass::stats
