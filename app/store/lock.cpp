#include "store/lock.h"

#include "domain/problem.h"

#include <cerrno>
#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

namespace oddglass::store {

Lock::Lock(const std::filesystem::path& store) {
  const std::string name = store.string() + ".lock";
  descriptor_ = ::open(name.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
  if (descriptor_ < 0) throw Problem(errno == ENOSPC ? Trouble::diskFull : Trouble::storeReadOnly, "store", {{"file", store.string()}});
  if (::flock(descriptor_, LOCK_EX | LOCK_NB) != 0) {
    ::close(descriptor_);
    throw Problem(Trouble::storeInUse, "store", {{"file", store.string()}});
  }
}

Lock::~Lock() { ::close(descriptor_); }

}  // namespace oddglass::store
