#include "shelf/lots.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "shelf/beverages.h"
#include "shelf/fields.h"
#include "shelf/folded.h"
#include "shelf/rows.h"

#include <algorithm>

namespace oddglass::shelf {
namespace {

// The counts stand beside the lot: its bottles are the sum of what came and went, held is what sealed sessions set aside.
std::string lots(const char* rest) {
  return std::string(R"(SELECT l.uid, b.uid, l.name, l.packaged_on, l.best_before, l.bottle_ml, l.storage, l.source, l.archived_at,
       (SELECT coalesce(sum(bottles), 0) FROM stock_move WHERE lot_id = l.id AND kind NOT IN ('held', 'freed')),
       (SELECT coalesce(-sum(bottles), 0) FROM stock_move WHERE lot_id = l.id AND kind IN ('held', 'freed'))
  FROM lot l JOIN beverage b ON b.id = l.beverage_id )") + rest;
}

Lot lotOf(SQLite::Statement& row) {
  Lot lot;
  lot.id.text = row.getColumn(0).getString();
  lot.beverage.text = row.getColumn(1).getString();
  lot.name = row.getColumn(2).getString();
  lot.packagedOn = row.getColumn(3).getString();
  lot.bestBefore = row.getColumn(4).getString();
  lot.bottleMl = row.getColumn(5).getInt();
  lot.storage = row.getColumn(6).getString();
  lot.source = row.getColumn(7).getString();
  lot.archived = !row.getColumn(8).isNull();
  lot.bottles = row.getColumn(9).getInt();
  lot.held = row.getColumn(10).getInt();
  return lot;
}

std::vector<Lot> lotsFrom(SQLite::Statement& rows) {
  std::vector<Lot> all;
  while (rows.executeStep()) all.push_back(lotOf(rows));
  return all;
}

int bottlesNow(SQLite::Database& db, std::int64_t row) {
  auto sum = store::bound(db, "SELECT coalesce(sum(bottles), 0) FROM stock_move WHERE lot_id = ? AND kind NOT IN ('held', 'freed')", row);
  sum.executeStep();
  return sum.getColumn(0).getInt();
}

void book(SQLite::Database& db, std::int64_t row, Millis at, StockChange change, int bottles) {
  store::run(db, "INSERT INTO stock_move (lot_id, at, kind, bottles) VALUES (?, ?, ?, ?)", row, at, std::string(nameOf(change)), bottles);
}

}  // namespace

void checkLot(Lot& lot) {
  lot.name = text(lot.name, "name", 200, true);
  lot.packagedOn = day(lot.packagedOn, "packaged_on");
  lot.bestBefore = day(lot.bestBefore, "best_before");
  checkWhole(lot.bottleMl, 1, 100000, "bottle_ml");
  lot.storage = text(lot.storage, "storage", 200, false);
  lot.source = text(lot.source, "source", 200, false);
}

void writeLot(SQLite::Database& db, const Lot& lot) {
  auto put = store::bound(db, R"(INSERT INTO lot (uid, beverage_id, name, bottle_ml, storage, source, packaged_on, best_before) VALUES (?, ?, ?, ?, ?, ?, ?7, ?8)
      ON CONFLICT (uid) DO UPDATE SET name = ?3, bottle_ml = ?4, storage = ?5, source = ?6, packaged_on = ?7, best_before = ?8)",
                          lot.id.text, rowOf(db, Family::beverage, lot.beverage.text, "beverage"), lot.name, lot.bottleMl, lot.storage, lot.source);
  bindMaybe(put, 7, lot.packagedOn);
  bindMaybe(put, 8, lot.bestBefore);
  put.exec();
}

LotId save(store::Store& store, Chance& chance, Lot lot) {
  checkLot(lot);
  return store::write(store, [&](SQLite::Database& db) {
    if (lot.id.empty()) lot.id.text = newUid(chance);
    else rowOf(db, Family::lot, lot.id.text, "lot");
    writeLot(db, lot);
    return lot.id;
  });
}

std::vector<Lot> lotsOf(store::Store& store, const BeverageId& beverage, bool includeArchived) {
  return store::read(store, [&](SQLite::Database& db) {
    const auto row = rowOf(db, Family::beverage, beverage.text, "beverage");
    auto rows = store::bound(db, lots("WHERE l.beverage_id = ? AND (l.archived_at IS NULL OR ?) ORDER BY l.packaged_on DESC NULLS LAST, l.id DESC").c_str(),
                             row, includeArchived ? 1 : 0);
    return lotsFrom(rows);
  });
}

