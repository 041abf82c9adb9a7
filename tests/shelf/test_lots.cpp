#include "cellar.h"
#include "raw_session.h"
#include "shelf/beverages.h"
#include "shelf/bring.h"
#include "shelf/lots.h"

using namespace oddglass;
using namespace oddglass::shelf;
using testing::Cellar;
using testing::problemOf;
using testing::troubleOf;

namespace {

struct Rack : Cellar {
  std::unique_ptr<store::Store> open_ = open();
  store::Store& store = *open_;
  BeverageId drink = save(store, chance, named("Hedge Mead"));

  static Beverage named(const std::string& name) {
    Beverage beverage;
    beverage.name = name;
    return beverage;
  }

  Lot bottles(const std::string& name = "vintage 2024") const {
    Lot lot;
    lot.beverage = drink;
    lot.name = name;
    lot.packagedOn = "2024-11-02";
    lot.bestBefore = "2027-01-31";
    lot.bottleMl = 750;
    lot.storage = "cellar, 12 C";
    lot.source = "the shop on the corner";
    return lot;
  }

  Lot saved(Lot lot) {
    lot.id = save(store, chance, lot);
    return lot;
  }
};

using Refusal = std::pair<Trouble, std::string>;

}  // namespace

TEST_CASE("a lot comes back as it was saved, with its counts") {
  Rack rack;
  Lot lot = rack.saved(rack.bottles());
  CHECK(shelf::lot(rack.store, lot.id) == lot);
  lot.packagedOn.clear();
  lot.bestBefore.clear();
  lot.bottleMl = 100000;
  lot.source.clear();
  lot.name = std::string(200, '"');
  CHECK(save(rack.store, rack.chance, lot) == lot.id);
  CHECK(shelf::lot(rack.store, lot.id) == lot);
}

TEST_CASE("every wrong field of a lot is named") {
  Rack rack;
  const auto refused = [&](auto change) {
    Lot lot = rack.bottles();
    change(lot);
    const Problem problem = problemOf([&] { save(rack.store, rack.chance, lot); });
    CHECK(lotsOf(rack.store, rack.drink, true).empty());
    return Refusal{problem.trouble(), problem.argument()};
  };
  CHECK(refused([](Lot& l) { l.beverage.text = "x"; }) == Refusal{Trouble::unknown, "beverage"});
  CHECK(refused([](Lot& l) { l.name = "\n"; }) == Refusal{Trouble::empty, "name"});
  CHECK(refused([](Lot& l) { l.name = std::string(201, 'a'); }) == Refusal{Trouble::tooLong, "name"});
  CHECK(refused([](Lot& l) { l.packagedOn = "2024-02-30"; }) == Refusal{Trouble::notADay, "packaged_on"});
  CHECK(refused([](Lot& l) { l.packagedOn = "14.3.2024"; }) == Refusal{Trouble::notADay, "packaged_on"});
  CHECK(refused([](Lot& l) { l.bestBefore = "2024"; }) == Refusal{Trouble::notADay, "best_before"});
  CHECK(refused([](Lot& l) { l.bottleMl = 0; }) == Refusal{Trouble::outOfRange, "bottle_ml"});
  CHECK(refused([](Lot& l) { l.bottleMl = 100001; }) == Refusal{Trouble::outOfRange, "bottle_ml"});
  CHECK(refused([](Lot& l) { l.storage = std::string(201, 'a'); }) == Refusal{Trouble::tooLong, "storage"});
  CHECK(refused([](Lot& l) { l.source = std::string(201, 'a'); }) == Refusal{Trouble::tooLong, "source"});
  CHECK(refused([](Lot& l) { l.id.text = std::string(32, 'e'); }) == Refusal{Trouble::unknown, "lot"});
  CHECK(troubleOf([&] { shelf::lot(rack.store, {"x"}); }) == Trouble::unknown);
  CHECK(troubleOf([&] { lotsOf(rack.store, {"x"}); }) == Trouble::unknown);
}

TEST_CASE("bottles are the sum of what came and went") {
  Rack rack;
  const LotId id = rack.saved(rack.bottles()).id;
  const auto now = [&] { return shelf::lot(rack.store, id).bottles; };
  move(rack.store, rack.clock, id, StockChange::added, 12);
  move(rack.store, rack.clock, id, StockChange::given, 2);
  move(rack.store, rack.clock, id, StockChange::lost, 1);
  move(rack.store, rack.clock, id, StockChange::poured, 3);
  CHECK(now() == 6);
  count(rack.store, rack.clock, id, 9);
  CHECK(now() == 9);
  count(rack.store, rack.clock, id, 9);
  count(rack.store, rack.clock, id, 4);
  CHECK(now() == 4);
  std::vector<std::pair<StockChange, int>> booked;
  for (const StockMove& each : moves(rack.store, id)) {
    CHECK(each.lot == id);
    CHECK(each.at > 0);
    booked.emplace_back(each.change, each.bottles);
  }
  CHECK(booked == std::vector<std::pair<StockChange, int>>{{StockChange::counted, -5}, {StockChange::counted, 3}, {StockChange::poured, -3},
                                                           {StockChange::lost, -1}, {StockChange::given, -2}, {StockChange::added, 12}});
  const auto found = find(rack.store, "hedge");
  REQUIRE(found.size() == 1);
  CHECK(found[0].lots == 1);
  CHECK(found[0].bottles == 4);
}

