#include "blinding/stream.h"

#include "domain/problem.h"

#include <sodium.h>

#include <limits>
#include <string_view>

namespace oddglass::blinding {
namespace {

std::array<std::uint8_t, 12> nonceOf(StreamName name) {
  std::string_view text;
  switch (name) {
    case StreamName::orders: text = "orders"; break;
    case StreamName::codes: text = "codes"; break;
    case StreamName::names: text = "names"; break;
  }
  std::array<std::uint8_t, 12> nonce{};
  for (std::size_t i = 0; i < text.size(); ++i) nonce[i] = static_cast<std::uint8_t>(text[i]);
  return nonce;
}

}  // namespace

Stream::Stream(const Seed& seed, StreamName name) : Stream(seed, nonceOf(name)) {}

Stream::Stream(const Seed& seed, const std::array<std::uint8_t, 12>& nonce) : key_(seed), nonce_(nonce) {}

void Stream::refill() {
  const std::array<std::uint8_t, 64> zeros{};
  crypto_stream_chacha20_ietf_xor_ic(bytes_.data(), zeros.data(), zeros.size(), nonce_.data(), block_, key_.data());
  ++block_;
  used_ = 0;
}

std::uint32_t Stream::next32() {
  if (used_ == bytes_.size()) refill();
  std::uint32_t word = 0;
  for (int i = 3; i >= 0; --i) word = word << 8 | bytes_[used_ + i];
  used_ += 4;
  return word;
}

std::uint32_t Stream::below(std::uint32_t n) {
  if (n == 0) throw Problem(Trouble::outOfRange, "n", {{"text", "0"}, {"low", "1"}, {"high", std::to_string(std::numeric_limits<std::uint32_t>::max())}});
  constexpr std::uint64_t all = std::uint64_t{1} << 32;
  const std::uint64_t limit = all - all % n;
  for (;;) {
    const std::uint32_t word = next32();
    if (word < limit) return word % n;
  }
}

}  // namespace oddglass::blinding
