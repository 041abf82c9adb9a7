#pragma once

#include "store/store.h"

#include <memory>

namespace oddglass::store {

/// Makes everything that is written while it lives one transaction: all of it is on disk after `commit`, or nothing when it goes without one.
/// Problem storeInUse, storeReadOnly, diskFull.
class Together {
 public:
  explicit Together(Store& store);
  ~Together();
  Together(const Together&) = delete;
  Together& operator=(const Together&) = delete;
  void commit();

 private:
  std::unique_ptr<class Writing> writing_;
};

}  // namespace oddglass::store
