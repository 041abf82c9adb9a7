#include "cellar.h"
#include "disk.h"
#include "raw_session.h"
#include "store/keep.h"
#include "store/lock.h"
#include "store/migrate.h"

#include <random>

using namespace oddglass;
using store::Access;
using testing::Cellar;
using testing::everythingIn;
using testing::problemOf;
using testing::troubleOf;

namespace {

// Opening is refused for both kinds of access, names the file, and leaves the folder as it was.
void refused(Cellar& cellar, Trouble trouble) {
  const auto before = everythingIn(cellar.folder.path());
  for (Access access : {Access::write, Access::read}) {
    const Problem problem = problemOf([&] { cellar.open(access); });
    CHECK(problem.trouble() == trouble);
    CHECK(problem.argument() == "store");
    CHECK(problem.values().at("file") == std::filesystem::weakly_canonical(cellar.file).string());
  }
  CHECK(everythingIn(cellar.folder.path()) == before);
}

void fill(Cellar& cellar) {
  auto store = cellar.open();
  for (int i = 0; i < 10; ++i) testing::RawSession(*store, std::string(31, 'a') + std::to_string(i), State::revealed);
}

// What a program of tomorrow would leave: a higher version, all of it in the file or still in the log beside it.
void makeNewer(Cellar& cellar) {
  cellar.open();
  SQLite::Database db(cellar.file.string(), SQLite::OPEN_READWRITE);
  db.exec("PRAGMA user_version = " + std::to_string(store::newestVersion() + 1));
}

}  // namespace

TEST_CASE("a newer file is refused and left untouched") {
  Cellar cellar;
  makeNewer(cellar);
  const Problem problem = problemOf([&] { cellar.open(); });
  CHECK(problem.values().at("version") == std::to_string(store::newestVersion() + 1));
  refused(cellar, Trouble::storeNewer);
}

TEST_CASE("a newer file whose last commits lie in its log is refused and left untouched") {
  Cellar cellar, source;
  source.open();
  {
    SQLite::Database db(source.file.string(), SQLite::OPEN_READWRITE);
    db.exec("PRAGMA user_version = 99");
    // As a kill would leave it.
    std::filesystem::copy_file(source.file, cellar.file);
    std::filesystem::copy_file(source.file.string() + "-wal", cellar.file.string() + "-wal");
  }
  const auto before = everythingIn(cellar.folder.path());
  CHECK(troubleOf([&] { cellar.open(); }) == Trouble::storeNewer);
  CHECK(everythingIn(cellar.folder.path()) == before);
}

