#include "store/store.h"

#include "domain/problem.h"
#include "store/keep.h"
#include "store/lock.h"
#include "store/migrate.h"
#include "store/step.h"

#include <cstdlib>
#include <fstream>

namespace oddglass::store {
namespace {

namespace fs = std::filesystem;

void settle(SQLite::Database& db, Access access) {
  db.setBusyTimeout(3000);
  for (const char* pragma : {"PRAGMA foreign_keys = ON", "PRAGMA recursive_triggers = ON", "PRAGMA trusted_schema = OFF",
                             "PRAGMA cell_size_check = ON", "PRAGMA secure_delete = ON", "PRAGMA synchronous = FULL"})
    db.exec(pragma);
  if (access == Access::write && db.execAndGet("PRAGMA journal_mode = WAL").getString() != "wal")
    throw Problem(Trouble::storeFailed, "store", {{"text", "this folder cannot keep answers safe (no write-ahead log, perhaps a network folder)"}});
}

// Before SQLite is asked: its own header says whether the file is a database at all.
void refuseForeign(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  char head[16] = {};
  in.read(head, sizeof head);
  if (in.gcount() == 0 && fs::is_regular_file(file) && fs::file_size(file) == 0) return;
  if (!in || std::string_view(head, 15) != "SQLite format 3") throw Problem(Trouble::storeForeign, "store", {{"file", file.string()}});
}

void refuseOthers(SQLite::Database& db, const fs::path& file) {
  const int version = versionOf(db);
  const int owner = db.execAndGet("PRAGMA application_id").getInt();
  const bool isEmpty = version == 0 && owner == 0 && db.execAndGet("SELECT count(*) FROM sqlite_schema").getInt() == 0;
  if (isEmpty) return;
  if (owner != applicationId) throw Problem(Trouble::storeForeign, "store", {{"file", file.string()}});
  if (version > newestVersion())
    throw Problem(Trouble::storeNewer, "store", {{"file", file.string()}, {"version", std::to_string(version)}});
}

}  // namespace

Store::Store(fs::path file, Access access) : file_(std::move(file)), access_(access) {}
Store::~Store() = default;

std::unique_ptr<Store> Store::open(const fs::path& file, Access access, Clock& clock, Chance& chance) {
  std::error_code gone;
  const bool isThere = fs::exists(file, gone);
  if (!isThere && access == Access::read) throw Problem(Trouble::storeMissing, "store", {{"file", file.string()}});
  if (isThere && !fs::is_regular_file(file, gone)) throw Problem(Trouble::storeForeign, "store", {{"file", file.string()}});
  if (isThere) refuseForeign(file);
  if (!isThere && file.has_parent_path()) {
    fs::create_directories(file.parent_path(), gone);
    if (gone) throw Problem(Trouble::storeReadOnly, "store", {{"file", file.string()}});
  }
  std::unique_ptr<Store> store(new Store(file, access));
  if (access == Access::write) store->lock_ = std::make_unique<Lock>(file);
  try {
    {
      // Looked at before anything can be written: a newer or foreign file is left untouched.
      if (isThere && fs::file_size(file) > 0) {
        SQLite::Database look(file.string(), SQLite::OPEN_READONLY, 3000);
        refuseOthers(look, file);
      }
    }
    const int flags = access == Access::write ? SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE : SQLite::OPEN_READONLY;
    store->db_ = std::make_unique<SQLite::Database>(file.string(), flags);
    settle(*store->db_, access);
    const int version = versionOf(*store->db_);
    if (access == Access::read) {
      if (version < newestVersion()) throw Problem(Trouble::storeFailed, "store", {{"text", "this file is older than the program: open it once in the program"}});
    } else if (version < newestVersion()) {
      if (version > 0) keepCopy(*store, clock, BackupReason::beforeMigration);
      migrate(*store->db_, clock, chance);
    }
    store->db_->execAndGet("SELECT count(*) FROM log");
  } catch (const SQLite::Exception& error) {
    rethrow(error);
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
