#pragma once

#include "cli/answer.h"

#include <catch2/catch.hpp>

namespace oddglass::testing {

/// A null never stands without "why" in the same object or above it.
inline void requireReasons(const cli::Json& json, bool isExplained = false) {
  if (json.is_object()) {
    isExplained = isExplained || json.contains("why");
    for (const auto& [key, value] : json.items()) {
      INFO(key << " of " << json.dump());
      if (value.is_null()) REQUIRE(isExplained);
      else requireReasons(value, isExplained);
    }
  }
  if (json.is_array())
    for (const auto& each : json) requireReasons(each, isExplained);
}

}  // namespace oddglass::testing
