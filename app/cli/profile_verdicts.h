#pragma once

#include "cli/answer.h"
#include "cli/long_table.h"
#include "stats/profile/profile.h"

#include <vector>

namespace oddglass::cli {

/// `descriptors[]`: F test and differences of each, with "why" where something is null.
Json descriptorsJson(const std::vector<stats::DescriptorProfile>& profile, const NamedScores& names, const stats::ProfileQuestion& question);

}  // namespace oddglass::cli
