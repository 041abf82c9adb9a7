#include "evening.h"
#include "session/erase.h"
#include "store/keep.h"
#include "store/step.h"
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
  CHECK(flight->picks == std::vector{Position{1}});
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

TEST_CASE("whoever is forgotten while the table is open has left it: nobody waits for them and nobody answers for them") {
  Evening evening(2);
  evening.seal();
  evening.sitAll();
  for (int place = 1; place <= 7; ++place) evening.answer(place, 1);
  session::erase(*evening.store, evening.clock, evening.chance, evening.friends[1], ErasureKind::words, true);
  CHECK(tasting::board(*evening.store, evening.session).places[1].step == tasting::PlaceStep::left);
  CHECK(troubleOf([&] { evening.answer(2, 1); }) == Trouble::placeLeft);
  session::erase(*evening.store, evening.clock, evening.chance, evening.friends[2], ErasureKind::everything, true);
  CHECK(troubleOf([&] { evening.answer(3, 1); }) == Trouble::placeLeft);
  for (int place : {1, 4, 5, 6, 7}) evening.answer(place, 1);
  CHECK(tasting::board(*evening.store, evening.session).everyoneHasLocked);
  session::close(*evening.store, evening.clock, evening.session);
  session::reveal(*evening.store, evening.clock, evening.session);
  CHECK(session::verify(*evening.store, evening.session).holds());
  const RevealedSession result = session::revealed(*evening.store, evening.session);
  CHECK(std::ranges::none_of(result.panel, [](const PanelFlight& flight) { return flight.place == Place{3}; }));
  CHECK(std::ranges::count_if(result.panel, [](const PanelFlight& flight) { return flight.place == Place{2} && flight.isAnswered(); }) == 1);
}

TEST_CASE("a plan that is still being made forgets the person, and the brewer's own words with the brewer") {
  Evening evening;
  Draft draft = session::draft(*evening.store, evening.session);
  draft.promises = {{Outcome::shown, "zygomorphic promise"}};
  session::saveDraft(*evening.store, evening.clock, draft);
  session::erase(*evening.store, evening.clock, evening.chance, evening.pourer, ErasureKind::words, true);
  session::erase(*evening.store, evening.clock, evening.chance, evening.friends[0], ErasureKind::everything, true);
  draft = session::draft(*evening.store, evening.session);
  CHECK_FALSE(draft.pourer);
  CHECK(draft.tasters.size() == 6);
  CHECK(draft.promises.size() == 1);
  session::erase(*evening.store, evening.clock, evening.chance, evening.maker, ErasureKind::words, true);
  CHECK(session::draft(*evening.store, evening.session).promises.empty());
  CHECK_FALSE(fileHolds(evening.store->file(), "zygomorphic"));
  CHECK_FALSE(fileHolds(evening.store->file().string() + "-wal", "zygomorphic"));
}

TEST_CASE("a brewer who sat at the table is one person in the count of the forgotten") {
  Evening evening;
  playToReveal(evening);
  session::erase(*evening.store, evening.clock, evening.chance, evening.maker, ErasureKind::everything, true);
  CHECK(session::verify(*evening.store, evening.session).erased == 1);
  session::erase(*evening.store, evening.clock, evening.chance, evening.friends[0], ErasureKind::words, true);
  CHECK(session::verify(*evening.store, evening.session).erased == 2);
}

TEST_CASE("while somebody else reads the file, an erasure says that bytes are left; the next opening takes them") {
  Evening evening;
  playToReveal(evening);
  const auto file = evening.store->file();
  {
    auto reader = store::Store::open(file, store::Access::read, evening.clock, evening.chance);
    SQLite::Transaction looking(reader->db());
    REQUIRE(reader->db().execAndGet("SELECT count(*) FROM taster").getInt() == 8);
    const session::Erased erased = session::erase(*evening.store, evening.clock, evening.chance, evening.friends[0], ErasureKind::everything, true);
    CHECK(erased.sessions == 1);
    CHECK_FALSE(erased.bytesGone);
    CHECK((fileHolds(file, "Friend A") || fileHolds(file.string() + "-wal", "Friend A")));
  }
  evening.store.reset();
  evening.store = store::Store::open(file, store::Access::write, evening.clock, evening.chance);
  CHECK_FALSE(fileHolds(file, "Friend A"));
  CHECK_FALSE(fileHolds(file.string() + "-wal", "Friend A"));
  CHECK(session::erase(*evening.store, evening.clock, evening.chance, evening.friends[1], ErasureKind::everything, true).bytesGone);
}

TEST_CASE("backups whose folder cannot be seen just now are named too") {
  Evening evening;
  testing::Folder stick;
  std::filesystem::create_directory(stick / "stick");
  store::keepCopyAs(*evening.store, evening.clock, stick / "stick/copy.oddglass", store::BackupReason::asked);
  store::keepCopyAs(*evening.store, evening.clock, stick / "thrown away.oddglass", store::BackupReason::asked);
  std::filesystem::remove(stick / "thrown away.oddglass");
  std::filesystem::rename(stick / "stick", stick / "pulled out");
  const session::Erased erased = session::erase(*evening.store, evening.clock, evening.chance, evening.friends[0], ErasureKind::words, true);
  CHECK(erased.copies == std::vector<std::filesystem::path>{stick / "stick/copy.oddglass"});
}
