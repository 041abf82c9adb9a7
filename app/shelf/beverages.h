#pragma once

#include "domain/chance.h"
#include "domain/shelf.h"
#include "store/store.h"

#include <string_view>
#include <vector>

namespace oddglass::shelf {

/// One line of the shelf: a drink and what there is of it. Counts are bottles over all lots that are not archived.
struct OnShelf {
  Beverage beverage;
  int lots = 0;
  int bottles = 0;
  int held = 0;  ///< set aside for sealed sessions, by the worst case over all orders
  int free() const { return bottles - held; }
};

/// Puts a drink on the shelf (empty id), or changes the one with this id. Nothing else of it changes: archiving has its own commands.
/// Problems by argument: name (empty, tooLong), og and fg (outOfRange, in specific gravity; finalAboveOriginal), abv (outOfRange, in per cent;
/// empty when only abv_from is given), abv_from (empty when a strength has no source), allergens (empty when they are said to be known),
/// ingredients (notAChoice when allergens stand beside "none" or "not known"), makers (unknown; notAChoice for a reference), beverage (unknown).
BeverageId save(store::Store& store, Chance& chance, Beverage beverage);

/// Drinks whose name holds `text`, compared without case and in one Unicode form; all of them for an empty text. Batches first, then by name.
std::vector<OnShelf> find(store::Store& store, std::string_view text, bool includeArchived = false);

/// One drink; Problem unknown ("beverage").
Beverage beverage(store::Store& store, const BeverageId& id);

/// Takes a drink out of the lists; it and its lots stay in the store. Problem stillInUse while a sealed session that is not over pours it.
void archive(store::Store& store, Clock& clock, const BeverageId& id);
void bringBack(store::Store& store, const BeverageId& id);

}  // namespace oddglass::shelf
