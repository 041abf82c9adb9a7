#include "canon/digest.h"

#include <sodium.h>

namespace oddglass::canon {

Bytes bytesOf(std::string_view text) { return {reinterpret_cast<const std::uint8_t*>(text.data()), text.size()}; }

Digest sha256(std::initializer_list<Bytes> parts) {
  crypto_hash_sha256_state state;
  crypto_hash_sha256_init(&state);
  for (Bytes part : parts) crypto_hash_sha256_update(&state, part.data(), part.size());
  Digest result;
  crypto_hash_sha256_final(&state, result.data());
  return result;
}

std::string hex(Bytes bytes) {
  static constexpr char digits[] = "0123456789abcdef";
  std::string text;
  text.reserve(bytes.size() * 2);
  for (std::uint8_t byte : bytes) {
    text += digits[byte >> 4];
    text += digits[byte & 15];
  }
  return text;
}

template <std::size_t N>
std::optional<std::array<std::uint8_t, N>> fromHex(std::string_view text) {
  if (text.size() != 2 * N) return std::nullopt;
  std::array<std::uint8_t, N> bytes{};
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    int digit = 0;
    if (c >= '0' && c <= '9')
      digit = c - '0';
    else if (c >= 'a' && c <= 'f')
      digit = c - 'a' + 10;
    else
      return std::nullopt;
    bytes[i / 2] = static_cast<std::uint8_t>(bytes[i / 2] << 4 | digit);
  }
  return bytes;
}

template std::optional<std::array<std::uint8_t, 16>> fromHex<16>(std::string_view);
template std::optional<std::array<std::uint8_t, 32>> fromHex<32>(std::string_view);

}  // namespace oddglass::canon
