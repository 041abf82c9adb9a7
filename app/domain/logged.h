#pragma once

#include "domain/numbers.h"
#include "domain/state.h"

namespace oddglass {

namespace store {
class Log;
}

/// Proof that an entry stands in a session's log. Only the log can make one, after it has written the entry, so a function
/// that takes one (such as the opening of a key) cannot be called without leaving its mark.
class Logged {
 public:
  Seq seq() const { return seq_; }
  Event event() const { return event_; }

 private:
  friend class store::Log;
  Logged(Seq seq, Event event) : seq_(seq), event_(event) {}

  Seq seq_;
  Event event_;
};

}  // namespace oddglass
