#include "store/look.h"

#include "domain/problem.h"
#include "store/migrate.h"
#include "store/step.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

namespace oddglass::store {
namespace {

namespace fs = std::filesystem;

// "immutable" makes SQLite read the file as it lies there: no locks, no files beside it.
SQLite::Database asItLies(const fs::path& file) {
  static constexpr char digits[] = "0123456789ABCDEF";
  std::string uri = "file:";
  for (const char letter : fs::absolute(file).string()) {
    const auto byte = static_cast<unsigned char>(letter);
    const bool isPlain = (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z') || (byte >= '0' && byte <= '9') || byte == '/' || byte == '.' || byte == '-';
    if (isPlain) uri += letter;
    else (((uri += '%') += digits[byte >> 4]) += digits[byte & 15]);
  }
  return {uri + "?immutable=1", SQLite::OPEN_READONLY | SQLite::OPEN_URI};
}

}  // namespace

bool canWrite(const fs::path& path) { return ::faccessat(AT_FDCWD, path.c_str(), W_OK, AT_EACCESS) == 0; }

fs::path beside(const fs::path& file, const char* tail) { return file.string() + tail; }

bool hasLog(const fs::path& file) {
  std::error_code error;
  const auto size = fs::file_size(beside(file, "-wal"), error);
  return !error && size > 0;
}

void refuseOthers(SQLite::Database& db, const fs::path& file, const char* argument) {
  const int version = versionOf(db);
  const int owner = db.execAndGet("PRAGMA application_id").getInt();
  const bool isEmpty = version == 0 && owner == 0 && db.execAndGet("SELECT count(*) FROM sqlite_schema").getInt() == 0;
  if (isEmpty) return;
  if (owner != applicationId) throw Problem(Trouble::storeForeign, argument, {{"file", file.string()}});
  if (version < 1) throw Problem(Trouble::storeDamaged, argument, {{"file", file.string()}});
  if (version > newestVersion()) throw Problem(Trouble::storeNewer, argument, {{"file", file.string()}, {"version", std::to_string(version)}});
}

bool look(const fs::path& file, const char* argument) {
  std::error_code error;
  if (!fs::exists(file, error)) throw Problem(Trouble::storeMissing, argument, {{"file", file.string()}});
  if (!fs::is_regular_file(file, error)) throw Problem(Trouble::storeForeign, argument, {{"file", file.string()}});
  if (fs::file_size(file, error) == 0 && !error) return false;
  try {
    SQLite::Database db = asItLies(file);
    refuseOthers(db, file, argument);
  } catch (const SQLite::Exception& failure) {
    rethrow(failure, argument, file);
  }
  return true;
}

SQLite::Database openToRead(const fs::path& file) {
  const fs::path folder = fs::absolute(file).parent_path();
  if (canWrite(file) && canWrite(folder)) {
    // Able to write, so that SQLite can tidy up what it keeps beside the file; forbidden to.
    SQLite::Database db(file.string(), SQLite::OPEN_READWRITE, 3000);
    db.exec("PRAGMA query_only = ON");
    return db;
  }
  if (hasLog(file)) return {file.string(), SQLite::OPEN_READONLY, 3000};
  return asItLies(file);
}

void refuseDamaged(SQLite::Database& db, const fs::path& file, const char* argument) {
  if (db.execAndGet("PRAGMA quick_check(1)").getString() != "ok") throw Problem(Trouble::storeDamaged, argument, {{"file", file.string()}});
}

}  // namespace oddglass::store
