#pragma once

#include <filesystem>
#include <string>

namespace oddglass::store {

/// Keeps a second writer out: an advisory lock on a small file beside the store. The system lets go of it when the program ends,
/// however it ends; the small file goes when it ends well.
class Lock {
 public:
  /// Throws Problem storeInUse when another program holds it, storeReadOnly when the folder cannot be written.
  explicit Lock(const std::filesystem::path& store);
  ~Lock();
  Lock(const Lock&) = delete;
  Lock& operator=(const Lock&) = delete;

 private:
  std::string name_;
  int descriptor_ = -1;
};

}  // namespace oddglass::store
