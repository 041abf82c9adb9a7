#pragma once

#include "stats/ranks/blocks.h"

#include <catch2/catch.hpp>

#include <utility>
#include <vector>

/// Ranks or scores as a table, one row a taster, in long form.
inline oddglass::stats::RankBlocks ranked(const std::vector<std::vector<double>>& rows) {
  std::vector<double> values;
  oddglass::stats::Factor sample, taster;
  for (std::size_t row = 0; row < rows.size(); ++row)
    for (std::size_t column = 0; column < rows[row].size(); ++column) {
      values.push_back(rows[row][column]);
      sample.of.push_back(static_cast<int>(column));
      taster.of.push_back(static_cast<int>(row));
    }
  sample.levels = static_cast<int>(rows.front().size());
  taster.levels = static_cast<int>(rows.size());
  return oddglass::stats::rankBlocks(values, sample, taster);
}
