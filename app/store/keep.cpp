#include "store/keep.h"

#include "domain/problem.h"
#include "store/copy.h"
#include "store/step.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <tuple>

namespace oddglass::store {
namespace {

namespace fs = std::filesystem;

constexpr const char* ending = ".oddglass";

const char* word(BackupReason reason) {
  switch (reason) {
    case BackupReason::asked: return "asked";
    case BackupReason::beforeMigration: return "before_migration";
    case BackupReason::afterReveal: return "after_reveal";
    case BackupReason::beforeRestore: return "before_restore";
  }
  return "asked";
}

BackupReason reasonOf(const std::string& text) {
  for (BackupReason reason : {BackupReason::beforeMigration, BackupReason::afterReveal, BackupReason::beforeRestore})
    if (text.find(word(reason)) != std::string::npos) return reason;
  return BackupReason::asked;
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

fs::path folderOf(const fs::path& store) { return fs::absolute(store).parent_path() / "backups"; }

std::vector<fs::path> inFolder(const fs::path& store) {
  std::vector<fs::path> files;
  std::error_code error;
  for (fs::directory_iterator each(folderOf(store), error), end; !error && each != end; each.increment(error))
    if (each->path().filename().string().starts_with(store.stem().string() + "-")) files.push_back(each->path());
  return files;
}

// A log whose own file was lost before a restore: it may hold what the file held.
bool isLogAlone(const fs::path& file) {
  const std::string name = file.string(), tail = "-wal";
  std::error_code ignored;
  return name.ends_with(ending + tail) && !fs::exists(name.substr(0, name.size() - tail.size()), ignored);
}

Millis writtenAt(const fs::path& file) {
  std::error_code error;
  const auto time = fs::last_write_time(file, error);
  if (error) return 0;
  return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::file_clock::to_sys(time).time_since_epoch()).count();
}

std::vector<Backup> noted(SQLite::Database& db) {
  std::vector<Backup> all;
  SQLite::Statement rows(db, "SELECT path, at, reason FROM backup_made");
  while (rows.executeStep()) {
    std::error_code ignored;
    const fs::path file = rows.getColumn(0).getString();
    all.push_back({file, rows.getColumn(1).getInt64(), reasonOf(rows.getColumn(2).getString()), fs::exists(file, ignored)});
  }
  return all;
}

}  // namespace

fs::path freeName(const fs::path& store, Millis at, BackupReason reason) {
  std::error_code error;
  fs::create_directories(folderOf(store), error);
  if (error) throw Problem(error == std::errc::no_space_on_device ? Trouble::diskFull : Trouble::storeReadOnly, "backup", {{"file", folderOf(store).string()}});
  const std::string name = store.stem().string() + "-" + stamp(at) + "-" + word(reason);
  fs::path file = folderOf(store) / (name + ending);
  for (int n = 2; fs::exists(file, error); ++n) file = folderOf(store) / (name + "-" + std::to_string(n) + ending);
  return file;
}

void note(SQLite::Database& db, const Backup& backup) {
  run(db, "INSERT OR REPLACE INTO backup_made VALUES (?, ?, ?)", fs::absolute(backup.file).string(), backup.at, std::string(word(backup.reason)));
}

void keepCopyAs(Store& store, Clock& clock, const fs::path& copy, BackupReason reason) {
  std::error_code error;
  if (fs::exists(copy, error)) throw Problem(Trouble::alreadyThere, "out", {{"text", copy.string()}});
  write(store, [&](SQLite::Database& db) { note(db, {copy, clock.now(), reason, true}); });
  try {
    copyInto(store.db(), copy, "out");
  } catch (const Problem&) {
    write(store, [&](SQLite::Database& db) { run(db, "DELETE FROM backup_made WHERE path = ?", fs::absolute(copy).string()); });
    throw;
  }
}

fs::path keepCopy(Store& store, Clock& clock, BackupReason reason) {
  const fs::path copy = freeName(store.file(), clock.now(), reason);
  keepCopyAs(store, clock, copy, reason);
  return copy;
}

std::vector<Backup> backups(Store& store) {
  std::vector<Backup> all = read(store, noted);
  for (const fs::path& file : inFolder(store.file())) {
    const bool isKnown = std::ranges::any_of(all, [&](const Backup& each) { return each.file == file; });
    if (!isKnown && (file.extension() == ending || isLogAlone(file))) all.push_back({file, writtenAt(file), reasonOf(file.filename().string()), true});
  }
  std::ranges::sort(all, [](const Backup& a, const Backup& b) { return std::tie(a.at, a.file) > std::tie(b.at, b.file); });
  return all;
}

void clearHalfCopies(const fs::path& store) {
  std::error_code ignored;
  for (const fs::path& file : inFolder(store)) {
    const std::string name = file.filename().string();
    if (name.ends_with(".part") || name.ends_with(".part-journal")) fs::remove(file, ignored);
  }
}

bool isWhole(SQLite::Database& db) {
  try {
    if (db.execAndGet("PRAGMA integrity_check").getString() != "ok") return false;
    SQLite::Statement broken(db, "PRAGMA foreign_key_check");
    return !broken.executeStep();
  } catch (const SQLite::Exception&) {
    return false;
  }
}

bool isWhole(Store& store) { return isWhole(store.db()); }

}  // namespace oddglass::store
