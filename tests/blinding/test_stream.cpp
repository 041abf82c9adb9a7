#include "blinding/chance.h"
#include "blinding/stream.h"
#include "canon/digest.h"
#include "domain/problem.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <numeric>

using namespace oddglass;
using namespace oddglass::blinding;

namespace {

std::string keystream(Stream& stream, int bytes) {
  std::vector<std::uint8_t> out;
  while (static_cast<int>(out.size()) < bytes) {
    const std::uint32_t word = stream.next32();
    for (int shift = 0; shift < 32; shift += 8) out.push_back(static_cast<std::uint8_t>(word >> shift));
  }
  return canon::hex(out);
}

}  // namespace

// RFC 8439, appendix A.1: block function, test vectors 1 (block counter 0) and 2 (counter 1) have zero key and zero nonce.
TEST_CASE("The keystream is that of RFC 8439 A.1, vectors 1 and 2") {
  Stream stream(Seed{}, std::array<std::uint8_t, 12>{});
  CHECK(keystream(stream, 64) ==
        "76b8e0ada0f13d90405d6ae55386bd28bdd219b8a08ded1aa836efcc8b770dc7"
        "da41597c5157488d7724e03fb8d84a376a43b8f41518a11cc387b669b2ee6586");
  CHECK(keystream(stream, 64) ==
        "9f07e7be5551387a98ba977c732d080dcb0f29a048e3656912c6533e32ee7aed"
        "29b721769ce64e43d57133b074d839d531ed1f28510afb45ace10a1f4b794d6f");
}

// RFC 8439, appendix A.1, test vector 5: zero key, nonce ending in 02, counter 0.
TEST_CASE("The nonce enters as RFC 8439 A.1, vector 5, says") {
  std::array<std::uint8_t, 12> nonce{};
  nonce[11] = 2;
  Stream stream(Seed{}, nonce);
  CHECK(keystream(stream, 64) ==
        "c2c64d378cd536374ae204b9ef933fcd1a8b2288b3dfa49672ab765b54ee27c7"
        "8a970e0e955c14f3a88e741b97c286f75f8fc299e8148362fa198a39531bed6d");
}

// RFC 8439, section 2.3.2: key 00 01 ... 1f, nonce 000000090000004a00000000, counter 1.
TEST_CASE("The key enters as RFC 8439 2.3.2 says") {
  Seed key;
  std::iota(key.begin(), key.end(), std::uint8_t{0});
  Stream stream(key, {0, 0, 0, 9, 0, 0, 0, 0x4a, 0, 0, 0, 0});
  keystream(stream, 64);  // counter 0
  CHECK(keystream(stream, 64) ==
        "10f1e7e4d13b5915500fdd1fa32071c4c7d1f4c733c068030422aa9ac3d46c4e"
        "d2826446079faa0914c2d705d98b02a2b5129cd1de164eb9cbd083e8a2503c4e");
}

TEST_CASE("A stream's name is its nonce in ASCII") {
  Seed seed{};
  seed[5] = 9;
  Stream named(seed, StreamName::codes), spelt(seed, {'c', 'o', 'd', 'e', 's', 0, 0, 0, 0, 0, 0, 0});
  CHECK(keystream(named, 128) == keystream(spelt, 128));
  Stream orders(seed, StreamName::orders), codes(seed, StreamName::codes), names(seed, StreamName::names);
  const auto a = keystream(orders, 64), b = keystream(codes, 64), c = keystream(names, 64);
  CHECK(a != b);
  CHECK(b != c);
  CHECK(a != c);
}

TEST_CASE("A bounded draw follows its rule: words above the last whole multiple are left out") {
  for (std::uint32_t n : {1U, 2U, 3U, 6U, 600U, 4440U, 0x80000001U, 0xffffffffU}) {
    Stream stream(Seed{}, StreamName::codes), words(Seed{}, StreamName::codes);
    const std::uint64_t limit = (std::uint64_t{1} << 32) / n * n;
    for (int draw = 0; draw < 50; ++draw) {
      std::uint32_t word = words.next32();
      while (word >= limit) word = words.next32();
      CHECK(stream.below(n) == word % n);
    }
  }
}

TEST_CASE("A bounded draw needs a bound") {
  Stream stream(Seed{}, StreamName::codes);
  CHECK_THROWS_AS(stream.below(0), Problem);
}

TEST_CASE("A shuffle loses nothing and reaches every order") {
  Stream stream(Seed{}, StreamName::orders);
  std::map<std::array<int, 3>, int> seen;
  for (int i = 0; i < 6000; ++i) {
    std::array<int, 3> items{1, 2, 3};
    stream.shuffle(items);
    ++seen[items];
  }
  REQUIRE(seen.size() == 6);
  // Pearson's chi-square with 5 degrees of freedom; 20.52 is its upper 0.001 point (printed in common tables; value from memory).
  double statistic = 0;
  for (const auto& [order, count] : seen) {
    auto sorted = order;
    std::ranges::sort(sorted);
    CHECK(sorted == std::array<int, 3>{1, 2, 3});
    statistic += (count - 1000.0) * (count - 1000.0) / 1000.0;
  }
  CHECK(statistic < 20.52);
}

TEST_CASE("The system's chance fills all it is given and never twice alike") {
  SystemChance chance;
  const auto one = chance.bytes<32>(), other = chance.bytes<32>();
  CHECK(one != other);
  CHECK(std::ranges::count(one, 0) < 8);
}
