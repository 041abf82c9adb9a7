#include "store/keep.h"

#include "domain/problem.h"
#include "store/lock.h"
#include "store/step.h"

#include <chrono>

namespace oddglass::store {
namespace {

namespace fs = std::filesystem;

const char* word(BackupReason reason) {
  switch (reason) {
    case BackupReason::asked: return "asked";
    case BackupReason::beforeMigration: return "before_migration";
    case BackupReason::afterReveal: return "after_reveal";
    case BackupReason::beforeRestore: return "before_restore";
  }
  return "asked";
}

// 20261125-201405-123, in UTC: sorts by time and says nothing of what is inside.
std::string stamp(Millis at) {
  using namespace std::chrono;
  const sys_time<milliseconds> time{milliseconds(at)};
  const auto day = floor<days>(time);
  const year_month_day date(day);
  const hh_mm_ss clock(time - day);
  char text[40];
  std::snprintf(text, sizeof text, "%04d%02u%02u-%02d%02d%02d-%03d", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                static_cast<unsigned>(date.day()), static_cast<int>(clock.hours().count()), static_cast<int>(clock.minutes().count()),
                static_cast<int>(clock.seconds().count()), static_cast<int>(clock.subseconds().count()));
  return text;
}

fs::path freeName(const fs::path& store, Millis at, BackupReason reason) {
  const fs::path folder = store.parent_path() / "backups";
  std::error_code error;
  fs::create_directories(folder, error);
  if (error) throw Problem(Trouble::storeReadOnly, "backup", {{"file", folder.string()}});
  const std::string name = store.stem().string() + "-" + stamp(at) + "-" + word(reason);
  fs::path file = folder / (name + ".oddglass");
  for (int n = 2; fs::exists(file); ++n) file = folder / (name + "-" + std::to_string(n) + ".oddglass");
  return file;
}

void note(SQLite::Database& db, const fs::path& copy, Millis at, BackupReason reason) {
  run(db, "INSERT OR REPLACE INTO backup_made VALUES (?, ?, ?)", fs::absolute(copy).string(), at, std::string(word(reason)));
}

// A name that was only looked at and never used must not stay behind.
void copyInto(Store& store, const fs::path& copy) {
  const fs::path part = copy.string() + ".part";
  std::error_code ignored;
  fs::remove(part, ignored);
  try {
    auto vacuum = bound(store.db(), "VACUUM INTO ?", part.string());
    vacuum.exec();
  } catch (const SQLite::Exception& error) {
    fs::remove(part, ignored);
    rethrow(error);
  }
  std::error_code error;
  fs::rename(part, copy, error);
  if (error) {
    fs::remove(part, ignored);
    throw Problem(Trouble::storeReadOnly, "backup", {{"file", copy.string()}});
  }
}

}  // namespace

void keepCopyAs(Store& store, Clock& clock, const fs::path& copy, BackupReason reason) {
  if (fs::exists(copy)) throw Problem(Trouble::alreadyThere, "out", {{"text", copy.string()}});
  copyInto(store, copy);
  if (store.access() == Access::write)
    write(store, [&](SQLite::Database& db) { note(db, copy, clock.now(), reason); });
}

fs::path keepCopy(Store& store, Clock& clock, BackupReason reason) {
  const fs::path copy = freeName(store.file(), clock.now(), reason);
  keepCopyAs(store, clock, copy, reason);
  return copy;
}

std::vector<Backup> backups(Store& store) {
  return read(store, [](SQLite::Database& db) {
    std::vector<Backup> all;
    SQLite::Statement rows(db, "SELECT path, at, reason FROM backup_made ORDER BY at DESC, path DESC");
    while (rows.executeStep()) {
      Backup backup{rows.getColumn(0).getString(), rows.getColumn(1).getInt64(), BackupReason::asked, false};
      for (BackupReason reason : {BackupReason::beforeMigration, BackupReason::afterReveal, BackupReason::beforeRestore})
        if (rows.getColumn(2).getString() == word(reason)) backup.reason = reason;
      std::error_code ignored;
      backup.isThere = fs::exists(backup.file, ignored);
      all.push_back(std::move(backup));
    }
    return all;
  });
}

fs::path restore(const fs::path& store, const fs::path& copy, Clock& clock, Chance& chance) {
  std::error_code error;
  if (fs::exists(store, error) && fs::equivalent(store, copy, error)) throw Problem(Trouble::alreadyThere, "file", {{"text", copy.string()}});
  {
    // Looked at first, as a reader: nothing is written to it.
    const auto seen = Store::open(copy, Access::read, clock, chance);
    if (!isWhole(*seen)) throw Problem(Trouble::storeDamaged, "file", {{"file", copy.string()}});
  }
  const fs::path part = store.string() + ".part";
  fs::remove(part, error);
  if (store.has_parent_path()) fs::create_directories(store.parent_path(), error);
  {
    Lock lock(store);
    fs::path former;
    if (fs::exists(store)) {
      former = freeName(store, clock.now(), BackupReason::beforeRestore);
      fs::rename(store, former, error);
      if (error) throw Problem(Trouble::storeReadOnly, "store", {{"file", store.string()}});
      for (const char* tail : {"-wal", "-shm"})
        if (fs::exists(store.string() + tail)) fs::rename(store.string() + tail, former.string() + tail, error);
    }
    fs::copy_file(copy, part, error);
    if (!error) fs::rename(part, store, error);
    if (error) {
      std::error_code ignored;
      fs::remove(part, ignored);
      if (!former.empty()) {
        fs::rename(former, store, ignored);
        for (const char* tail : {"-wal", "-shm"})
          if (fs::exists(former.string() + tail)) fs::rename(former.string() + tail, store.string() + tail, ignored);
      }
      throw Problem(error == std::errc::no_space_on_device ? Trouble::diskFull : Trouble::storeReadOnly, "store", {{"file", store.string()}});
    }
    return former;
  }
}

bool isWhole(Store& store) {
  try {
    if (store.db().execAndGet("PRAGMA integrity_check").getString() != "ok") return false;
    SQLite::Statement broken(store.db(), "PRAGMA foreign_key_check");
    return !broken.executeStep();
  } catch (const SQLite::Exception&) {
    return false;
  }
}

}  // namespace oddglass::store
