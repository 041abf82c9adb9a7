#pragma once

#include "cli/answer.h"

#include <catch2/catch.hpp>

#include <set>
#include <string>

namespace oddglass::testing {

/// A null never stands without "why" in the same object or above it, but for what was `notAsked` for.
inline void requireReasons(const cli::Json& json, bool isExplained = false, const std::set<std::string>& notAsked = {}) {
  if (json.is_object()) {
    isExplained = isExplained || json.contains("why");
    for (const auto& [key, value] : json.items()) {
      INFO(key << " of " << json.dump());
      if (value.is_null()) REQUIRE((isExplained || notAsked.contains(key)));
      else requireReasons(value, isExplained, notAsked);
    }
  }
  if (json.is_array())
    for (const auto& each : json) requireReasons(each, isExplained, notAsked);
}

}  // namespace oddglass::testing
