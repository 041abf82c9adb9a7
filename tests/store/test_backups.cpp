#include "cellar.h"
#include "disk.h"
#include "raw_session.h"
#include "store/keep.h"
#include "store/migrate.h"

#include <algorithm>
#include <set>

using namespace oddglass;
using store::Access;
using store::BackupReason;
using testing::Cellar;
using testing::everythingIn;
using testing::problemOf;
using testing::troubleOf;

namespace {

void setCeiling(store::Store& store, int grams) {
  store::write(store, [&](SQLite::Database& db) { store::run(db, "UPDATE house_rules SET ceiling_g = ?", grams); });
}
int ceiling(store::Store& store) { return store.db().execAndGet("SELECT ceiling_g FROM house_rules").getInt(); }

std::filesystem::path copyWith(Cellar& cellar, int grams) {
  auto store = cellar.open();
  setCeiling(*store, grams);
  return keepCopy(*store, cellar.clock, BackupReason::asked);
}

}  // namespace

TEST_CASE("a backup holds the store as it is, knows of itself, and tells nothing by its name") {
  Cellar cellar;
  auto store = cellar.open();
  testing::RawSession session(*store, std::string(32, '1'), State::revealed);
  const auto copy = keepCopy(*store, cellar.clock, BackupReason::afterReveal);
  CHECK(copy.parent_path() == cellar.folder / "backups");
  // FixedClock starts at 1764000000 s, which is 2025-11-24 16:00:00 UTC (date -u -d @1764000000), and moves on by whole seconds.
  CHECK_THAT(copy.filename().string(), Catch::Matchers::Matches("cellar-20251124-1600\\d\\d-000-after_reveal\\.oddglass"));
  CHECK(everythingIn(cellar.folder / "backups").size() == 1);
  const auto opened = store::Store::open(copy, Access::read, cellar.clock, cellar.chance);
  CHECK(isWhole(*opened));
  CHECK(store::versionOf(opened->db()) == store::newestVersion());
  CHECK(opened->db().execAndGet("SELECT count(*) FROM log").getInt() == store->db().execAndGet("SELECT count(*) FROM log").getInt());
  const auto known = backups(*opened);
  REQUIRE(known.size() == 1);
  CHECK(known[0].file == copy);
  CHECK(known[0].reason == BackupReason::afterReveal);
  CHECK(known[0].isThere);
}

TEST_CASE("backups are listed newest first; lost ones are marked, unknown ones in the folder are found") {
  Cellar cellar;
  auto store = cellar.open();
  const auto first = keepCopy(*store, cellar.clock, BackupReason::asked);
  const auto second = cellar.folder / "elsewhere.oddglass";
  keepCopyAs(*store, cellar.clock, second, BackupReason::asked);
  std::filesystem::copy_file(first, cellar.folder / "backups" / "cellar-20200101-000000-000-before_restore.oddglass");
  testing::writeFile(cellar.folder / "backups" / "notes.txt", "not a backup");
  std::filesystem::remove(first);
  const auto known = backups(*store);
  REQUIRE(known.size() == 3);
  CHECK(known[0].reason == BackupReason::beforeRestore);
  CHECK(known[1].file == second);
  CHECK(known[1].isThere);
  CHECK(known[2].file == first);
  CHECK_FALSE(known[2].isThere);
}

TEST_CASE("a copy never takes another file's place") {
  Cellar cellar;
  auto store = cellar.open();
  const auto taken = cellar.folder / "letter.txt";
  testing::writeFile(taken, "dear");
  const Problem problem = problemOf([&] { keepCopyAs(*store, cellar.clock, taken, BackupReason::asked); });
  CHECK(problem.trouble() == Trouble::alreadyThere);
  CHECK(problem.argument() == "out");
  CHECK(testing::bytesOfFile(taken) == "dear");
  const Problem nowhere = problemOf([&] { keepCopyAs(*store, cellar.clock, cellar.folder / "no" / "where", BackupReason::asked); });
  CHECK(nowhere.trouble() == Trouble::storeReadOnly);
  CHECK(nowhere.argument() == "out");
  CHECK(backups(*store).empty());
}

TEST_CASE("what a killed backup has left is cleared away at the next opening") {
  Cellar cellar;
  cellar.open();
  std::filesystem::create_directory(cellar.folder / "backups");
  testing::writeFile(cellar.folder / "backups" / "cellar-20251124-160000-000-asked.oddglass.part", "half of somebody's words");
  testing::writeFile(cellar.folder / "backups" / "other.part", "somebody else's");
  cellar.open();
  CHECK(everythingIn(cellar.folder / "backups").size() == 1);
  CHECK(std::filesystem::exists(cellar.folder / "backups" / "other.part"));
}

