#pragma once

#include "domain/shelf.h"
#include "store/store.h"

namespace oddglass::shelf {

/// Puts a record from elsewhere on the shelf under its own id, checked like one that is typed in. When a record with this id is here already it
/// stays as it is and false comes back. Problem notAChoice ("id") when the id is not 32 hex digits.
/// Beverages and people come before the lots and notes that name them.
bool bring(store::Store& store, Clock& clock, Beverage beverage);
bool bring(store::Store& store, Clock& clock, Lot lot);
bool bring(store::Store& store, Note note);

/// A person who comes as the brewer is that only while nobody here is.
bool bring(store::Store& store, Clock& clock, Taster taster);

}  // namespace oddglass::shelf
