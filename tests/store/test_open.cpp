#include "cellar.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "domain/state.h"
#include "store/keep.h"
#include "store/migrate.h"
#include "store/step.h"
#include "store/store.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::store;
using testing::Cellar;
using testing::troubleOf;

TEST_CASE("a new store is whole and has its settings") {
  Cellar cellar;
  auto store = cellar.open();
  CHECK(isWhole(*store));
  CHECK(versionOf(store->db()) == newestVersion());
  CHECK(store->db().execAndGet("PRAGMA journal_mode").getString() == "wal");
  CHECK(store->db().execAndGet("PRAGMA synchronous").getInt() == 2);
  CHECK(store->db().execAndGet("PRAGMA foreign_keys").getInt() == 1);
  CHECK(store->db().execAndGet("PRAGMA recursive_triggers").getInt() == 1);
  CHECK(store->db().execAndGet("PRAGMA secure_delete").getInt() == 1);
}

TEST_CASE("the store holds the same transitions as the program") {
  Cellar cellar;
  auto store = cellar.open();
  std::vector<Transition> rows;
  SQLite::Statement query(store->db(), "SELECT state, kind, state_after FROM transition");
  while (query.executeStep())
    rows.push_back({named<State>(query.getColumn(0).getString()).value(), named<Event>(query.getColumn(1).getString()).value(),
                    named<State>(query.getColumn(2).getString()).value()});
  CHECK(rows.size() == transitions().size());
  for (const Transition& row : transitions()) CHECK(std::find(rows.begin(), rows.end(), row) != rows.end());
}

TEST_CASE("a second writer is refused, a reader is not") {
  Cellar cellar;
  auto first = cellar.open();
  CHECK(troubleOf([&] { cellar.open(); }) == Trouble::storeInUse);
  auto reader = cellar.open(Access::read);
  CHECK(isWhole(*reader));
  CHECK(troubleOf([&] { write(*reader, [](SQLite::Database&) {}); }) == Trouble::storeReadOnly);
  first.reset();
  CHECK(isWhole(*cellar.open()));
}

TEST_CASE("a store may be named by its name alone, from the folder that one is in") {
  const auto before = std::filesystem::current_path();
  {
    Cellar cellar;
    std::filesystem::current_path(cellar.folder.path());
    CHECK(isWhole(*Store::open("cellar.oddglass", Access::write, cellar.clock, cellar.chance)));
    std::filesystem::current_path(before);
    CHECK(std::filesystem::exists(cellar.file));
    CHECK(isWhole(*cellar.open()));
  }
  CHECK(std::filesystem::current_path() == before);
}
