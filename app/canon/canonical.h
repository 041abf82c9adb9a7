#pragma once

#include <nlohmann/json.hpp>

#include <string>

namespace oddglass::canon {

using Json = nlohmann::json;

/// The one way in which a value is written before it is hashed: keys sorted, no spaces, UTF-8 as it is, whole numbers only.
/// The same bytes as Python's json.dumps(x, sort_keys=True, separators=(',', ':'), ensure_ascii=False).
/// Throws std::invalid_argument on a fraction or on text that is no UTF-8.
std::string canonical(const Json& value);

}  // namespace oddglass::canon
