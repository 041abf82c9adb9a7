#include "evening.h"
#include "trouble.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::Evening;
using testing::troubleOf;

namespace {

struct Seated : Evening {
  explicit Seated(int rounds = 1) : Evening(rounds) {
    seal();
    sitAll();
  }
  tasting::Flight flight(int place) { return tasting::nextFlight(*store, session, {place}).value(); }
  tasting::Receipt hand(const tasting::HandIn& in) { return tasting::handIn(*store, clock, chance, session, in); }
};

std::size_t entries(Evening& evening) { return session::record(*evening.store, evening.session).log.size(); }

}  // namespace

TEST_CASE("a flight shows its cups from left to right, and nothing of what is in them") {
  Seated table(2);
  const tasting::Flight flight = table.flight(3);
  REQUIRE(flight.cups.size() == 3);
  for (int i = 0; i < 3; ++i) CHECK(flight.cups[static_cast<std::size_t>(i)].position == Position{i + 1});
  CHECK(flight.rounds == 2);
  CHECK(flight.items.size() == 4);
  CHECK_FALSE(flight.began);
  const tasting::Flight again = table.flight(3);
  CHECK(again.cups == flight.cups);
}

TEST_CASE("cups are confirmed for the next flight only, and once is enough") {
  Seated table(2);
  CHECK(troubleOf([&] { tasting::begin(*table.store, table.clock, table.session, {1}, {2}); }) == Trouble::notThisRound);
  tasting::begin(*table.store, table.clock, table.session, {1}, {1});
  const auto before = entries(table);
  tasting::begin(*table.store, table.clock, table.session, {1}, {1});
  CHECK(entries(table) == before);
  table.answer(1, 1);
  CHECK(troubleOf([&] { tasting::begin(*table.store, table.clock, table.session, {1}, {1}); }) == Trouble::notThisRound);
}

TEST_CASE("what is no answer is refused by name and leaves nothing behind") {
  Seated table;
  const auto flight = table.flight(1);
  const auto before = entries(table);
  const tasting::HandIn good = table.choose(1, 1, flight.cups[0].code);
  const auto bad = [&](auto&& change) {
    tasting::HandIn in = good;
    change(in);
    return troubleOf([&] { table.hand(in); });
  };
  CHECK(bad([](auto& in) { in.replies[1].value = 0; }) == Trouble::answerOutOfRange);
  CHECK(bad([](auto& in) { in.replies[2].value = 7; }) == Trouble::answerOutOfRange);
  CHECK(bad([](auto& in) { in.replies[1].text = "rather"; }) == Trouble::answerOutOfRange);
  CHECK(bad([](auto& in) { in.replies.push_back({{4}, 1, std::nullopt}); }) == Trouble::answerOutOfRange);
  CHECK(bad([](auto& in) { in.replies.push_back({{9}, 1, std::nullopt}); }) == Trouble::unknown);
  CHECK(bad([](auto& in) { in.replies.pop_back(); }) == Trouble::answerMissing);
  CHECK(bad([](auto& in) { in.replies.clear(); }) == Trouble::answerMissing);
  CHECK(bad([](auto& in) { in.replies.push_back({{4}, 0, std::string(4001, 'x')}); }) == Trouble::tooLong);
  CHECK(bad([](auto& in) { in.replies.push_back(in.replies[1]); }) == Trouble::alreadyThere);
  CHECK(bad([](auto& in) { in.round = {0}; }) == Trouble::noSuchRound);
  CHECK(bad([](auto& in) { in.place = {8}; }) == Trouble::placeEmpty);
  CHECK(entries(table) == before);
  CHECK(tasting::board(*table.store, table.session).locked == 0);
  CHECK(table.flight(1).cups == flight.cups);
}

TEST_CASE("a wrong code is told with the codes of that place, and no others") {
  Seated table;
  const auto flight = table.flight(1);
  try {
    table.hand(table.choose(1, 1, {100}));
    FAIL("taken");
  } catch (const Problem& problem) {
    CHECK(problem.trouble() == Trouble::codeNotHere);
    const auto text = [](Code code) { return std::to_string(code.value); };
    CHECK(problem.values().at("codes") == text(flight.cups[0].code) + ", " + text(flight.cups[1].code) + ", " + text(flight.cups[2].code));
  }
}

