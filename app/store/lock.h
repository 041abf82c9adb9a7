#pragma once

#include <filesystem>

namespace oddglass::store {

/// Keeps a second writer out: an advisory lock on a small file beside the store. The system lets go of it when the program ends, however it ends.
class Lock {
 public:
  /// Throws Problem storeInUse when another program holds it, storeReadOnly when the folder cannot be written.
  explicit Lock(const std::filesystem::path& store);
  ~Lock();
  Lock(const Lock&) = delete;
  Lock& operator=(const Lock&) = delete;

 private:
  int descriptor_ = -1;
};

}  // namespace oddglass::store
