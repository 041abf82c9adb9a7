#include "store/json_parts.h"

#include "domain/problem.h"

#include <algorithm>
#include <cstdint>
#include <limits>

namespace oddglass::store::parts {

using canon::Json;

[[noreturn]] void refuse(const std::string& key, const std::string& text) {
  throw Problem(Trouble::brokenReference, key, {{"text", text}});
}

const Json& at(const Json& json, const char* key) {
  if (!json.is_object() || !json.contains(key)) refuse(key, "is missing");
  return json.at(key);
}

int wholeOf(const Json& value, const char* key) {
  if (!value.is_number_integer()) refuse(key, "is no whole number");
  const auto number = value.get<std::int64_t>();
  if (number < std::numeric_limits<int>::min() || number > std::numeric_limits<int>::max()) refuse(key, "is out of range");
  return static_cast<int>(number);
}

int whole(const Json& json, const char* key) { return wholeOf(at(json, key), key); }

std::optional<int> maybeWhole(const Json& json, const char* key) {
  if (at(json, key).is_null()) return std::nullopt;
  return whole(json, key);
}

std::string text(const Json& json, const char* key) {
  const Json& value = at(json, key);
  if (!value.is_string()) refuse(key, "is no text");
  return value.get<std::string>();
}

bool truth(const Json& json, const char* key) {
  const Json& value = at(json, key);
  if (!value.is_boolean()) refuse(key, "is neither true nor false");
  return value.get<bool>();
}

const Json& list(const Json& json, const char* key) {
  const Json& value = at(json, key);
  if (!value.is_array()) refuse(key, "is no list");
  return value;
}

void onlyKeys(const Json& json, std::initializer_list<const char*> keys) {
  for (const auto& [key, value] : json.items())
    if (std::ranges::none_of(keys, [&](const char* known) { return key == known; })) refuse(key, "is not known here");
}

}  // namespace oddglass::store::parts
