#include "evening.h"
#include "session/erase.h"
#include "trouble.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <iterator>

using namespace oddglass;
using testing::Evening;
using testing::troubleOf;

namespace {

bool fileHolds(const std::filesystem::path& file, const std::string& text) {
  std::ifstream in(file, std::ios::binary);
  const std::string bytes((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
  return bytes.find(text) != std::string::npos;
}

void playToReveal(Evening& evening) {
  evening.seal();
  evening.sitAll();
  for (int place = 1; place <= 7; ++place) evening.answer(place, 1, "tastes of xylographic plums " + std::to_string(place));
  session::close(*evening.store, evening.clock, evening.session);
  session::reveal(*evening.store, evening.clock, evening.session);
}

}  // namespace

TEST_CASE("name and words can be forgotten; the answers stay and the chain holds") {
  Evening evening;
  playToReveal(evening);
  const auto file = evening.store->file();
  REQUIRE((fileHolds(file, "Friend A") || fileHolds(file.string() + "-wal", "Friend A")));
  CHECK(troubleOf([&] { session::erase(*evening.store, evening.clock, evening.chance, evening.friends[0], ErasureKind::words, false); }) == Trouble::askTwice);
  const session::Erased erased = session::erase(*evening.store, evening.clock, evening.chance, evening.friends[0], ErasureKind::words, true);
  CHECK(erased.sessions == 1);
  CHECK(erased.copies.size() == 1);  // the backup made at the reveal
  const RevealedSession result = session::revealed(*evening.store, evening.session);
  CHECK(result.panel.size() == 6);
  const auto flight = std::ranges::find(result.panel, Place{1}, &PanelFlight::place);
  CHECK(flight->words.empty());
  CHECK(flight->chosen == Position{1});
  const session::Verification verification = session::verify(*evening.store, evening.session);
  CHECK(verification.holds());
  CHECK(verification.erased == 1);
  CHECK_FALSE(fileHolds(file, "Friend A"));
  CHECK_FALSE(fileHolds(file.string() + "-wal", "Friend A"));
  CHECK_FALSE(fileHolds(file, "xylographic plums 1"));
  CHECK(fileHolds(file, "xylographic plums 2"));
}

TEST_CASE("everything can be forgotten; findings are without it and the chain holds") {
  Evening evening;
  playToReveal(evening);
  session::erase(*evening.store, evening.clock, evening.chance, evening.friends[2], ErasureKind::everything, true);
  const RevealedSession result = session::revealed(*evening.store, evening.session);
  CHECK(result.panel.size() == 5);
  CHECK(result.erasedPeople == 1);
  CHECK(session::verify(*evening.store, evening.session).holds());
  CHECK_FALSE(fileHolds(evening.store->file(), "Friend C"));
  CHECK(troubleOf([&] { session::erase(*evening.store, evening.clock, evening.chance, evening.friends[2], ErasureKind::everything, true); }) == Trouble::unknown);
}

TEST_CASE("the brewer's own words go with the brewer") {
  Evening evening;
  playToReveal(evening);
  session::decide(*evening.store, evening.clock, evening.chance, evening.session, "quixotic decision");
  session::erase(*evening.store, evening.clock, evening.chance, evening.maker, ErasureKind::words, true);
  const RevealedSession result = session::revealed(*evening.store, evening.session);
  CHECK(result.decision.empty());
  CHECK(result.promises.empty());
  CHECK(session::verify(*evening.store, evening.session).holds());
  CHECK_FALSE(fileHolds(evening.store->file(), "quixotic decision"));
}

TEST_CASE("a loose taster cannot be found after the close") {
  Evening evening;
  evening.seal();
  evening.sit(1, evening.friends[0], ShownAs::loose);
  evening.answer(1, 1);
  session::close(*evening.store, evening.clock, evening.session);
  CHECK(session::erase(*evening.store, evening.clock, evening.chance, evening.friends[0], ErasureKind::everything, true).sessions == 0);
  session::reveal(*evening.store, evening.clock, evening.session);
  CHECK(session::revealed(*evening.store, evening.session).panel.size() == 1);
}

TEST_CASE("somebody may be forgotten in the middle of an evening") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  for (int place = 1; place <= 7; ++place) evening.answer(place, 1);
  session::erase(*evening.store, evening.clock, evening.chance, evening.friends[1], ErasureKind::everything, true);
  CHECK(tasting::board(*evening.store, evening.session).locked == 6);
  session::close(*evening.store, evening.clock, evening.session);
  session::reveal(*evening.store, evening.clock, evening.session);
  CHECK(session::revealed(*evening.store, evening.session).panel.size() == 5);
  CHECK(session::verify(*evening.store, evening.session).holds());
}
