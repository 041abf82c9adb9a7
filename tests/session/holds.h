#pragma once

#include "evening.h"

#include <catch2/catch.hpp>

namespace oddglass::testing {

/// Every check that can be made of a session holds.
inline void requireHolds(Evening& evening) {
  for (const session::Check& check : session::verify(*evening.store, evening.session).checks) {
    INFO(check.what << " " << check.where);
    CHECK(check.holds);
  }
}

}  // namespace oddglass::testing
