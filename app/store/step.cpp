#include "store/step.h"

#include "domain/problem.h"

#include <sqlite3.h>

namespace oddglass::store {

void rethrow(const SQLite::Exception& error, const char* argument, const std::filesystem::path& file) {
  const auto because = [&](Trouble trouble) {
    Problem::Values values;
    if (!file.empty()) values["file"] = file.string();
    if (trouble == Trouble::storeFailed) values["text"] = error.what();
    return Problem(trouble, argument, values);
  };
  switch (error.getErrorCode()) {
    case SQLITE_FULL: throw because(Trouble::diskFull);
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_CANTOPEN: throw because(Trouble::storeReadOnly);
    case SQLITE_BUSY:
    case SQLITE_LOCKED: throw because(Trouble::storeInUse);
    case SQLITE_CORRUPT: throw because(Trouble::storeDamaged);
    case SQLITE_NOTADB: throw because(Trouble::storeForeign);
    case SQLITE_IOERR:
      // A full disk shows as a failed write too, and a file that was cut short as a read that ends early.
      if (error.getExtendedErrorCode() == SQLITE_IOERR_WRITE || error.getExtendedErrorCode() == SQLITE_IOERR_SHMSIZE) throw because(Trouble::diskFull);
      if (error.getExtendedErrorCode() == SQLITE_IOERR_SHORT_READ) throw because(Trouble::storeDamaged);
      [[fallthrough]];
    default: throw because(Trouble::storeFailed);
  }
}

void rethrow(const canon::Json::exception& error) { throw Problem(Trouble::storeDamaged, "store", {{"text", error.what()}}); }

bool isInside(SQLite::Database& db) { return sqlite3_get_autocommit(db.getHandle()) == 0; }

Writing::Writing(Store& store) : db_(store.db()), isPart_(isInside(store.db())) {
  if (store.access() != Access::write) throw Problem(Trouble::storeReadOnly, "store", {{"file", store.file().string()}});
  db_.exec(isPart_ ? "SAVEPOINT part" : "BEGIN IMMEDIATE");
}

Writing::~Writing() {
  // After a full disk SQLite may have rolled back already; then there is nothing to undo.
  if (done_ || !isInside(db_)) return;
  if (!isPart_) db_.tryExec("ROLLBACK");
  else if (db_.tryExec("ROLLBACK TO part") == SQLITE_OK) db_.tryExec("RELEASE part");
}

void Writing::commit() {
  db_.exec(isPart_ ? "RELEASE part" : "COMMIT");
  done_ = true;
}

}  // namespace oddglass::store
