#include "store/lock.h"

#include "domain/problem.h"

#include <cerrno>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace oddglass::store {
namespace {

// Whoever held the lock before takes the file away when it ends; then what was opened here is no longer the file that others see.
bool isStillThere(int descriptor, const std::string& name) {
  struct stat opened {}, seen {};
  return ::fstat(descriptor, &opened) == 0 && ::stat(name.c_str(), &seen) == 0 && opened.st_ino == seen.st_ino && opened.st_dev == seen.st_dev;
}

}  // namespace

Lock::Lock(const std::filesystem::path& store) : name_(store.string() + ".lock") {
  for (;;) {
    descriptor_ = ::open(name_.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
    if (descriptor_ < 0) throw Problem(errno == ENOSPC || errno == EDQUOT ? Trouble::diskFull : Trouble::storeReadOnly, "store", {{"file", store.string()}});
    if (::flock(descriptor_, LOCK_EX | LOCK_NB) != 0) {
      ::close(descriptor_);
      throw Problem(Trouble::storeInUse, "store", {{"file", store.string()}});
    }
    if (isStillThere(descriptor_, name_)) return;
    ::close(descriptor_);
  }
}

Lock::~Lock() {
  if (isStillThere(descriptor_, name_)) ::unlink(name_.c_str());
  ::close(descriptor_);
}

}  // namespace oddglass::store
