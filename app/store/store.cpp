#include "store/store.h"

#include "domain/problem.h"
#include "store/keep.h"
#include "store/lock.h"
#include "store/look.h"
#include "store/migrate.h"
#include "store/step.h"

#include <sqlite3.h>

#include <cstdlib>

namespace oddglass::store {
namespace {

namespace fs = std::filesystem;

void settle(SQLite::Database& db) {
  for (const char* pragma : {"PRAGMA foreign_keys = ON", "PRAGMA recursive_triggers = ON", "PRAGMA trusted_schema = OFF",
                             "PRAGMA cell_size_check = ON", "PRAGMA secure_delete = ON", "PRAGMA synchronous = FULL"})
    db.exec(pragma);
}

void writeAhead(SQLite::Database& db) {
  if (db.execAndGet("PRAGMA journal_mode = WAL").getString() != "wal")
    throw Problem(Trouble::storeFailed, "store", {{"text", "this folder cannot keep answers safe (no write-ahead log, perhaps a network folder)"}});
}

// While a file may still be refused, closing must not move what lies in its write-ahead log.
void keepLog(SQLite::Database& db, bool keep) { sqlite3_db_config(db.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, keep ? 1 : 0, nullptr); }

SQLite::Database connection(const fs::path& file, Access access) {
  if (access == Access::read) return openToRead(file);
  return {file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 3000};
}

}  // namespace

Store::Store(fs::path file, Access access) : file_(std::move(file)), access_(access) {}
Store::~Store() = default;

void Store::connect(Clock& clock, Chance& chance) {
  db_ = std::make_unique<SQLite::Database>(connection(file_, access_));
  keepLog(*db_, hasLog(file_));
  settle(*db_);
  refuseOthers(*db_, file_, "store");
  refuseDamaged(*db_, file_, "store");
  if (access_ == Access::read) {
    if (versionOf(*db_) < newestVersion())
      throw Problem(Trouble::storeFailed, "store", {{"text", "this file is older than the program: open it once in the program"}});
  } else {
    writeAhead(*db_);
    bringUp(*this, steps(), clock, chance);
    // What a crash, or a reader during an erasure, left in the log of writes goes into the file now.
    if (hasLog(file_)) db_->execAndGet("PRAGMA wal_checkpoint(TRUNCATE)");
  }
  keepLog(*db_, false);
}

std::unique_ptr<Store> Store::open(const fs::path& named, Access access, Clock& clock, Chance& chance) {
  std::error_code error;
  // One file has one name, whichever link it was reached by; else two locks would stand beside it.
  fs::path file = fs::weakly_canonical(fs::absolute(named), error);
  if (error) file = named;
  const bool isThere = fs::exists(file, error);
  if (isThere || access == Access::read) {
    if (!look(file, "store") && access == Access::read) throw Problem(Trouble::storeForeign, "store", {{"file", file.string()}});
    if (access == Access::write && !canWrite(file)) throw Problem(Trouble::storeReadOnly, "store", {{"file", file.string()}});
  } else if (fs::create_directories(file.parent_path(), error); error) {
    throw Problem(Trouble::storeReadOnly, "store", {{"file", file.string()}});
  }
  std::unique_ptr<Store> store(new Store(file, access));
  if (access == Access::write) store->lock_ = std::make_unique<Lock>(file);
  const bool hadIndex = fs::exists(beside(file, "-shm"), error);
  try {
    if (access == Access::write) clearHalfCopies(file);
    store->connect(clock, chance);
  } catch (...) {
    store->db_.reset();
    if (access == Access::write && !hadIndex) fs::remove(beside(file, "-shm"), error);
    if (access == Access::write && !isThere)
      for (const char* tail : {"", "-wal"}) fs::remove(beside(file, tail), error);
    try {
      throw;
    } catch (const SQLite::Exception& failure) {
      rethrow(failure, "store", file);
    }
  }
  return store;
}

fs::path usualFile() {
  const char* data = std::getenv("XDG_DATA_HOME");
  if (data && *data) return fs::path(data) / "oddglass" / "cellar.oddglass";
  const char* home = std::getenv("HOME");
  return fs::path(home && *home ? home : ".") / ".local" / "share" / "oddglass" / "cellar.oddglass";
}

}  // namespace oddglass::store
