#include "evening.h"
#include "trouble.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using testing::Evening;
using testing::troubleOf;

namespace {

Code cupOf(Evening& evening, int place, int round, int position, int spare = 0) {
  for (const Cup& cup : session::record(*evening.store, evening.session).plan.cups)
    if (cup.place == Place{place} && cup.round == Round{round} && cup.position == Position{position} && cup.spare == spare) return cup.code;
  throw std::logic_error("no such cup");
}

Code spill(Evening& evening, Code code) { return tasting::spilled(*evening.store, evening.clock, evening.session, code); }
void aside(Evening& evening, int place, int round, VoidReason reason, const std::string& words = {}) {
  tasting::setAside(*evening.store, evening.clock, evening.chance, evening.session, {place}, {round}, reason, words);
}

}  // namespace

TEST_CASE("a spilled cup gives way to its own spare code, once") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  const Code lost = cupOf(evening, 2, 1, 3), spare = cupOf(evening, 2, 1, 3, 1);
  CHECK(troubleOf([&] { spill(evening, spare); }) == Trouble::codeNotHere);  // not on the table yet
  CHECK(spill(evening, lost) == spare);
  CHECK(troubleOf([&] { spill(evening, lost); }) == Trouble::alreadySpilled);
  CHECK(troubleOf([&] { spill(evening, spare); }) == Trouble::noSpareLeft);
  CHECK(troubleOf([&] { spill(evening, {100}); }) == Trouble::codeNotHere);
  const auto flight = tasting::nextFlight(*evening.store, evening.session, {2}).value();
  CHECK(flight.cups[2].code == spare);
  evening.answer(2, 3);
  CHECK(troubleOf([&] { spill(evening, flight.cups[0].code); }) == Trouble::flightLocked);
}

TEST_CASE("a flight is set aside once, with a reason; its words stay out of the log") {
  Evening evening(2);
  evening.seal();
  evening.sitAll();
  CHECK(troubleOf([&] { aside(evening, 99, 1, VoidReason::mixedUp); }) == Trouble::noSuchPlace);
  CHECK(troubleOf([&] { aside(evening, 1, 3, VoidReason::mixedUp); }) == Trouble::noSuchRound);
  aside(evening, 1, 2, VoidReason::other, "a wasp in it");
  CHECK(troubleOf([&] { aside(evening, 1, 2, VoidReason::cupLost); }) == Trouble::flightVoid);
  CHECK(troubleOf([&] { aside(evening, 1, 1, VoidReason::other, std::string(4001, 'x')); }) == Trouble::tooLong);
  for (const auto& entry : session::record(*evening.store, evening.session).log) CHECK(entry.body.find("wasp") == std::string::npos);
  for (const auto& line : session::history(*evening.store, evening.session)) CHECK(line.words.empty());
}

TEST_CASE("nothing is set aside once the key is open") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  for (int place = 1; place <= 7; ++place) evening.answer(place, 1);
  session::close(*evening.store, evening.clock, evening.session);
  aside(evening, 1, 1, VoidReason::wrongPerson);
  session::reveal(*evening.store, evening.clock, evening.session);
  CHECK(troubleOf([&] { aside(evening, 2, 1, VoidReason::wrongPerson); }) == Trouble::wrongState);
  const auto& panel = session::revealed(*evening.store, evening.session).panel;
  CHECK(std::ranges::count_if(panel, [](const PanelFlight& flight) { return flight.voided.has_value(); }) == 1);
}

TEST_CASE("what was said is heard by places that are there; the words come with the reveal") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  const auto say = [&](const std::set<Place>& heard, const std::string& words) { tasting::said(*evening.store, evening.clock, evening.chance, evening.session, heard, words); };
  CHECK(troubleOf([&] { say({{1}, {44}}, "sweet"); }) == Trouble::noSuchPlace);
  CHECK(troubleOf([&] { say({}, std::string(4001, 'x')); }) == Trouble::tooLong);
  CHECK(tasting::board(*evening.store, evening.session).timesSaid == 0);
  say({{1}, {2}}, "the left one is sweet");
  say({}, "");
  CHECK(session::record(*evening.store, evening.session).remarks.empty());
  for (int place = 1; place <= 7; ++place) evening.answer(place, 1);
  session::close(*evening.store, evening.clock, evening.session);
  CHECK(troubleOf([&] { say({}, "late"); }) == Trouble::tableClosed);
  session::reveal(*evening.store, evening.clock, evening.session);
  const RevealedSession result = session::revealed(*evening.store, evening.session);
  REQUIRE(result.said.size() == 2);
  CHECK(result.said[0].words == "the left one is sweet");
  CHECK(result.said[0].heardBy == std::set<Place>{{1}, {2}});
  CHECK(result.said[1].heardBy.empty());
}
