#pragma once

#include "domain/shelf.h"
#include "store/store.h"

namespace oddglass::shelf {

/// What the host has settled for this machine.
HouseRules rules(store::Store& store);

/// Settles it anew. Problems: ceiling_grams (outOfRange 1 to 100), country (notAChoice unless two capital letters).
void settle(store::Store& store, HouseRules rules);

}  // namespace oddglass::shelf