std::vector<Lot> lotsOldestFirst(store::Store& store, const BeverageId& beverage) {
  std::vector<Lot> all = lotsOf(store, beverage, true);
  std::ranges::reverse(all);
  std::ranges::stable_sort(all, {}, [](const Lot& lot) { return std::pair(lot.packagedOn.empty(), lot.packagedOn); });
  return all;
}

Lot lot(store::Store& store, const LotId& id) {
  return store::read(store, [&](SQLite::Database& db) {
    auto row = store::bound(db, lots("WHERE l.uid = ?").c_str(), id.text);
    if (!row.executeStep()) throw Problem(Trouble::unknown, "lot", {{"what", "lot"}, {"text", id.text}});
    return lotOf(row);
  });
}

std::vector<Lot> lotsToPour(store::Store& store) {
  return store::read(store, [&](SQLite::Database& db) {
    auto rows = store::bound(db, lots("WHERE l.archived_at IS NULL AND b.archived_at IS NULL ORDER BY b.origin, b.id, l.packaged_on DESC NULLS LAST, l.id DESC").c_str());
    return lotsFrom(rows);
  });
}

void archiveLot(store::Store& store, Clock& clock, const LotId& id) {
  store::write(store, [&](SQLite::Database& db) {
    const auto row = rowOf(db, Family::lot, id.text, "lot");
    auto used = store::bound(db, R"(SELECT 1 FROM session_lot p JOIN session_state s ON s.session_id = p.session_id
      WHERE p.lot_id = ? AND s.state IN ('sealed', 'tasting', 'closed'))", row);
    if (used.executeStep()) throw Problem(Trouble::stillInUse, "lot");
    store::run(db, "UPDATE lot SET archived_at = ? WHERE id = ? AND archived_at IS NULL", clock.now(), row);
  });
}

void bringBackLot(store::Store& store, const LotId& id) {
  store::write(store, [&](SQLite::Database& db) {
    store::run(db, "UPDATE lot SET archived_at = NULL WHERE id = ?", rowOf(db, Family::lot, id.text, "lot"));
  });
}

void move(store::Store& store, Clock& clock, const LotId& lot, StockChange change, int bottles) {
  if (change == StockChange::counted) throw Problem(Trouble::notAChoice, "change", {{"text", "counted"}, {"choices", "added, poured, given, lost"}});
  checkWhole(bottles, 1, 100000, "bottles");
  store::write(store, [&](SQLite::Database& db) {
    const auto row = rowOf(db, Family::lot, lot.text, "lot");
    if (change == StockChange::added) return book(db, row, clock.now(), change, bottles);
    const int now = bottlesNow(db, row);
    checkWhole(bottles, now > 0 ? 1 : 0, now, "bottles");
    book(db, row, clock.now(), change, -bottles);
  });
}

void count(store::Store& store, Clock& clock, const LotId& lot, int bottles) {
  checkWhole(bottles, 0, 100000, "bottles");
  store::write(store, [&](SQLite::Database& db) {
    const auto row = rowOf(db, Family::lot, lot.text, "lot");
    const int difference = bottles - bottlesNow(db, row);
    if (difference != 0) book(db, row, clock.now(), StockChange::counted, difference);
  });
}

std::vector<StockMove> moves(store::Store& store, const LotId& lot) {
  return store::read(store, [&](SQLite::Database& db) {
    auto rows = store::bound(db, "SELECT kind, bottles, at FROM stock_move WHERE lot_id = ? AND kind NOT IN ('held', 'freed') ORDER BY id DESC",
                             rowOf(db, Family::lot, lot.text, "lot"));
    std::vector<StockMove> all;
    while (rows.executeStep()) all.push_back({lot, known<StockChange>(rows.getColumn(0)), rows.getColumn(1).getInt(), rows.getColumn(2).getInt64()});
    return all;
  });
}

std::vector<int> freeToPour(store::Store& store, const std::vector<LotId>& ids) {
  std::vector<int> free;
  for (const LotId& id : ids) {
    const Lot one = lot(store, id);
    free.push_back(one.archived ? 0 : std::max(0, freeBottles(one)));
  }
  return free;
}

std::vector<LotId> lotsCalled(store::Store& store, const std::string& text) {
  std::vector<LotId> byId, byBoth, byDrink;
  for (const Lot& lot : lotsToPour(store)) {
    const std::string drink = beverage(store, lot.beverage).name;
    if (lot.id.text == text) byId.push_back(lot.id);
    if (folded(drink + ", " + lot.name) == folded(text)) byBoth.push_back(lot.id);
    if (folded(drink) == folded(text)) byDrink.push_back(lot.id);
  }
  return !byId.empty() ? byId : !byBoth.empty() ? byBoth : byDrink;
}

}  // namespace oddglass::shelf
