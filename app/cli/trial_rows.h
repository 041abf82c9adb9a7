#pragma once

#include "cli/count_file.h"

#include <string>
#include <vector>

namespace oddglass::cli {

/// One row of a table of trials.
struct TrialRow {
  std::string taster;
  bool right = false;
  std::optional<bool> prefersFirst;
  bool prefersNone = false;     ///< said to have no preference
  std::optional<int> sureness;  ///< 1 to 3
};

/// Rows with an answer, in the order of the file. Where the method is a preference, "right" means that the first was preferred; it may come from
/// the column `prefers` alone. That column holds first, second or none.
std::vector<TrialRow> readTrials(bool isPreference, const Given& file, const TrialColumns& columns);

/// One taster's trials.
struct TasterRows {
  std::string taster;
  std::vector<TrialRow> rows;
  int right() const;
  /// Of the rows taken (all, or only the right ones): how many more prefer the first than the second.
  int leanToFirst(bool rightOnly) const;
};

/// Tasters in alphabetical order.
std::vector<TasterRows> byTaster(const std::vector<TrialRow>& rows);

}  // namespace oddglass::cli