TEST_CASE("foreign files are refused and left untouched") {
  Cellar cellar;
  SECTION("a short text") { testing::writeFile(cellar.file, "hello"); }
  SECTION("a long text") { testing::writeFile(cellar.file, std::string(100000, 'x')); }
  SECTION("one that only begins like a database") { testing::writeFile(cellar.file, "SQLite format 3" + std::string(5000, '\0')); }
  SECTION("zero bytes") { testing::writeFile(cellar.file, std::string(8192, '\0')); }
  SECTION("another program's database") {
    SQLite::Database db(cellar.file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    db.exec("CREATE TABLE notes (text TEXT)");
  }
  SECTION("another program's database with a log") {
    SQLite::Database db(cellar.file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    db.exec("PRAGMA application_id = 77");
    db.execAndGet("PRAGMA journal_mode = WAL");
  }
  SECTION("a folder") { std::filesystem::create_directory(cellar.file); }
  refused(cellar, Trouble::storeForeign);
}

TEST_CASE("a file of no bytes becomes a store; there is nothing in it to read") {
  Cellar cellar;
  testing::writeFile(cellar.file, "");
  CHECK(troubleOf([&] { cellar.open(Access::read); }) == Trouble::storeForeign);
  CHECK(std::filesystem::file_size(cellar.file) == 0);
  CHECK(isWhole(*cellar.open()));
}

TEST_CASE("a store that is not there cannot be read, and is not made by trying") {
  Cellar cellar;
  CHECK(troubleOf([&] { cellar.open(Access::read); }) == Trouble::storeMissing);
  CHECK(everythingIn(cellar.folder.path()).empty());
}

TEST_CASE("a truncated file is refused and left untouched") {
  Cellar cellar;
  fill(cellar);
  const auto size = std::filesystem::file_size(cellar.file);
  SECTION("by half") { std::filesystem::resize_file(cellar.file, size / 2); }
  SECTION("in the middle of a page") { std::filesystem::resize_file(cellar.file, size / 2 + 100); }
  SECTION("by its last page") { std::filesystem::resize_file(cellar.file, size - 4096); }
  SECTION("to its first page") { std::filesystem::resize_file(cellar.file, 4096); }
  refused(cellar, Trouble::storeDamaged);
}

TEST_CASE("a page that is overwritten is found at the opening, and the file left untouched") {
  Cellar cellar;
  fill(cellar);
  const std::string whole = testing::bytesOfFile(cellar.file);
  int damaged = 0;
  for (std::size_t page = 1; page < whole.size() / 4096; ++page) {
    std::string bytes = whole;
    for (std::size_t i = 0; i < 4096; ++i) bytes[page * 4096 + i] = '\x5A';
    testing::writeFile(cellar.file, bytes);
    refused(cellar, Trouble::storeDamaged);
    ++damaged;
  }
  CHECK(damaged > 10);
}

TEST_CASE("flipped bytes never crash the opening, and a refusal leaves the file untouched") {
  Cellar cellar;
  fill(cellar);
  const std::string whole = testing::bytesOfFile(cellar.file);
  std::mt19937 engine(20261125);
  int refusals = 0;
  for (int round = 0; round < 300; ++round) {
    std::string bytes = whole;
    for (int i = 0; i < 20; ++i) bytes[engine() % bytes.size()] ^= static_cast<char>(1 + engine() % 255);
    testing::writeFile(cellar.file, bytes);
    try {
      isWhole(*cellar.open(Access::read));
    } catch (const Problem& problem) {
      ++refusals;
      CAPTURE(problem.what());
      CHECK((problem.trouble() == Trouble::storeDamaged || problem.trouble() == Trouble::storeForeign || problem.trouble() == Trouble::storeNewer ||
             problem.trouble() == Trouble::storeFailed));
    }
    REQUIRE(testing::bytesOfFile(cellar.file) == bytes);
  }
  CHECK(refusals > 100);
}

TEST_CASE("a file that may not be written is refused for writing and can be read") {
  Cellar cellar;
  fill(cellar);
  const auto all = std::filesystem::perms::all;
  const auto readOnly = std::filesystem::perms(0444);
  std::filesystem::permissions(cellar.folder.path(), all);
  SECTION("the file") { std::filesystem::permissions(cellar.file, readOnly); }
  SECTION("the folder") {
    std::filesystem::permissions(cellar.file, readOnly);
    std::filesystem::permissions(cellar.folder.path(), std::filesystem::perms(0555));
  }
  const auto before = everythingIn(cellar.folder.path());
  int sessions = 0;
  bool wasNobody = false;
  Trouble trouble{};
  {
    testing::Nobody nobody;
    wasNobody = nobody.isDone();
    trouble = troubleOf([&] { cellar.open(); });
    sessions = cellar.open(Access::read)->db().execAndGet("SELECT count(*) FROM session").getInt();
  }
  REQUIRE(wasNobody);
  CHECK(trouble == Trouble::storeReadOnly);
  CHECK(sessions == 10);
  CHECK(everythingIn(cellar.folder.path()) == before);
  std::filesystem::permissions(cellar.folder.path(), all);
}

TEST_CASE("a file that another program holds is said to be in use; nothing is changed") {
  Cellar cellar;
  auto store = cellar.open();
  SQLite::Database other(cellar.file.string(), SQLite::OPEN_READWRITE);
  other.exec("BEGIN IMMEDIATE");
  store->db().setBusyTimeout(0);
  CHECK(troubleOf([&] { store::write(*store, [](SQLite::Database& db) { db.exec("DELETE FROM house_rules"); }); }) == Trouble::storeInUse);
  other.exec("ROLLBACK");
  CHECK(store->db().execAndGet("SELECT count(*) FROM house_rules").getInt() == 1);
  store::write(*store, [](SQLite::Database& db) { db.exec("UPDATE house_rules SET ceiling_g = 25"); });
  CHECK(store->db().execAndGet("SELECT ceiling_g FROM house_rules").getInt() == 25);
}

TEST_CASE("one store has one lock, whichever name it goes by") {
  Cellar cellar;
  auto store = cellar.open();
  const auto link = cellar.folder / "link.oddglass";
  std::filesystem::create_symlink(cellar.file, link);
  CHECK(troubleOf([&] { store::Store::open(link, Access::write, cellar.clock, cellar.chance); }) == Trouble::storeInUse);
  store.reset();
  CHECK(isWhole(*store::Store::open(link, Access::write, cellar.clock, cellar.chance)));
}

TEST_CASE("a closed store is one file") {
  Cellar cellar;
  cellar.open();
  const auto files = [&] {
    std::vector<std::string> names;
    for (const auto& [name, bytes] : everythingIn(cellar.folder.path())) names.push_back(name);
    return names;
  };
  CHECK(files() == std::vector<std::string>{cellar.file.string()});
  const std::string bytes = testing::bytesOfFile(cellar.file);
  CHECK(cellar.open(Access::read)->db().execAndGet("SELECT count(*) FROM log").getInt() == 0);
  CHECK(files() == std::vector<std::string>{cellar.file.string()});
  CHECK(testing::bytesOfFile(cellar.file) == bytes);
}

TEST_CASE("a lock file that a kill has left keeps nobody out") {
  Cellar cellar;
  testing::writeFile(cellar.file.string() + ".lock", "");
  CHECK(isWhole(*cellar.open()));
}
