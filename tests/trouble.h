#pragma once

#include "domain/problem.h"

#include <catch2/catch.hpp>

namespace oddglass::testing {

/// What was wrong with a request that must be refused.
template <class F>
Trouble troubleOf(F&& request) {
  try {
    request();
  } catch (const Problem& problem) {
    return problem.trouble();
  }
  FAIL("nothing was refused");
  return {};
}

}  // namespace oddglass::testing
