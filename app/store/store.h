#pragma once

#include "domain/chance.h"

#include <filesystem>
#include <memory>

namespace SQLite {
class Database;
}

namespace oddglass::store {

/// What the caller may do with a store. `write` also takes the lock that keeps a second writer out.
enum class Access { read, write };

/// The file that holds everything: one SQLite database, opened with the settings that durability needs (WAL, synchronous FULL,
/// foreign keys, recursive triggers, secure delete). Rooms go through `read` and `write` of store/step.h.
class Store {
 public:
  /// Opens the file; with `write` it is made when it is not there and an older one is migrated after a backup.
  /// Throws Problem: storeMissing, storeInUse, storeNewer, storeForeign, storeDamaged, storeReadOnly, diskFull. The file is left as it was then, to the byte,
  /// and nothing is left beside it.
  static std::unique_ptr<Store> open(const std::filesystem::path& file, Access access, Clock& clock, Chance& chance);
  ~Store();
  Store(const Store&) = delete;
  Store& operator=(const Store&) = delete;

  const std::filesystem::path& file() const { return file_; }
  Access access() const { return access_; }
  SQLite::Database& db() { return *db_; }

 private:
  Store(std::filesystem::path file, Access access);
  void connect(Clock& clock, Chance& chance);
  std::filesystem::path file_;
  Access access_;
  std::unique_ptr<class Lock> lock_;
  std::unique_ptr<SQLite::Database> db_;
};

/// Where the store lies when nobody says otherwise: $XDG_DATA_HOME/oddglass/cellar.oddglass, else below ~/.local/share.
std::filesystem::path usualFile();

}  // namespace oddglass::store
