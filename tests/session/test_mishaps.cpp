// What goes wrong at a table: each goes on record, and nothing of it depends on the key.
#include "evening.h"
#include "session/erase.h"
#include "session/look.h"
#include "tasting/typed.h"
#include "trouble.h"

#include "insight/findings.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <iterator>

using namespace oddglass;
using testing::Evening;
using testing::troubleOf;

namespace {

/// Two rounds, everybody sits, nobody has begun.
struct Table : Evening {
  explicit Table(int rounds = 2) : Evening(rounds) {
    seal();
    sitAll();
  }
  void begin(int place) { tasting::begin(*store, clock, session, {place}, tasting::nextFlight(*store, session, {place})->round); }
  bool hasBegun(int place) { return tasting::nextFlight(*store, session, {place})->began; }
  tasting::MatsSwapped swap(int one, int other, int round) { return tasting::matsSwapped(*store, clock, chance, session, {one}, {other}, {round}); }
  tasting::WrongPerson wrong(int place) { return tasting::wrongPerson(*store, clock, chance, session, {place}); }
  void typeOne(int place) {
    const auto flight = tasting::nextFlight(*store, session, {place}).value();
    tasting::keepTyped(*store, clock, session, {place}, flight.round, {{{1}, flight.cups[0].code.value, std::nullopt}});
  }
  bool hasTyped(int place, int round) { return !tasting::typed(*store, session, {place}, {round}).empty(); }
  tasting::BoardPlace now(int place) { return tasting::board(*store, session).places.at(static_cast<std::size_t>(place - 1)); }
  /// All that is open is answered, the table closed and the key opened.
  insight::Findings end() {
    const tasting::Board board = tasting::board(*store, session);
    for (const auto& place : board.places)
      while ((now(place.place.value).step == tasting::PlaceStep::waiting || now(place.place.value).step == tasting::PlaceStep::tasting)) answer(place.place.value, 1);
    session::close(*store, clock, session);
    session::reveal(*store, clock, session);
    CHECK(session::verify(*store, session).holds());
    return insight::findingsOf(session::revealed(*store, session));
  }
};

std::string bytesOfFile(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

int countOf(const insight::Findings& findings, insight::DeviationKind kind) {
  const auto found = std::ranges::find(findings.deviations, kind, &insight::Deviation::kind);
  return found == findings.deviations.end() ? 0 : found->count;
}

}  // namespace

TEST_CASE("mats swapped before either locks: both begin those cups again, and what was filled in is dropped") {
  Table table;
  CHECK(troubleOf([&] { table.swap(1, 2, 1); }) == Trouble::wrongState);  // nobody has begun: the mats are just put back
  table.begin(1);
  table.begin(2);
  table.typeOne(1);
  const auto done = table.swap(2, 1, 1);
  CHECK(done.begunAgain == std::vector<Place>{{1}, {2}});
  CHECK(done.setAside.empty());
  CHECK_FALSE(table.hasBegun(1));
  CHECK_FALSE(table.hasBegun(2));
  CHECK_FALSE(table.hasTyped(1, 1));
  table.begin(1);
  CHECK(table.hasBegun(1));
  const auto lines = session::history(*table.store, table.session);
  const auto line = std::ranges::find(lines, Event::matsSwapped, &session::HistoryLine::event);
  REQUIRE(line != lines.end());
  CHECK(line->places == std::vector<Place>{{1}, {2}});
  const auto findings = table.end();
  CHECK(countOf(findings, insight::DeviationKind::matsSwapped) == 1);
  CHECK(countOf(findings, insight::DeviationKind::voided) == 0);
}

TEST_CASE("mats swapped after one or both locked: what is locked is set aside in the same step") {
  Table table;
  table.answer(1, 1);
  table.begin(2);
  const auto one = table.swap(1, 2, 1);
  CHECK(one.begunAgain == std::vector<Place>{{2}});
  CHECK(one.setAside == std::vector<Place>{{1}});
  table.answer(2, 1);
  table.answer(3, 1);
  table.answer(4, 1);
  CHECK(table.swap(3, 4, 1).setAside == std::vector<Place>{{3}, {4}});
  const auto again = table.swap(3, 4, 1);  // said twice: nothing is left to set aside
  CHECK(again.setAside.empty());
  CHECK(again.begunAgain.empty());
  CHECK(troubleOf([&] { table.swap(3, 3, 1); }) == Trouble::samePlace);
  CHECK(troubleOf([&] { table.swap(3, 99, 1); }) == Trouble::noSuchPlace);
  CHECK(troubleOf([&] { table.swap(3, 8, 1); }) == Trouble::placeEmpty);
  CHECK(troubleOf([&] { table.swap(3, 4, 9); }) == Trouble::noSuchRound);
  CHECK(troubleOf([&] { table.swap(5, 6, 2); }) == Trouble::notThisRound);
  const auto findings = table.end();
  CHECK(findings.voided == 3);
  CHECK(countOf(findings, insight::DeviationKind::matsSwapped) == 3);
  CHECK(troubleOf([&] { table.swap(5, 6, 1); }) == Trouble::tableClosed);
}

TEST_CASE("the wrong person with nothing locked gets up: somebody else sits there, and begins as if nobody had") {
  Table table;
  table.begin(1);
  table.typeOne(1);
  tasting::said(*table.store, table.clock, table.chance, table.session, {{1}}, "");
  CHECK(table.wrong(1).freed);
  CHECK(table.now(1).step == tasting::PlaceStep::empty);
  CHECK(troubleOf([&] { table.wrong(1); }) == Trouble::placeEmpty);
  const TasterId guest = shelf::save(*table.store, table.chance, Taster{{}, "Guest", "", false, false});
  table.sit(1, guest, ShownAs::loose);
  CHECK_FALSE(table.hasBegun(1));
  CHECK_FALSE(table.hasTyped(1, 1));
  table.sit(8, table.friends[0]);  // whoever got up sits elsewhere
  const auto findings = table.end();
  CHECK(countOf(findings, insight::DeviationKind::placeFreed) == 1);
  CHECK(countOf(findings, insight::DeviationKind::said) == 0);  // the one who heard it had got up
  CHECK(findings.voided == 0);
  CHECK(findings.all.trials == 14);  // seven people who made none of it, two rounds
}

TEST_CASE("the wrong person with something locked: that is set aside, and the place stays") {
  Table table;
  table.answer(1, 1);
  const auto done = table.wrong(1);
  CHECK_FALSE(done.freed);
  CHECK(done.setAside == 1);
  CHECK(table.now(1).step == tasting::PlaceStep::waiting);
  CHECK(table.wrong(1).setAside == 0);
  tasting::stopHere(*table.store, table.clock, table.session, {1});
  CHECK(troubleOf([&] { table.wrong(1); }) == Trouble::placeLeft);
  const auto findings = table.end();
  CHECK(findings.voided == 1);
  CHECK(findings.missing == 1);
}

TEST_CASE("a misread code is kept as it was written, and goes with whoever takes everything back") {
  Table table;
  const std::string written = "4?2 or 47Z";
  tasting::setAside(*table.store, table.clock, table.chance, table.session, {1}, {1}, VoidReason::misread, written);
  tasting::setAside(*table.store, table.clock, table.chance, table.session, {2}, {1}, VoidReason::misread, "unclear");
  tasting::setAside(*table.store, table.clock, table.chance, table.session, {3}, {1}, VoidReason::misread, written);
  session::takeBack(*table.store, table.clock, table.session, {1}, true);
  CHECK(session::verify(*table.store, table.session).holds());
  table.end();
  const auto remarks = session::record(*table.store, table.session).remarks;
  REQUIRE(remarks.size() == 2);  // of places 2 and 3
  CHECK(remarks[0].text == "unclear");
  CHECK(remarks[1].text == written);
}

TEST_CASE("answers are taken back while the table is open, by place, named or not, and leave nothing behind") {
  Evening evening(2);
  evening.seal();
  evening.sit(1, evening.friends[0], ShownAs::loose);
  evening.sit(2, evening.friends[1]);
  evening.sit(3, evening.friends[2]);
  const std::string words = "tastes of a wet summer";
  evening.answer(1, 1, words);
  evening.answer(2, 1);
  const auto take = [&](int place, bool sure = true) { return session::takeBack(*evening.store, evening.clock, evening.session, {place}, sure); };
  CHECK(troubleOf([&] { take(1, false); }) == Trouble::askTwice);
  CHECK(troubleOf([&] { take(4); }) == Trouble::placeEmpty);
  CHECK(troubleOf([&] { take(99); }) == Trouble::noSuchPlace);
  CHECK(take(1));
  CHECK(bytesOfFile(evening.folder / "cellar.oddglass").find(words) == std::string::npos);
  CHECK(troubleOf([&] { take(1); }) == Trouble::placeLeft);
  CHECK(tasting::board(*evening.store, evening.session).places[0].step == tasting::PlaceStep::left);
  CHECK(troubleOf([&] { evening.answer(1, 1); }) == Trouble::placeLeft);
  evening.answer(2, 1);
  session::close(*evening.store, evening.clock, evening.session);
  CHECK(troubleOf([&] { take(2); }) == Trouble::tooLateToTakeBack);
  session::reveal(*evening.store, evening.clock, evening.session);
  CHECK(session::verify(*evening.store, evening.session).holds());
  const auto findings = insight::findingsOf(session::revealed(*evening.store, evening.session));
  CHECK(findings.all.trials == 2);
  CHECK(countOf(findings, insight::DeviationKind::erased) == 1);
  CHECK(countOf(findings, insight::DeviationKind::closedEarly) == 1);  // place 3
}

TEST_CASE("a clock that runs backwards changes no order: it is marked in the history, and told once") {
  Table table;
  table.answer(1, 1);
  const Millis before = table.clock.now();
  table.clock.set(before - 86'400'000);
  table.answer(2, 1);
  table.clock.set(before + 60'000);
  const auto findings = table.end();
  CHECK(countOf(findings, insight::DeviationKind::clockBack) == 1);
  const auto lines = session::history(*table.store, table.session);
  CHECK(std::ranges::count_if(lines, &session::HistoryLine::clockBack) == 1);
  CHECK(std::ranges::is_sorted(lines, {}, [](const auto& line) { return line.seq.value; }));
}
