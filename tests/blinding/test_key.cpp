#include "blinding/key.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "fixed.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <type_traits>

namespace oddglass::store {
/// Stands in for the store's log, which alone can make an entry.
class Log {
 public:
  static Logged entry(Event event) { return Logged(Seq{7}, event); }
};
}  // namespace oddglass::store

using namespace oddglass;
using namespace oddglass::blinding;
using oddglass::testing::FixedChance;

namespace {

KeyContents contents() {
  KeyContents key;
  key.seed.fill(3);
  key.salt.fill(250);
  key.lines = {{Code{913}, Slot{2}}, {Code{275}, Slot{1}}, {Code{482}, Slot{1}}};
  return key;
}

SealedKey sealed() {
  FixedChance chance;
  return seal(contents(), chance);
}

Logged revealed() { return store::Log::entry(Event::revealed); }

}  // namespace

static_assert(!std::is_copy_constructible_v<SealedKey> && !std::is_copy_assignable_v<SealedKey>);
static_assert(std::is_nothrow_move_constructible_v<SealedKey>);
static_assert(!std::is_constructible_v<OpenedKey, KeyContents>);
static_assert(!std::is_constructible_v<Logged, Seq, Event>);
static_assert(!std::is_convertible_v<Place, Code>);

TEST_CASE("A key comes out of its box as it went in, sorted by code") {
  const OpenedKey opened = open(sealed(), revealed());
  auto expected = contents();
  std::ranges::sort(expected.lines);
  CHECK(opened.contents() == expected);
  CHECK(opened.slotOf(Code{913}) == Slot{2});
  CHECK(opened.slotOf(Code{275}) == Slot{1});
  CHECK_THROWS_AS(opened.slotOf(Code{914}), Problem);
}

TEST_CASE("A key survives the store") {
  const SealedKey key = sealed();
  const OpenedKey opened = open(SealedKey::fromBox(key.box(), key.secret()), store::Log::entry(Event::pourSheetOpened));
  CHECK(opened.contents().seed == contents().seed);
}

TEST_CASE("A key opens for the pour sheet, a look after a round, the reveal and a broken seal, and for nothing else") {
  for (Event event : allOf<Event>()) {
    const bool may = event == Event::pourSheetOpened || event == Event::looked || event == Event::revealed || event == Event::broken;
    if (may) {
      CHECK_NOTHROW(open(sealed(), store::Log::entry(event)));
    } else {
      try {
        open(sealed(), store::Log::entry(event));
        FAIL("the key opened");
      } catch (const Problem& problem) {
        CHECK(problem.trouble() == Trouble::stillSealed);
      }
    }
  }
}

TEST_CASE("What was sealed is wiped") {
  auto key = contents();
  FixedChance chance;
  const SealedKey sealed = seal(std::move(key), chance);
  CHECK(key.lines.empty());
  CHECK(key.seed == Seed{});
  CHECK(key.salt == Salt{});
  CHECK(sealed.box().size() > 100);
}

TEST_CASE("The box shows nothing of the key, and two boxes of one key are not alike") {
  FixedChance chance;
  const SealedKey one = seal(contents(), chance), other = seal(contents(), chance);
  CHECK(one.box() != other.box());
  CHECK(one.box().size() == other.box().size());
  CHECK(one.secret() != other.secret());
  const std::string text(one.box().begin(), one.box().end());
  CHECK(text.find("lines") == std::string::npos);
  CHECK(text.find("chacha20") == std::string::npos);
}

TEST_CASE("Another order in the cups gives a box of the same length") {
  FixedChance chance;
  auto turned = contents();
  for (auto& [code, slot] : turned.lines) slot.value = 3 - slot.value;
  CHECK(seal(std::move(turned), chance).box().size() == sealed().box().size());
}

TEST_CASE("An altered, cut or foreign box is named as damage") {
  const SealedKey key = sealed();
  std::vector<SealedKey> damaged;
  for (std::size_t at : {std::size_t{0}, std::size_t{23}, std::size_t{24}, std::size_t{40}, key.box().size() - 1}) {
    Bytes box = key.box();
    box[at] ^= 1;
    damaged.push_back(SealedKey::fromBox(std::move(box), key.secret()));
  }
  damaged.push_back(SealedKey::fromBox(Bytes(key.box().begin(), key.box().end() - 1), key.secret()));
  damaged.push_back(SealedKey::fromBox({}, key.secret()));
  damaged.push_back(SealedKey::fromBox(key.box(), Secret{}));
  for (auto& each : damaged) {
    try {
      open(std::move(each), revealed());
      FAIL("a damaged box opened");
    } catch (const Problem& problem) {
      CHECK(problem.trouble() == Trouble::storeDamaged);
      CHECK(problem.argument() == "key");
    }
  }
}
