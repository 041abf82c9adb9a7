#include "store/copy.h"

#include "domain/problem.h"
#include "store/step.h"

#include <cerrno>
#include <fcntl.h>
#include <unistd.h>

namespace oddglass::store {

namespace fs = std::filesystem;

bool flushed(const fs::path& path) {
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (descriptor < 0) return false;
  const bool done = ::fsync(descriptor) == 0;
  ::close(descriptor);
  return done;
}

void copyInto(SQLite::Database& db, const fs::path& copy, const char* argument) {
  const fs::path part = copy.string() + ".part";
  std::error_code ignored;
  const auto clear = [&] {
    for (const char* tail : {"", "-journal"}) fs::remove(part.string() + tail, ignored);
  };
  clear();
  try {
    auto vacuum = bound(db, "VACUUM INTO ?", part.string());
    vacuum.exec();
  } catch (const SQLite::Exception& error) {
    clear();
    rethrow(error, argument, copy);
  }
  // The copy is not counted as made before the disk has it.
  const bool isSafe = flushed(part);
  const int why = errno;
  std::error_code error;
  if (isSafe) fs::rename(part, copy, error);
  if (!isSafe || error) {
    clear();
    throw Problem(!isSafe && why == ENOSPC ? Trouble::diskFull : Trouble::storeReadOnly, argument, {{"file", copy.string()}});
  }
  flushed(fs::absolute(copy).parent_path());
}

}  // namespace oddglass::store
