#pragma once

#include "cli/answer.h"
#include "cli/given.h"
#include "stats/methods.h"

namespace oddglass::cli {

/// The columns of a table of trials; `prefers` and `sure` may be left out.
struct TrialColumns {
  Given taster, correct, prefers, sure;
};

/// `count` from a CSV table, one trial a row. A missing answer leaves its row out. Problems: badFile with line and column, empty.
Json countFile(stats::Method method, const Given& file, const TrialColumns& columns, double alpha, double level, std::optional<double> limit);

}  // namespace oddglass::cli
