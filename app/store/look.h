#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>

namespace oddglass::store {

/// Refuses a file that is not a store this program can use, looking at the database file alone: nothing beside it is made, nothing in it changes, and
/// no lock is taken. What a write-ahead log beside it may add is not seen. False for a file of no bytes, which becomes a store when it is written.
/// Problem storeMissing, storeForeign, storeNewer, storeDamaged, storeReadOnly; `argument` says which option named the file.
bool look(const std::filesystem::path& file, const char* argument);

/// The same for an open connection, which sees the write-ahead log too.
void refuseOthers(SQLite::Database& db, const std::filesystem::path& file, const char* argument);

/// A connection to a file that is only read. It leaves nothing behind, and works in a folder that cannot be written.
SQLite::Database openToRead(const std::filesystem::path& file);

/// True when this process may write the file or folder.
bool canWrite(const std::filesystem::path& path);

/// The file that SQLite keeps beside the database: "-wal" or "-shm".
std::filesystem::path beside(const std::filesystem::path& file, const char* tail);

/// True when commits lie in the write-ahead log beside the file.
bool hasLog(const std::filesystem::path& file);

/// Problem storeDamaged when SQLite finds a page that is not whole.
void refuseDamaged(SQLite::Database& db, const std::filesystem::path& file, const char* argument);

}  // namespace oddglass::store
