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

Writing::Writing(Store& store) : db_(store.db()) {
  if (store.access() != Access::write) throw Problem(Trouble::storeReadOnly, "store");
  db_.exec("BEGIN IMMEDIATE");
}

Writing::~Writing() {
  if (done_) return;
  // After a full disk SQLite may have rolled back already; then there is nothing to undo.
  if (sqlite3_get_autocommit(db_.getHandle()) == 0) db_.tryExec("ROLLBACK");
}

void Writing::commit() {
  db_.exec("COMMIT");
  done_ = true;
}

}  // namespace oddglass::store
