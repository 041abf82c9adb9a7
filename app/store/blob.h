#pragma once

#include "canon/digest.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <array>
#include <vector>

namespace oddglass::store {

inline void bindBlob(SQLite::Statement& statement, int index, canon::Bytes bytes) {
  statement.bind(index, bytes.data(), static_cast<int>(bytes.size()));
}

inline std::vector<std::uint8_t> blob(const SQLite::Column& column) {
  const auto* data = static_cast<const std::uint8_t*>(column.getBlob());
  return {data, data + column.getBytes()};
}

/// Exactly N bytes; the schema's CHECKs promise the length.
template <std::size_t N>
std::array<std::uint8_t, N> blobOf(const SQLite::Column& column) {
  std::array<std::uint8_t, N> bytes{};
  const auto* data = static_cast<const std::uint8_t*>(column.getBlob());
  std::copy_n(data, std::min<std::size_t>(N, column.getBytes()), bytes.begin());
  return bytes;
}

}  // namespace oddglass::store
