#include "blinding/commitment.h"
#include "blinding/seal_mark.h"

#include <catch2/catch.hpp>

#include <regex>

using namespace oddglass;
using namespace oddglass::blinding;

namespace {

KeyContents keyContents() {
  KeyContents key;
  for (int i = 0; i < 32; ++i) {
    key.seed[i] = static_cast<std::uint8_t>(i);
    key.salt[i] = static_cast<std::uint8_t>(0xff - i);
  }
  key.lines = {{Code{913}, Slot{2}}, {Code{275}, Slot{1}}, {Code{482}, Slot{1}}};
  return key;
}

const canon::Json plan{{"rounds", 1}, {"note", "Blåbær"}, {"lots", {1, 2}}};

}  // namespace

// Worked out apart from this program with Python's hashlib and json (see tests/verify_export.py for the same rule).
TEST_CASE("Plan hash and commitment are what hashlib gives for the documented text") {
  CHECK(canon::hex(planHash(plan)) == "0308894ea63116c1b4c07d10971b9f748d804145a3ea704027b3dae743f5e613");
  CHECK(canon::hex(commitment(keyContents(), planHash(plan))) == "901ba3e108f8c20aa1475ce383c5a86dc18dc9fc72952e9db5b34b14221a91b6");
}

TEST_CASE("The order in which lines are given does not matter, everything else does") {
  const auto hash = planHash(plan);
  const auto committed = commitment(keyContents(), hash);
  auto key = keyContents();
  std::swap(key.lines[0], key.lines[2]);
  CHECK(commitmentHolds(committed, key, hash));

  key = keyContents();
  key.lines[0].second = Slot{1};
  CHECK_FALSE(commitmentHolds(committed, key, hash));
  key = keyContents();
  key.lines.pop_back();
  CHECK_FALSE(commitmentHolds(committed, key, hash));
  key = keyContents();
  key.seed[31] ^= 1;
  CHECK_FALSE(commitmentHolds(committed, key, hash));
  key = keyContents();
  key.salt[0] ^= 1;
  CHECK_FALSE(commitmentHolds(committed, key, hash));
  key = keyContents();
  key.generator = "chacha20/2";
  CHECK_FALSE(commitmentHolds(committed, key, hash));
  auto otherPlan = plan;
  otherPlan["rounds"] = 2;
  CHECK_FALSE(commitmentHolds(committed, keyContents(), planHash(otherPlan)));
}

// By hand from the rule: consonants b d f g h k l m n p r s t v w z are 0 to 15, vowels a i o u are 0 to 3.
TEST_CASE("The seal mark is four syllables and a digit") {
  canon::Digest commitment{};
  CHECK(sealMark(commitment) == "baba baba 0");
  commitment[0] = 0xff;
  commitment[1] = 0xff;
  commitment[2] = 0xff;
  commitment[3] = 0xff;  // 255 mod 10
  CHECK(sealMark(commitment) == "zuzu zuzu 5");
  // 010100 100100 101001 011011: k a, p a, r i, l u
  commitment[0] = 0b01010010;
  commitment[1] = 0b01001010;
  commitment[2] = 0b01011011;
  commitment[3] = 107;
  CHECK(sealMark(commitment) == "kapa rilu 7");
}

TEST_CASE("Only the first four bytes enter the seal mark, and each of their bits does") {
  canon::Digest commitment{};
  const auto mark = sealMark(commitment);
  for (int bit = 0; bit < 24; ++bit) {
    auto other = commitment;
    other[bit / 8] ^= static_cast<std::uint8_t>(1 << bit % 8);
    CHECK(sealMark(other) != mark);
    CHECK(std::regex_match(sealMark(other), std::regex("([bdfghklmnprstvwz][aiou]){2} ([bdfghklmnprstvwz][aiou]){2} [0-9]")));
  }
  commitment[4] = 9;
  CHECK(sealMark(commitment) == mark);
}
