#include "cellar.h"
#include "disk.h"
#include "raw_session.h"
#include "store/keep.h"

#include <sqlite3.h>

using namespace oddglass;
using testing::Cellar;
using testing::troubleOf;

namespace {

void addLots(SQLite::Database& db, int count) {
  for (int i = 0; i < count; ++i)
    store::run(db, "INSERT INTO taster (uid, name) VALUES (lower(hex(randomblob(16))), ?)", std::string(90, 'n') + std::to_string(i));
}

int people(store::Store& store) { return store.db().execAndGet("SELECT count(*) FROM taster").getInt(); }

}  // namespace

TEST_CASE("a full disk: nothing of the step is kept, what was there stays, and later steps work") {
  Cellar cellar;
  auto store = cellar.open();
  store::write(*store, [](SQLite::Database& db) { addLots(db, 5); });
  SECTION("SQLite's own limit") {
    const int pages = store->db().execAndGet("PRAGMA page_count").getInt();
    store->db().execAndGet("PRAGMA max_page_count = " + std::to_string(pages));
    CHECK(troubleOf([&] { store::write(*store, [](SQLite::Database& db) { addLots(db, 2000); }); }) == Trouble::diskFull);
    store->db().execAndGet("PRAGMA max_page_count = 1000000");
  }
  SECTION("the system's limit") {
    Trouble trouble{};
    {
      testing::SmallDisk small(std::filesystem::file_size(cellar.file) + 8192);
      trouble = troubleOf([&] { store::write(*store, [](SQLite::Database& db) { addLots(db, 20000); }); });
    }
    CHECK(trouble == Trouble::diskFull);
  }
  CHECK(sqlite3_get_autocommit(store->db().getHandle()) != 0);
  CHECK(people(*store) == 5);
  store::write(*store, [](SQLite::Database& db) { addLots(db, 1); });
  CHECK(people(*store) == 6);
  store.reset();
  store = cellar.open();
  CHECK(people(*store) == 6);
  CHECK(isWhole(*store));
}

TEST_CASE("a part of a step that fails for want of room takes the whole step with it") {
  Cellar cellar;
  auto store = cellar.open();
  const int pages = store->db().execAndGet("PRAGMA page_count").getInt();
  store->db().execAndGet("PRAGMA max_page_count = " + std::to_string(pages));
  CHECK(troubleOf([&] {
    store::write(*store, [&](SQLite::Database& db) {
      addLots(db, 1);
      store::write(*store, [](SQLite::Database& inner) { addLots(inner, 2000); });
    });
  }) == Trouble::diskFull);
  CHECK(people(*store) == 0);
  CHECK(sqlite3_get_autocommit(store->db().getHandle()) != 0);
}

TEST_CASE("a new store that finds no room leaves nothing behind") {
  Cellar cellar;
  Trouble trouble{};
  {
    testing::SmallDisk small(20000);
    trouble = troubleOf([&] { cellar.open(); });
  }
  CHECK(trouble == Trouble::diskFull);
  CHECK(testing::everythingIn(cellar.folder.path()).empty());
  CHECK(isWhole(*cellar.open()));
}

TEST_CASE("a backup that finds no room leaves no half file, is not noted, and the store goes on") {
  Cellar cellar;
  auto store = cellar.open();
  store::write(*store, [](SQLite::Database& db) { addLots(db, 2000); });
  Trouble trouble{};
  {
    testing::SmallDisk small(100000);
    trouble = troubleOf([&] { keepCopy(*store, cellar.clock, store::BackupReason::asked); });
  }
  CHECK(trouble == Trouble::diskFull);
  CHECK(std::filesystem::is_empty(cellar.folder / "backups"));
  CHECK(backups(*store).empty());
  CHECK(people(*store) == 2000);
  const auto copy = keepCopy(*store, cellar.clock, store::BackupReason::asked);
  CHECK(std::filesystem::exists(copy));
  CHECK(backups(*store).size() == 1);
}

TEST_CASE("a restore that finds no room leaves the store as it was") {
  Cellar cellar, other;
  cellar.open();
  {
    auto store = other.open();
    store::write(*store, [](SQLite::Database& db) { addLots(db, 2000); });
  }
  const auto before = testing::everythingIn(cellar.folder.path());
  Trouble trouble{};
  {
    testing::SmallDisk small(100000);
    trouble = troubleOf([&] { store::restore(cellar.file, other.file, cellar.clock, cellar.chance); });
  }
  CHECK(trouble == Trouble::diskFull);
  CHECK(testing::everythingIn(cellar.folder.path()) == before);
}
