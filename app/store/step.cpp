#include "store/step.h"

#include "domain/problem.h"

#include <sqlite3.h>

namespace oddglass::store {

void rethrow(const SQLite::Exception& error) {
  switch (error.getErrorCode()) {
    case SQLITE_FULL: throw Problem(Trouble::diskFull, "store");
    case SQLITE_READONLY:
    case SQLITE_PERM: throw Problem(Trouble::storeReadOnly, "store");
    case SQLITE_BUSY:
    case SQLITE_LOCKED: throw Problem(Trouble::storeInUse, "store");
    case SQLITE_CORRUPT: throw Problem(Trouble::storeDamaged, "store");
    case SQLITE_NOTADB: throw Problem(Trouble::storeForeign, "store");
    case SQLITE_CANTOPEN: throw Problem(Trouble::storeReadOnly, "store");
    case SQLITE_IOERR:
      // A full disk shows as a failed write too.
      if ((error.getExtendedErrorCode() & 0xFFFF) == SQLITE_IOERR_WRITE) throw Problem(Trouble::diskFull, "store");
      [[fallthrough]];
    default: throw Problem(Trouble::storeFailed, "store", {{"text", error.what()}});
  }
}

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
