#pragma once

#include <array>
#include <cstdint>
#include <utility>
#include <vector>

namespace oddglass::blinding {

/// 256 random bits. Orders and codes of a session follow from them alone.
using Seed = std::array<std::uint8_t, 32>;

/// What a stream is drawn for. Streams of one seed with different names have nothing to do with each other.
enum class StreamName { orders, codes, names };

/// Drawn numbers: the keystream of ChaCha20 (RFC 8439, 20 rounds, 96-bit nonce, block counter from 0). The key is the seed;
/// the nonce is the stream's name in ASCII ("orders", "codes", "names"), filled up with zero bytes to twelve.
/// The generator's name in the key is "chacha20/1".
class Stream {
 public:
  Stream(const Seed& seed, StreamName name);
  Stream(const Seed& seed, const std::array<std::uint8_t, 12>& nonce);

  /// The next four bytes of the keystream, least significant first.
  std::uint32_t next32();

  /// A whole number from 0 to n - 1, each equally likely. n is 1 or more, else Problem(outOfRange).
  /// Rule: take words w = next32() until w < 2^32 - (2^32 mod n); the number is w mod n. A word is taken even for n = 1.
  std::uint32_t below(std::uint32_t n);

  /// Brings the items into a random order, each equally likely.
  /// Rule: for i from the last index down to 1, swap item i with item below(i + 1).
  template <class Items>
  void shuffle(Items& items) {
    for (std::size_t i = items.size(); i > 1; --i) std::swap(items[i - 1], items[below(static_cast<std::uint32_t>(i))]);
  }

 private:
  void refill();

  Seed key_;
  std::array<std::uint8_t, 12> nonce_;
  std::uint32_t block_ = 0;
  std::array<std::uint8_t, 64> bytes_{};
  std::size_t used_ = 64;
};

}  // namespace oddglass::blinding
