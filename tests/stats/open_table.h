#pragma once

#include "stats/long_rows.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

/// Published tables in tests/data/open; their sources stand beside them.
namespace open_data {

/// A column of labels, levels in alphabetical order.
struct Labelled {
  oddglass::stats::Factor factor;
  std::vector<std::string> levels;
};

/// Levels in alphabetical order.
inline Labelled labelled(const std::vector<std::string>& values) {
  Labelled column;
  column.levels = values;
  std::ranges::sort(column.levels);
  column.levels.erase(std::unique(column.levels.begin(), column.levels.end()), column.levels.end());
  column.factor.levels = static_cast<int>(column.levels.size());
  for (const std::string& value : values) column.factor.of.push_back(static_cast<int>(std::ranges::lower_bound(column.levels, value) - column.levels.begin()));
  return column;
}

/// A table with a header; no commas within cells.
class Table {
 public:
  explicit Table(const std::string& name) {
    std::ifstream file(std::string(TEST_DATA) + "/open/" + name + ".csv");
    REQUIRE(file.good());
    for (std::string line; std::getline(file, line);) {
      std::vector<std::string> cells;
      std::istringstream parts(line);
      for (std::string cell; std::getline(parts, cell, ',');) {
        std::erase(cell, '"');
        std::erase(cell, '\r');
        cells.push_back(cell);
      }
      rows_.push_back(cells);
    }
  }

  std::vector<std::string> texts(const std::string& column) const {
    const auto at = static_cast<std::size_t>(std::ranges::find(rows_.front(), column) - rows_.front().begin());
    REQUIRE(at < rows_.front().size());
    std::vector<std::string> values;
    for (std::size_t row = 1; row < rows_.size(); ++row) values.push_back(rows_[row].at(at));
    return values;
  }
  std::vector<double> numbers(const std::string& column) const {
    std::vector<double> values;
    for (const std::string& text : texts(column)) values.push_back(std::stod(text));
    return values;
  }
  Labelled labels(const std::string& column) const { return labelled(texts(column)); }

 private:
  std::vector<std::vector<std::string>> rows_;
};

}  // namespace open_data
