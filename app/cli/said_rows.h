#pragma once

#include "cli/given.h"

#include <optional>
#include <vector>

namespace oddglass::cli {

/// One trial in which a signal or a noise was served.
struct SaidRow {
  bool isSignal = false;
  std::optional<bool> saidSignal;  ///< where there is a column of it
  std::optional<int> sure;         ///< where there is a column of it
};

/// Trials from a CSV table, one a row: the columns of what was served and what was said hold 1 for the signal and 0 for the noise, `sure` holds whole
/// numbers from 1 to `mostSure`. `said` and `sure` may be left out. A row in which an answer is missing is left out. Problems: badFile, empty.
std::vector<SaidRow> readSaid(const Given& file, const Given& signal, const Given& said, const Given& sure, int mostSure);

}  // namespace oddglass::cli
