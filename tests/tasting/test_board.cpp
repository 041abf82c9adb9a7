#include "evening.h"
#include "trouble.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using tasting::PlaceStep;
using testing::Evening;
using testing::troubleOf;

namespace {

tasting::Board board(Evening& evening) { return tasting::board(*evening.store, evening.session); }
PlaceStep stepOf(Evening& evening, int place) { return board(evening).places.at(static_cast<std::size_t>(place - 1)).step; }

}  // namespace

TEST_CASE("there is no board of a plan that is not sealed, nor of a session that is not there") {
  Evening evening;
  CHECK(troubleOf([&] { board(evening); }) == Trouble::notSealed);
  CHECK(troubleOf([&] { tasting::board(*evening.store, SessionId{std::string(32, 'a')}); }) == Trouble::unknown);
}

TEST_CASE("a place goes from empty over waiting and tasting to locked") {
  Evening evening(2);
  const auto sealed = evening.seal();
  const tasting::Board before = board(evening);
  CHECK(before.state == State::sealed);
  CHECK(before.sealMark == sealed.sealMark);
  CHECK(before.guestTitle == "An evening with cups");
  CHECK(before.rounds == 2);
  REQUIRE(before.places.size() == 8);
  CHECK(before.places.back().isSpare);
  CHECK_FALSE(before.places[6].isSpare);
  CHECK(before.invited.size() == 7);  // six friends and the maker; never the pourer
  CHECK(std::ranges::none_of(before.invited, [&](const auto& each) { return each.taster == evening.pourer; }));
  CHECK(stepOf(evening, 1) == PlaceStep::empty);
  CHECK(before.expected == 0);
  CHECK_FALSE(before.everyoneHasLocked);

  evening.sit(1, evening.friends[0]);
  CHECK(stepOf(evening, 1) == PlaceStep::waiting);
  CHECK(board(evening).places[0].who == "Friend A");
  CHECK(board(evening).expected == 2);
  tasting::begin(*evening.store, evening.clock, evening.session, {1}, {1});
  CHECK(stepOf(evening, 1) == PlaceStep::tasting);
  CHECK(board(evening).state == State::tasting);
  evening.answer(1, 1);
  CHECK(stepOf(evening, 1) == PlaceStep::waiting);
  CHECK(board(evening).places[0].round == Round{2});
  evening.answer(1, 1);
  CHECK(stepOf(evening, 1) == PlaceStep::locked);
  CHECK(board(evening).places[0].round == std::nullopt);
  CHECK(board(evening).locked == 2);
  CHECK(board(evening).everyoneHasLocked);
}

TEST_CASE("a spilled cup sends its place back to waiting: the new cups are confirmed again") {
  Evening evening;
  evening.seal();
  evening.sit(1, evening.friends[0]);
  tasting::begin(*evening.store, evening.clock, evening.session, {1}, {1});
  const auto flight = tasting::nextFlight(*evening.store, evening.session, {1}).value();
  CHECK(flight.began);
  tasting::spilled(*evening.store, evening.clock, evening.session, flight.cups[1].code);
  CHECK_FALSE(tasting::nextFlight(*evening.store, evening.session, {1})->began);
  CHECK(stepOf(evening, 1) == PlaceStep::waiting);
}

TEST_CASE("a loose taster's name is nowhere on the board") {
  Evening evening;
  evening.seal();
  evening.sit(1, evening.friends[0], ShownAs::loose);
  evening.sit(2, evening.friends[1], ShownAs::nickname);
  CHECK(board(evening).places[0].who.empty());
  CHECK(board(evening).places[1].who == "fox 1");
}

TEST_CASE("flights set aside and people who left are not waited for") {
  Evening evening(2);
  evening.seal();
  evening.sit(1, evening.friends[0]);
  evening.sit(2, evening.friends[1]);
  tasting::setAside(*evening.store, evening.clock, evening.chance, evening.session, {1}, {1}, VoidReason::mixedUp);
  CHECK(board(evening).expected == 3);
  CHECK(board(evening).places[0].round == Round{2});
  evening.answer(1, 1);
  CHECK_FALSE(board(evening).everyoneHasLocked);
  tasting::stopHere(*evening.store, evening.clock, evening.session, {2});
  CHECK(stepOf(evening, 2) == PlaceStep::left);
  CHECK(board(evening).expected == 1);
  CHECK(board(evening).everyoneHasLocked);
}

TEST_CASE("the board counts what was said and knows when the pourer was done") {
  Evening evening;
  evening.seal();
  CHECK_FALSE(board(evening).pourReported);
  session::sayPoured(*evening.store, evening.clock, evening.session);
  tasting::said(*evening.store, evening.clock, evening.chance, evening.session, {}, "");
  CHECK(board(evening).pourReported);
  CHECK(board(evening).timesSaid == 1);
}
