#pragma once

#include "domain/chance.h"
#include "domain/shelf.h"
#include "store/store.h"

#include <string_view>
#include <vector>

namespace oddglass::shelf {

/// Puts a lot on the shelf (empty id), or changes the one with this id; a lot never changes its beverage. `bottles` and `held` are not read.
/// Problems by argument: beverage (unknown), name (empty, tooLong), packaged_on and best_before (notADay), bottle_ml (outOfRange 1 to 100000),
/// storage and source (tooLong, 200 letters), lot (unknown).
LotId save(store::Store& store, Chance& chance, Lot lot);

/// Lots of one drink with their counts, the newest bottling first, those without a day last.
std::vector<Lot> lotsOf(store::Store& store, const BeverageId& beverage, bool includeArchived = false);

/// All of them, those put away too, the oldest bottling first, those without a day last.
std::vector<Lot> lotsOldestFirst(store::Store& store, const BeverageId& beverage);

/// One lot with its counts; Problem unknown ("lot").
Lot lot(store::Store& store, const LotId& id);

/// Every lot that can be poured: neither it nor its drink is archived. By drink, then as `lotsOf`.
std::vector<Lot> lotsToPour(store::Store& store);

/// The lots that a text may mean: that of an id, else all called "drink, lot", else all of the drink of that name. Names are compared folded.
std::vector<LotId> lotsCalled(store::Store& store, const std::string& text);

/// Takes a lot out of the lists, or puts it back. Problem stillInUse while a sealed session that is not over pours it.
void archiveLot(store::Store& store, Clock& clock, const LotId& id);
void bringBackLot(store::Store& store, const LotId& id);

/// Bottles of a lot that no sealed session needs.
inline int freeBottles(const Lot& lot) { return lot.bottles - lot.held; }

/// For each of these lots its free bottles; none for a lot that is put away. Problem unknown ("lot").
std::vector<int> freeToPour(store::Store& store, const std::vector<LotId>& lots);

/// Books a change of stock. `bottles` is the number that came or went, above 0, whatever the change; its sign follows from the change.
/// Problems: lot (unknown), bottles (outOfRange 1 to 100000, and when more would go than there are), change (notAChoice for counted: say `count`).
void move(store::Store& store, Clock& clock, const LotId& lot, StockChange change, int bottles);

/// "There are `bottles` now": books the difference to what the moves say, when there is one. 0 to 100000.
void count(store::Store& store, Clock& clock, const LotId& lot, int bottles);

/// The moves of a lot, newest first. What sealed sessions hold is not among them.
std::vector<StockMove> moves(store::Store& store, const LotId& lot);

}  // namespace oddglass::shelf
