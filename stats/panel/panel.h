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

}  // namespace oddglass::stats
