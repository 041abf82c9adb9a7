#pragma once

#include "store/keep.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace oddglass::store {

/// Writes the database as it is now into a new file: all of it is on disk under that name, or nothing is. Problem diskFull, storeReadOnly, which name
/// `argument` and the file.
void copyInto(SQLite::Database& db, const std::filesystem::path& copy, const char* argument);

/// Asks the system to put a file, or a folder's list of names, on disk.
bool flushed(const std::filesystem::path& path);

/// A name in the folder "backups" that is not taken. The folder is made when it is not there.
std::filesystem::path freeName(const std::filesystem::path& store, Millis at, BackupReason reason);

/// Notes a copy in the running transaction.
void note(SQLite::Database& db, const Backup& backup);

/// True when integrity and foreign keys hold.
bool isWhole(SQLite::Database& db);

}  // namespace oddglass::store
