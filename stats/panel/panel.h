#pragma once

#include "stats/panel/reliability.h"
#include "stats/panel/tasters.h"

#include <Eigen/Core>

namespace oddglass::stats {

/// The mean scores of a complete table, samples in rows and tasters in columns; rounds and repeats are averaged. Empty with emptyCell where a taster missed
/// a sample: agreement of the whole panel is not worked out from a table with holes. Labels that no row holds are left out. BadInput as requireSound.
struct MeanTable {
  std::optional<Eigen::MatrixXd> table;
  std::optional<Reason> why;  ///< emptyCell, oneTaster, fewSamples
};
MeanTable meanTable(const ScoreRows& rows);

/// Kendall's W of a mean table: how far the tasters rank the samples alike, 0 to 1, corrected for ties. Means that differ by no more than rounding are ties.
struct Concordance {
  std::optional<double> w;
  std::optional<Reason> why;  ///< allTied
};
/// Sum of squared deviations of the rank sums over tasters times that of the ranks. `table` as for `twoWay`.
/// Source: Kendall and Babington Smith 1939, Ann Math Stat 10:275, with the correction for ties.
Concordance concordance(const Eigen::MatrixXd& table);

}  // namespace oddglass::stats
