#pragma once

#include "evening.h"
#include "store/step.h"

#include <sqlite3.h>

#include <functional>

namespace oddglass::testing {

/// A second connection that may write, as a phones' server will have one: the lock that keeps other programs out is put aside for it.
inline std::unique_ptr<store::Store> secondHand(Evening& evening) {
  std::filesystem::remove(evening.store->file().string() + ".lock");
  return store::Store::open(evening.store->file(), store::Access::write, evening.clock, evening.chance);
}

/// Runs `work` on `store` while another step is under way on `other`: `begun` has written, and is committed at the very moment when `work` waits for it.
/// So what `work` looked at before it had the write lock is out of date by the time it writes.
class Overtaken {
 public:
  Overtaken(store::Store& store, store::Store& other, const std::function<void(store::Store&)>& begun) : store_(store), other_(other) {
    other.db().exec("BEGIN IMMEDIATE");
    begun(other);
    sqlite3_busy_handler(store.db().getHandle(), &Overtaken::waits, this);
  }
  ~Overtaken() {
    sqlite3_busy_timeout(store_.db().getHandle(), 3000);
    if (!done_) other_.db().tryExec("ROLLBACK");
  }
  Overtaken(const Overtaken&) = delete;
  Overtaken& operator=(const Overtaken&) = delete;
  bool hasHappened() const { return done_; }

 private:
  static int waits(void* self, int) {
    auto* overtaken = static_cast<Overtaken*>(self);
    if (overtaken->done_) return 0;
    overtaken->other_.db().exec("COMMIT");
    overtaken->done_ = true;
    return 1;
  }
  store::Store& store_;
  store::Store& other_;
  bool done_ = false;
};

}  // namespace oddglass::testing
