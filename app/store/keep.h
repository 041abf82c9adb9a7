#pragma once

#include "store/store.h"

#include <string>
#include <vector>

namespace oddglass::store {

enum class BackupReason { asked, beforeMigration, afterReveal, beforeRestore };

/// A copy of the store that was made, so that an erasure can name those that still hold the person.
struct Backup {
  std::filesystem::path file;
  Millis at = 0;
  BackupReason reason = BackupReason::asked;
  bool isThere = false;
};

/// Copies the store as it is now into the folder "backups" beside it, under a name made of the day and time, and says where. The store notes the copy
/// first, so that the copy knows of itself. Throws Problem diskFull or storeReadOnly; half a copy is taken away again.
std::filesystem::path keepCopy(Store& store, Clock& clock, BackupReason reason);

/// The same under a name of the caller's. Both need a store opened to write: a copy that is not noted could not be named by an erasure.
/// Refuses a file that is there already (Problem alreadyThere); all its problems name "out".
void keepCopyAs(Store& store, Clock& clock, const std::filesystem::path& copy, BackupReason reason);

/// Copies that were made and those that lie in the folder "backups", newest first.
std::vector<Backup> backups(Store& store);

/// Takes away what a backup that was cut short has left in the folder "backups". Only while the lock of the store is held.
void clearHalfCopies(const std::filesystem::path& store);

/// Puts a backup in the store's place, an older version too. The store must be closed; what stood there, whatever it was, is kept as a backup first,
/// and the backups it knew of stay known. The copy is checked before anything is touched: Problem storeForeign, storeNewer, storeDamaged, storeMissing,
/// alreadyThere for the store itself (all name "file"). Then storeInUse, diskFull, storeReadOnly; the former store stands then as it did.
/// Returns where the former store was kept (empty when there was none).
std::filesystem::path restore(const std::filesystem::path& store, const std::filesystem::path& copy, Clock& clock, Chance& chance);

/// True when SQLite finds the file whole (integrity and foreign keys).
bool isWhole(Store& store);

}  // namespace oddglass::store
