#pragma once

#include <array>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace oddglass::canon {

using Digest = std::array<std::uint8_t, 32>;
using Salt = std::array<std::uint8_t, 16>;
using Bytes = std::span<const std::uint8_t>;

/// The bytes of a text.
Bytes bytesOf(std::string_view text);

/// SHA-256 (FIPS 180-4) over the parts, one after the other.
Digest sha256(std::initializer_list<Bytes> parts);

/// Lower-case hex, two digits a byte.
std::string hex(Bytes bytes);

/// The bytes of lower-case hex of exactly N bytes; nothing otherwise.
template <std::size_t N>
std::optional<std::array<std::uint8_t, N>> fromHex(std::string_view text);

}  // namespace oddglass::canon
