#include "domain/problem.h"
#include "store/copy.h"
#include "store/lock.h"
#include "store/look.h"
#include "store/step.h"

namespace oddglass::store {
namespace {

namespace fs = std::filesystem;

// What the store that goes knew of its copies. It may be damaged, which is often why one restores; then only the folder is left to tell.
std::vector<Backup> knownTo(const fs::path& store, Clock& clock, Chance& chance) {
  try {
    return backups(*Store::open(store, Access::read, clock, chance));
  } catch (const Problem&) {
    return {};
  }
}

// Writes the checked copy beside the store, ready to take its place.
void prepare(const fs::path& copy, const fs::path& ready) {
  if (!look(copy, "file")) throw Problem(Trouble::storeForeign, "file", {{"file", copy.string()}});
  try {
    SQLite::Database db = openToRead(copy);
    refuseOthers(db, copy, "file");
    if (!isWhole(db)) throw Problem(Trouble::storeDamaged, "file", {{"file", copy.string()}});
    db.exec("PRAGMA query_only = OFF");
    copyInto(db, ready, "store");
  } catch (const SQLite::Exception& error) {
    rethrow(error, "file", copy);
  }
}

// Moves what lies in the write-ahead log into the file itself, where the file still allows it.
void drain(const fs::path& store) {
  try {
    SQLite::Database db(store.string(), SQLite::OPEN_READWRITE);
    db.execAndGet("PRAGMA wal_checkpoint(TRUNCATE)");
  } catch (const SQLite::Exception&) {
  }
}

// Gives what stands at the store's name a second name among the backups, its log with it. There is a store under the first name at every moment.
fs::path setAside(const fs::path& store, Millis at) {
  std::error_code error;
  if (!fs::exists(store, error)) {
    // A log without its file would be taken for the log of the copy.
    if (hasLog(store)) fs::rename(beside(store, "-wal"), beside(freeName(store, at, BackupReason::beforeRestore), "-wal"), error);
    if (error) throw Problem(Trouble::storeReadOnly, "store", {{"file", store.string()}});
    for (const char* tail : {"-wal", "-shm"}) fs::remove(beside(store, tail), error);
    return {};
  }
  drain(store);
  const fs::path former = freeName(store, at, BackupReason::beforeRestore);
  fs::create_hard_link(store, former, error);
  if (error) fs::copy_file(store, former, error);
  if (!error && hasLog(store)) fs::rename(beside(store, "-wal"), beside(former, "-wal"), error);
  if (error) {
    std::error_code ignored;
    fs::remove(former, ignored);
    throw Problem(error == std::errc::no_space_on_device ? Trouble::diskFull : Trouble::storeReadOnly, "store", {{"file", store.string()}});
  }
  for (const char* tail : {"-wal", "-shm"}) fs::remove(beside(store, tail), error);
  return former;
}

void putBack(const fs::path& former, const fs::path& store) {
  std::error_code ignored;
  if (former.empty()) return;
  if (hasLog(former)) fs::rename(beside(former, "-wal"), beside(store, "-wal"), ignored);
  fs::remove(former, ignored);
}

fs::path exchange(const fs::path& store, const fs::path& copy, Millis at) {
  Lock lock(store);
  const fs::path ready = store.string() + ".ready";
  std::error_code error;
  fs::remove(ready, error);
  prepare(copy, ready);
  fs::path former;
  try {
    former = setAside(store, at);
  } catch (const Problem&) {
    fs::remove(ready, error);
    throw;
  }
  fs::rename(ready, store, error);
  if (error) {
    putBack(former, store);
    std::error_code ignored;
    fs::remove(ready, ignored);
    throw Problem(Trouble::storeReadOnly, "store", {{"file", store.string()}});
  }
  flushed(store.parent_path());
  return former;
}

}  // namespace

fs::path restore(const fs::path& named, const fs::path& copy, Clock& clock, Chance& chance) {
  std::error_code error;
  fs::path store = fs::weakly_canonical(fs::absolute(named), error);
  if (error) store = named;
  look(copy, "file");
  if (fs::equivalent(store, copy, error)) throw Problem(Trouble::alreadyThere, "file", {{"text", copy.string()}});
  if (fs::is_directory(store, error)) throw Problem(Trouble::storeForeign, "store", {{"file", store.string()}});
  fs::create_directories(store.parent_path(), error);
  if (!fs::is_directory(store.parent_path(), error)) throw Problem(Trouble::storeReadOnly, "store", {{"file", store.string()}});
  std::vector<Backup> known = knownTo(store, clock, chance);
  const Millis at = clock.now();
  const fs::path former = exchange(store, copy, at);
  if (!former.empty()) known.push_back({former, at, BackupReason::beforeRestore, true});
  const auto restored = Store::open(store, Access::write, clock, chance);
  write(*restored, [&](SQLite::Database& db) {
    for (const Backup& backup : known) note(db, backup);
  });
  return former;
}

}  // namespace oddglass::store
