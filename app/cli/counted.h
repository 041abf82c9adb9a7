#pragma once

#include "cli/answer.h"
#include "stats/choice.h"

#include <optional>

namespace oddglass::cli {

/// What one count of right answers says, with the keys of `count`. `limit` is the share for alikeness, where one is set.
Json countedJson(stats::Method method, int correct, int trials, double alpha, double level, std::optional<double> limit);

/// A preference beside those who have none: the test without them, and how splitting their votes would change it.
Json noPreferenceJson(int first, int second, int none, double alpha);

/// {estimate, low, high}
Json estimateJson(const stats::Estimate& estimate);

}  // namespace oddglass::cli
