#pragma once

#include "stats/trend/trend.h"

namespace oddglass::stats {

/// Slope and variances where visits are missing: visit ~ age + (1 | taster) + (1 | session) by REML, Satterthwaite df. Fewer than 3 sessions, one age,
/// no rows to spare: as much as can be told, with the reason.
void fitIncomplete(const Visits& visits, double level, Estimated& slope, TimeVariance& variance);

}  // namespace oddglass::stats
