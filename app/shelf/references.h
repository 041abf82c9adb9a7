#pragma once

#include "domain/reference.h"
#include "store/store.h"

#include <vector>

namespace oddglass::shelf {

/// Bought drinks with their lots, by name; those put away only on request. What was poured of them is not read.
std::vector<Reference> references(store::Store& store, bool includeArchived = false);

}  // namespace oddglass::shelf
