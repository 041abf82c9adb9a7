#pragma once

#include "domain/about_lots.h"
#include "domain/batch.h"
#include "domain/reference.h"
#include "domain/series.h"
#include "store/store.h"

#include <vector>

namespace oddglass::session {

/// Reads only what is asked for, so that a store of many years costs no more than its sessions with these lots.
AboutLots aboutLots(store::Store& store, const std::vector<LotId>& lots);

/// The batches' lots, and the other lots that stood beside them in revealed score sheets, as these sessions tell them.
BatchTastings batchTastings(store::Store& store, const std::vector<Batch>& batches);

/// Fills in what was poured of a reference's lots, and what was said of them where two or more of them stood in one session.
void readPoured(store::Store& store, Reference& reference);

/// The same of a series: its batch is lot 0, its control, where it has one, lot 1.
AboutLots aboutLots(store::Store& store, const Series& series);

}  // namespace oddglass::session
