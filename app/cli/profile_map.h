#pragma once

#include "cli/answer.h"
#include "cli/long_table.h"
#include "stats/profile/components.h"
#include "stats/profile/resampled.h"
#include "stats/profile/rv.h"

#include <vector>

namespace oddglass::cli {

/// `components{}`: variances, shares, places, loadings and ellipses, with "why" where something is null.
Json componentsJson(const stats::ProfileComponents& found, const NamedScores& names, bool isScaled);
/// `rv[]`: one for each taster.
Json rvJson(const std::vector<stats::TasterRv>& found, const NamedScores& names);

/// `resampled{means[]}`: percentile intervals over resampled tasters, or why there are none.
Json resampledJson(const stats::ResampledProfile& found, const NamedScores& names);

}  // namespace oddglass::cli
