#pragma once

#include "domain/about_lots.h"
#include "domain/series.h"
#include "store/store.h"

#include <vector>

namespace oddglass::session {

/// Reads only what is asked for, so that a store of many years costs no more than its sessions with these lots.
AboutLots aboutLots(store::Store& store, const std::vector<LotId>& lots);

/// The same of a series: its batch is lot 0, its control, where it has one, lot 1.
AboutLots aboutLots(store::Store& store, const Series& series);

}  // namespace oddglass::session
