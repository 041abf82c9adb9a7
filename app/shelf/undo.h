#pragma once

#include "domain/chance.h"
#include "domain/shelf_change.h"
#include "store/store.h"

#include <optional>

namespace oddglass::shelf {

/// From now on what is changed on the shelf through this store can be taken back, until the store is closed. For each changed row temporary triggers write
/// down the statement that undoes it (SQLite's documented way of undo), in memory, never in the file. What changes a session too, such as a seal or an
/// opened key, cannot be taken back. Where a table is only added to, taking back adds too: a withdrawn note, a corrected count, a retired word.
void rememberChanges(store::Store& store);

/// The last change that can still be taken back; nothing when there is none, or nothing is remembered.
std::optional<ShelfChange> lastChange(store::Store& store);

/// Takes back the change of that number, all of it or nothing. It must be the last one: Problem undoneAlready. Problem undoDoesNotFit when something that
/// came later needs what would go, such as a session that pours the lot. An erased person is in no change any more.
void takeBack(store::Store& store, Clock& clock, std::int64_t number);

}  // namespace oddglass::shelf