TEST_CASE("moves that cannot be are refused") {
  Rack rack;
  const LotId id = rack.saved(rack.bottles()).id;
  move(rack.store, rack.clock, id, StockChange::added, 5);
  const auto refused = [&](StockChange change, int bottles) {
    const Problem problem = problemOf([&] { move(rack.store, rack.clock, id, change, bottles); });
    CHECK(shelf::lot(rack.store, id).bottles == 5);
    return Refusal{problem.trouble(), problem.argument()};
  };
  CHECK(refused(StockChange::given, 6) == Refusal{Trouble::outOfRange, "bottles"});
  CHECK(refused(StockChange::lost, 0) == Refusal{Trouble::outOfRange, "bottles"});
  CHECK(refused(StockChange::added, -1) == Refusal{Trouble::outOfRange, "bottles"});
  CHECK(refused(StockChange::added, 100001) == Refusal{Trouble::outOfRange, "bottles"});
  CHECK(refused(StockChange::counted, 1) == Refusal{Trouble::notAChoice, "change"});
  CHECK(problemOf([&] { count(rack.store, rack.clock, id, -1); }).argument() == "bottles");
  CHECK(troubleOf([&] { move(rack.store, rack.clock, {"x"}, StockChange::added, 1); }) == Trouble::unknown);
  CHECK(troubleOf([&] { count(rack.store, rack.clock, {"x"}, 1); }) == Trouble::unknown);
  move(rack.store, rack.clock, id, StockChange::lost, 5);
  CHECK(shelf::lot(rack.store, id).bottles == 0);
}

TEST_CASE("what sealed sessions hold stands apart from what there is") {
  Rack rack;
  testing::RawSession session(rack.store, std::string(32, '1'));
  const LotId id{std::string(32, 'c')};
  move(rack.store, rack.clock, id, StockChange::added, 10);
  store::write(rack.store, [&](SQLite::Database& db) {
    store::run(db, "INSERT INTO stock_move (lot_id, session_id, at, kind, bottles) SELECT id, ?, 0, 'held', -4 FROM lot WHERE uid = ?", session.row, id.text);
  });
  CHECK(shelf::lot(rack.store, id).bottles == 10);
  CHECK(shelf::lot(rack.store, id).held == 4);
  CHECK(freeBottles(shelf::lot(rack.store, id)) == 6);
  CHECK(moves(rack.store, id).size() == 1);
  store::write(rack.store, [&](SQLite::Database& db) {
    store::run(db, "INSERT INTO stock_move (lot_id, session_id, at, kind, bottles) SELECT id, ?, 0, 'freed', 4 FROM lot WHERE uid = ?", session.row, id.text);
  });
  CHECK(shelf::lot(rack.store, id).held == 0);
}

TEST_CASE("lots are listed by their day, the newest first, archived ones when asked for") {
  Rack rack;
  Lot first = rack.bottles("first"), second = rack.bottles("second"), undated = rack.bottles("undated");
  first.packagedOn = "2023-01-01";
  undated.packagedOn.clear();
  undated = rack.saved(undated);
  first = rack.saved(first);
  second = rack.saved(second);
  const auto names = [](const std::vector<Lot>& lots) {
    std::vector<std::string> result;
    for (const Lot& each : lots) result.push_back(each.name);
    return result;
  };
  CHECK(names(lotsOf(rack.store, rack.drink)) == std::vector<std::string>{"second", "first", "undated"});
  archiveLot(rack.store, rack.clock, second.id);
  CHECK(names(lotsOf(rack.store, rack.drink)) == std::vector<std::string>{"first", "undated"});
  CHECK(lotsOf(rack.store, rack.drink, true).size() == 3);
  CHECK(names(lotsToPour(rack.store)) == std::vector<std::string>{"first", "undated"});
  archive(rack.store, rack.clock, rack.drink);
  CHECK(lotsToPour(rack.store).empty());
  bringBackLot(rack.store, second.id);
  CHECK(lotsOf(rack.store, rack.drink).size() == 3);
}

TEST_CASE("a lot from elsewhere needs its drink") {
  Rack rack;
  Lot lot = rack.bottles();
  lot.id.text = std::string(32, '7');
  lot.archived = true;
  CHECK(bring(rack.store, rack.clock, lot));
  CHECK_FALSE(bring(rack.store, rack.clock, lot));
  CHECK(shelf::lot(rack.store, lot.id) == lot);
  lot.id.text = std::string(32, '8');
  lot.beverage.text = std::string(32, '9');
  CHECK(problemOf([&] { bring(rack.store, rack.clock, lot); }).argument() == "beverage");
}
