#pragma once

#include "report/json_plan.h"
#include "stats/alike/paired_alike.h"
#include "stats/estimated.h"
#include "stats/reason.h"

#include <string>

namespace oddglass::report {

/// Why a number cannot be had, for the "why" beside a null.
std::string why(stats::Reason reason);

/// `estimate, se, df, low, high, p_value`, with "why" where something is null; `noSpread` stands in for the usual words where there is no spread.
Json estimatedJson(const stats::Estimated& found, const std::string& noSpread = {});

/// `difference, low, high, limit, p_value, verdict, tasters`, with "why" where something is null. `shown` is the verdict where the limit is kept.
Json alikeJson(const stats::Alike& found, double limit, const std::string& shown);

}  // namespace oddglass::report
