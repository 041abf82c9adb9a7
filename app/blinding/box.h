#pragma once

#include "domain/chance.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace oddglass::blinding {

using Secret = std::array<std::uint8_t, 32>;
using Bytes = std::vector<std::uint8_t>;

/// A text in a closed box: a nonce of 24 bytes, then XSalsa20-Poly1305 (libsodium secretbox).
Bytes closeBox(std::string_view plain, const Secret& secret, Chance& chance);

/// The text in a box; nothing when the box was altered or the secret is another one.
std::optional<std::string> openBox(const Bytes& box, const Secret& secret);

}  // namespace oddglass::blinding
