#pragma once

#include "domain/known.h"
#include "store/store.h"

namespace oddglass::session {

/// The revealed sessions about a known difference. Read in one view, without the rest of the sessions. Problem storeDamaged.
KnownDifferences knownDifferences(store::Store& store);

}  // namespace oddglass::session
