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

/// Copies the store as it is now into the folder "backups" beside it, under a name made of the day and time, and says where.
/// Throws Problem diskFull or storeReadOnly; half a copy is taken away again.
std::filesystem::path keepCopy(Store& store, Clock& clock, BackupReason reason);

/// The same under a name of the caller's. Refuses a file that is there already (Problem alreadyThere).
void keepCopyAs(Store& store, Clock& clock, const std::filesystem::path& copy, BackupReason reason);

/// Copies known to have been made, newest first.
std::vector<Backup> backups(Store& store);

/// Puts a backup in the store's place. The store must be closed; what stood there is kept as a backup first. The copy is checked before anything
/// is touched: Problem storeForeign, storeNewer, storeDamaged, storeMissing. Returns where the former store was kept (empty when there was none).
std::filesystem::path restore(const std::filesystem::path& store, const std::filesystem::path& copy, Clock& clock, Chance& chance);

/// True when SQLite finds the file whole (integrity and foreign keys).
bool isWhole(Store& store);

}  // namespace oddglass::store