TEST_CASE("an older file is copied before it is brought up") {
  Cellar cellar;
  auto store = cellar.open();
  setCeiling(*store, 33);
  auto steps = store::steps();
  const int before = store::newestVersion();
  SECTION("and stands at the new version") {
    steps.push_back([](SQLite::Database& db, Clock&, Chance&) { db.exec("CREATE TABLE later (x INTEGER) STRICT"); });
    bringUp(*store, steps, cellar.clock, cellar.chance);
    CHECK(store::versionOf(store->db()) == before + 1);
    CHECK(store->db().execAndGet("SELECT count(*) FROM later").getInt() == 0);
    bringUp(*store, steps, cellar.clock, cellar.chance);
  }
  SECTION("and stays at the old one when a step fails, with nothing of it") {
    steps.push_back([](SQLite::Database& db, Clock&, Chance&) {
      db.exec("CREATE TABLE later (x INTEGER) STRICT");
      db.exec("INSERT INTO nowhere VALUES (1)");
    });
    CHECK(troubleOf([&] { bringUp(*store, steps, cellar.clock, cellar.chance); }) == Trouble::storeFailed);
    CHECK(store::versionOf(store->db()) == before);
    CHECK(store->db().execAndGet("SELECT count(*) FROM sqlite_schema WHERE name = 'later'").getInt() == 0);
  }
  CHECK(ceiling(*store) == 33);
  const auto known = backups(*store);
  REQUIRE(known.size() == 1);
  CHECK(known[0].reason == BackupReason::beforeMigration);
  const auto copy = store::Store::open(known[0].file, Access::read, cellar.clock, cellar.chance);
  CHECK(store::versionOf(copy->db()) == before);
  CHECK(ceiling(*copy) == 33);
}

TEST_CASE("without room for the copy an older file is not brought up") {
  Cellar cellar;
  auto store = cellar.open();
  auto steps = store::steps();
  steps.push_back([](SQLite::Database& db, Clock&, Chance&) { db.exec("CREATE TABLE later (x INTEGER) STRICT"); });
  testing::writeFile(cellar.folder / "backups", "a file where the folder should be");
  CHECK(troubleOf([&] { bringUp(*store, steps, cellar.clock, cellar.chance); }) == Trouble::storeReadOnly);
  CHECK(store::versionOf(store->db()) == store::newestVersion());
}

TEST_CASE("a backup takes the store's place; what stood there is kept and known") {
  Cellar cellar;
  const auto early = copyWith(cellar, 11);
  const auto elsewhere = cellar.folder / "stick.oddglass";
  {
    auto store = cellar.open();
    setCeiling(*store, 22);
    keepCopyAs(*store, cellar.clock, elsewhere, BackupReason::asked);
    setCeiling(*store, 23);
  }
  const std::string bytes = testing::bytesOfFile(early);
  const auto former = store::restore(cellar.file, early, cellar.clock, cellar.chance);
  CHECK(testing::bytesOfFile(early) == bytes);
  auto store = cellar.open();
  CHECK(ceiling(*store) == 11);
  CHECK(isWhole(*store));
  CHECK(ceiling(*store::Store::open(former, Access::read, cellar.clock, cellar.chance)) == 23);
  std::set<std::filesystem::path> known;
  for (const auto& backup : backups(*store)) known.insert(backup.file);
  CHECK(known == std::set<std::filesystem::path>{early, elsewhere, former});
  for (const auto& [name, content] : everythingIn(cellar.folder.path())) {
    CHECK(name.find(".part") == std::string::npos);
    CHECK(name.find(".ready") == std::string::npos);
  }
}

TEST_CASE("a restore where there is no store makes one") {
  Cellar cellar, fresh;
  const auto copy = copyWith(cellar, 11);
  fresh.file = fresh.folder / "deep" / "down" / "cellar.oddglass";
  CHECK(store::restore(fresh.file, copy, fresh.clock, fresh.chance).empty());
  CHECK(ceiling(*fresh.open()) == 11);
}

