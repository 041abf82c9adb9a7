#pragma once

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <fstream>
#include <set>
#include <string>

/// Reading published and recomputed check cases. Each case carries its own source; a failing check prints its id.
namespace checks {

using Json = nlohmann::json;

/// All cases of one family, from tests/data/checks/FAMILY.json.
inline Json family(const std::string& name) {
  std::ifstream file(std::string(TEST_DATA) + "/checks/" + name + ".json");
  REQUIRE(file.good());
  return Json::parse(file);
}

/// One case of a family.
inline Json caseOf(const std::string& name, const std::string& id) {
  for (const Json& each : family(name))
    if (each.at("id") == id) return each;
  FAIL("no case " << id);
  return {};
}

/// The absolute tolerance that a case gives.
inline double toleranceOf(const Json& each) { return each.at("tolerance").at("abs").get<double>(); }

/// Fails unless every key of `object` was looked at or is named in `leftOut` with a reason in the test.
inline void requireAllSeen(const Json& object, const std::set<std::string>& seen) {
  for (const auto& [key, value] : object.items()) {
    INFO("no check looks at " << key);
    REQUIRE(seen.contains(key));
  }
}

inline double share(const Json& value) {
  if (value.is_number()) return value.get<double>();
  const auto text = value.get<std::string>();
  const auto slash = text.find('/');
  if (slash == std::string::npos) return std::stod(text);
  return std::stod(text.substr(0, slash)) / std::stod(text.substr(slash + 1));
}

}  // namespace checks
