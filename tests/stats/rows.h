#pragma once

#include "stats/long_rows.h"

#include <algorithm>
#include <vector>

/// Long rows for tests.
namespace rows {

using oddglass::stats::ScoreRows;

/// A table with a taster in each row and a sample in each column.
inline ScoreRows ofTasters(const std::vector<std::vector<double>>& table) {
  ScoreRows rows;
  for (std::size_t t = 0; t < table.size(); ++t)
    for (std::size_t s = 0; s < table[t].size(); ++s) {
      rows.response.push_back(table[t][s]);
      rows.taster.of.push_back(static_cast<int>(t));
      rows.sample.of.push_back(static_cast<int>(s));
      rows.taster.levels = std::max(rows.taster.levels, static_cast<int>(t) + 1);
      rows.sample.levels = std::max(rows.sample.levels, static_cast<int>(s) + 1);
    }
  return rows;
}

/// Adds one answer; the factors grow as needed.
inline void add(ScoreRows& rows, int taster, int sample, double response) {
  rows.response.push_back(response);
  rows.taster.of.push_back(taster);
  rows.sample.of.push_back(sample);
  rows.taster.levels = std::max(rows.taster.levels, taster + 1);
  rows.sample.levels = std::max(rows.sample.levels, sample + 1);
}

}  // namespace rows