TEST_CASE("a restore takes the place of a damaged, newer or foreign file, which is kept") {
  Cellar cellar, other;
  const auto copy = copyWith(other, 11);
  cellar.open();
  SECTION("damaged") { std::filesystem::resize_file(cellar.file, 9000); }
  SECTION("newer") { SQLite::Database(cellar.file.string(), SQLite::OPEN_READWRITE).exec("PRAGMA user_version = 99"); }
  SECTION("foreign") { testing::writeFile(cellar.file, "hello"); }
  const std::string bytes = testing::bytesOfFile(cellar.file);
  const auto former = store::restore(cellar.file, copy, cellar.clock, cellar.chance);
  CHECK(testing::bytesOfFile(former) == bytes);
  CHECK(ceiling(*cellar.open()) == 11);
}

TEST_CASE("a restore keeps commits that a kill has left in the log") {
  Cellar cellar, killed;
  const auto copy = copyWith(cellar, 11);
  {
    auto store = cellar.open();
    setCeiling(*store, 44);
    std::filesystem::copy_file(cellar.file, killed.file);
    std::filesystem::copy_file(cellar.file.string() + "-wal", killed.file.string() + "-wal");
  }
  const auto former = store::restore(killed.file, copy, killed.clock, killed.chance);
  CHECK(ceiling(*killed.open()) == 11);
  CHECK(ceiling(*store::Store::open(former, Access::write, killed.clock, killed.chance)) == 44);
}

TEST_CASE("a log whose own file is lost is not taken for the log of the copy; it is kept and named") {
  Cellar cellar, lost;
  const auto copy = copyWith(cellar, 11);
  {
    auto store = cellar.open();
    setCeiling(*store, 44);
    std::filesystem::copy_file(cellar.file.string() + "-wal", lost.file.string() + "-wal");
  }
  REQUIRE(std::filesystem::file_size(lost.file.string() + "-wal") > 0);
  CHECK(store::restore(lost.file, copy, lost.clock, lost.chance).empty());
  const auto store = lost.open();
  CHECK(ceiling(*store) == 11);
  CHECK(isWhole(*store));
  const auto known = backups(*store);
  CHECK(std::ranges::count_if(known, [&](const store::Backup& each) { return each.file.parent_path() == lost.folder / "backups" && each.isThere; }) == 1);
}

TEST_CASE("a copy that will not do is refused by name and nothing is touched") {
  Cellar cellar;
  const auto copy = copyWith(cellar, 11);
  auto wrong = cellar.folder / "wrong.oddglass";
  Trouble expected{};
  SECTION("missing") { expected = Trouble::storeMissing; }
  SECTION("foreign") {
    testing::writeFile(wrong, "hello");
    expected = Trouble::storeForeign;
  }
  SECTION("empty") {
    testing::writeFile(wrong, "");
    expected = Trouble::storeForeign;
  }
  SECTION("a folder") {
    std::filesystem::create_directory(wrong);
    expected = Trouble::storeForeign;
  }
  SECTION("newer") {
    std::filesystem::copy_file(copy, wrong);
    SQLite::Database(wrong.string(), SQLite::OPEN_READWRITE).exec("PRAGMA user_version = 99");
    expected = Trouble::storeNewer;
  }
  SECTION("cut short") {
    std::filesystem::copy_file(copy, wrong);
    std::filesystem::resize_file(wrong, std::filesystem::file_size(wrong) - 4096);
    expected = Trouble::storeDamaged;
  }
  SECTION("a broken reference") {
    std::filesystem::copy_file(copy, wrong);
    SQLite::Database db(wrong.string(), SQLite::OPEN_READWRITE);
    db.exec("PRAGMA foreign_keys = OFF");
    db.exec("INSERT INTO lot (uid, beverage_id, name, bottle_ml) VALUES ('" + std::string(32, 'a') + "', 4711, 'lost', 330)");
    expected = Trouble::storeDamaged;
  }
  SECTION("the store itself") {
    wrong = cellar.file;
    expected = Trouble::alreadyThere;
  }
  const auto before = everythingIn(cellar.folder.path());
  const Problem problem = problemOf([&] { store::restore(cellar.file, wrong, cellar.clock, cellar.chance); });
  CHECK(problem.trouble() == expected);
  CHECK(problem.argument() == "file");
  CHECK(everythingIn(cellar.folder.path()) == before);
}

TEST_CASE("a store that is open is not replaced") {
  Cellar cellar;
  const auto copy = copyWith(cellar, 11);
  auto store = cellar.open();
  setCeiling(*store, 12);
  CHECK(troubleOf([&] { store::restore(cellar.file, copy, cellar.clock, cellar.chance); }) == Trouble::storeInUse);
  CHECK(ceiling(*store) == 12);
  CHECK(everythingIn(cellar.folder / "backups").size() == 1);
}
