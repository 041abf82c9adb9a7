#pragma once

#include "canon/canonical.h"
#include "domain/names.h"

#include <initializer_list>
#include <optional>
#include <string>

namespace oddglass::store::parts {

/// Reading of canonical JSON, key by key. All throw Problem brokenReference that names the key.

[[noreturn]] void refuse(const std::string& key, const std::string& text);
const canon::Json& at(const canon::Json& json, const char* key);
int whole(const canon::Json& json, const char* key);
int wholeOf(const canon::Json& value, const char* key);
std::optional<int> maybeWhole(const canon::Json& json, const char* key);
std::string text(const canon::Json& json, const char* key);
bool truth(const canon::Json& json, const char* key);
const canon::Json& list(const canon::Json& json, const char* key);
void onlyKeys(const canon::Json& json, std::initializer_list<const char*> keys);

template <class E>
E choice(const canon::Json& json, const char* key) {
  const auto value = named<E>(text(json, key));
  if (!value) refuse(key, "knows no " + text(json, key));
  return *value;
}

/// The number, or null.
inline canon::Json maybe(std::optional<int> value) { return value ? canon::Json(*value) : canon::Json(nullptr); }

}  // namespace oddglass::store::parts
