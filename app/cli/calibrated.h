#pragma once

#include "cli/answer.h"
#include "stats/lean/expectation.h"

namespace oddglass::cli {

/// `brier, brier_of_50, log_score, expected_hits, hits, p_value, curve[]`, with "why" where something is null.
Json calibrationJson(const stats::Calibration& found);

}  // namespace oddglass::cli