TEST_CASE("a spilled code and a spare one that is not out yet are no answers") {
  Seated table;
  const auto flight = table.flight(1);
  const Code spare = tasting::spilled(*table.store, table.clock, table.session, flight.cups[0].code);
  CHECK(troubleOf([&] { table.hand(table.choose(1, 1, flight.cups[0].code)); }) == Trouble::codeNotHere);
  const auto other = table.flight(2);
  Code unused{0};
  for (const Cup& cup : session::record(*table.store, table.session).plan.cups)
    if (cup.place == Place{2} && cup.spare == 1) unused = cup.code;
  CHECK(troubleOf([&] { table.hand(table.choose(2, 1, unused)); }) == Trouble::codeNotHere);
  CHECK_FALSE(table.hand(table.choose(1, 1, spare)).wasThere());
}

TEST_CASE("hostile words are cleaned as they come in, and blank ones are none") {
  Seated table;
  table.hand(table.choose(1, 1, table.flight(1).cups[0].code, Sureness::sure, Clue::smell, "  left\xE2\x80\xAEright\r\n<b>bold</b>\x01 "));
  table.hand(table.choose(2, 1, table.flight(2).cups[0].code, Sureness::sure, Clue::smell, " \t\n "));
  session::close(*table.store, table.clock, table.session);
  session::reveal(*table.store, table.clock, table.session);
  const RevealedSession result = session::revealed(*table.store, table.session);
  CHECK(result.panel[0].words == "leftright  <b>bold</b>");
  CHECK(result.panel[1].words.empty());
  CHECK(session::verify(*table.store, table.session).holds());
}

TEST_CASE("several hand-ins are taken together or not at all") {
  Seated table;
  const auto one = table.choose(1, 1, table.flight(1).cups[0].code), two = table.choose(2, 1, table.flight(2).cups[0].code);
  auto wrong = table.choose(3, 1, table.flight(3).cups[0].code);
  wrong.replies[1].value = 5;
  const auto before = entries(table);
  CHECK(troubleOf([&] { tasting::handInAll(*table.store, table.clock, table.chance, table.session, {one, two, wrong}); }) == Trouble::answerOutOfRange);
  CHECK(entries(table) == before);
  CHECK(tasting::handInAll(*table.store, table.clock, table.chance, table.session, {one, two}).size() == 2);
  CHECK(tasting::board(*table.store, table.session).locked == 2);
}

TEST_CASE("a hand-in that was acknowledged is acknowledged again, after it was set aside too, and by nobody else's leave") {
  Seated table;
  const auto in = table.choose(1, 1, table.flight(1).cups[0].code);
  const auto first = table.hand(in);
  tasting::setAside(*table.store, table.clock, table.chance, table.session, {1}, {1}, VoidReason::wrongPerson);
  CHECK(table.hand(in).seq() == first.seq());
  auto another = in;
  another.clientId[0] ^= 1;
  CHECK(troubleOf([&] { table.hand(another); }) == Trouble::flightLocked);
  tasting::setAside(*table.store, table.clock, table.chance, table.session, {2}, {1}, VoidReason::cupLost);
  CHECK(troubleOf([&] { table.hand(table.choose(2, 1, in.replies.empty() ? Code{} : Code{in.replies[0].value})); }) == Trouble::flightVoid);
}

TEST_CASE("time may go backwards; order is the order of the log") {
  Seated table(2);
  const auto first = table.answer(1, 1);
  table.clock.set(1000000000000);
  const auto second = table.answer(1, 1);
  CHECK(second.at() < first.at());
  CHECK(second.seq() > first.seq());
  session::close(*table.store, table.clock, table.session);
  session::reveal(*table.store, table.clock, table.session);
  session::decide(*table.store, table.clock, table.chance, table.session, "first thought");
  table.clock.set(900000000000);
  session::decide(*table.store, table.clock, table.chance, table.session, "second thought");
  CHECK(session::revealed(*table.store, table.session).decision == "second thought");
  CHECK(session::lastDecision(*table.store, {table.mine}) == "second thought");
  CHECK(session::verify(*table.store, table.session).holds());
}
