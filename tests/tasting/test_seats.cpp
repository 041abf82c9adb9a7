#include "evening.h"
#include "trouble.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using testing::Evening;
using testing::troubleOf;

namespace {

tasting::SitDown ready(Evening& evening) { return {{1}, evening.friends[0], ShownAs::signedName, true, true, true, false}; }
void sit(Evening& evening, const tasting::SitDown& who) { tasting::sit(*evening.store, evening.clock, evening.session, who); }

}  // namespace

TEST_CASE("age, care and consent are asked for before the first cup") {
  Evening evening;
  evening.seal();
  tasting::SitDown who = ready(evening);
  who.ofAge = false;
  CHECK(troubleOf([&] { sit(evening, who); }) == Trouble::notOfAge);
  who = ready(evening);
  who.careHeard = false;
  CHECK(troubleOf([&] { sit(evening, who); }) == Trouble::careNotHeard);
  who = ready(evening);
  who.consents = false;
  CHECK(troubleOf([&] { sit(evening, who); }) == Trouble::noConsent);
  CHECK(session::record(*evening.store, evening.session).log.size() == 1);  // nothing but the seal
}

TEST_CASE("one person a place, one place a person, never the pourer, never a place that was not drawn") {
  Evening evening;
  CHECK(troubleOf([&] { evening.sit(1, evening.friends[0]); }) == Trouble::notSealed);
  evening.seal();
  evening.sit(1, evening.friends[0]);
  CHECK(troubleOf([&] { evening.sit(1, evening.friends[1]); }) == Trouble::placeTaken);
  CHECK(troubleOf([&] { evening.sit(2, evening.friends[0]); }) == Trouble::alreadySeated);
  CHECK(troubleOf([&] { evening.sit(2, evening.pourer); }) == Trouble::pourerSits);
  for (int place : {0, -1, 9, 1000000}) CHECK(troubleOf([&] { evening.sit(place, evening.friends[1]); }) == Trouble::noSuchPlace);
  CHECK(troubleOf([&] { evening.sit(2, TasterId{std::string(32, 'f')}); }) == Trouble::unknown);
}

TEST_CASE("a place that was left is not given again") {
  Evening evening;
  evening.seal();
  evening.sit(1, evening.friends[0]);
  tasting::stopHere(*evening.store, evening.clock, evening.session, {1});
  CHECK(troubleOf([&] { tasting::stopHere(*evening.store, evening.clock, evening.session, {1}); }) == Trouble::placeLeft);
  CHECK(troubleOf([&] { evening.sit(1, evening.friends[1]); }) == Trouble::placeTaken);
  CHECK(troubleOf([&] { tasting::stopHere(*evening.store, evening.clock, evening.session, {2}); }) == Trouble::placeEmpty);
  CHECK(troubleOf([&] { tasting::nextFlight(*evening.store, evening.session, {1}); }) == Trouble::placeLeft);
}

TEST_CASE("a latecomer is a maker when today's shelf says so, and is recorded as having heard") {
  Evening evening;
  const TasterId late = shelf::save(*evening.store, evening.chance, Taster{{}, "Late Guest", "", false, false});
  evening.seal();
  Lot lot = shelf::lot(*evening.store, evening.mine);
  Beverage batch = shelf::beverage(*evening.store, lot.beverage);
  batch.makers.push_back(late);
  shelf::save(*evening.store, evening.chance, batch);
  tasting::SitDown who = ready(evening);
  who.place = {8};
  who.taster = late;
  who.heardAboutCups = true;
  sit(evening, who);
  evening.answer(8, 1);
  session::close(*evening.store, evening.clock, evening.session);
  session::reveal(*evening.store, evening.clock, evening.session);
  const RevealedSession result = session::revealed(*evening.store, evening.session);
  CHECK(result.panel.empty());
  CHECK(result.makers.size() == 1);
  REQUIRE(result.said.size() == 1);
  CHECK(result.said[0].heardBy == std::set<Place>{{8}});
  REQUIRE(result.people.size() == 1);
  CHECK(result.people[0].late);
}

TEST_CASE("somebody who was invited is what they were at the seal, whatever the shelf says later") {
  Evening evening;
  evening.seal();
  Lot lot = shelf::lot(*evening.store, evening.mine);
  Beverage batch = shelf::beverage(*evening.store, lot.beverage);
  batch.makers = {evening.friends[0]};
  shelf::save(*evening.store, evening.chance, batch);
  evening.sit(1, evening.friends[0]);
  evening.sit(2, evening.maker);
  evening.answer(1, 1);
  evening.answer(2, 1);
  session::close(*evening.store, evening.clock, evening.session);
  session::reveal(*evening.store, evening.clock, evening.session);
  const RevealedSession result = session::revealed(*evening.store, evening.session);
  REQUIRE(result.panel.size() == 1);
  CHECK(result.panel[0].place == Place{1});
  REQUIRE(result.makers.size() == 1);
  CHECK(result.makers[0].place == Place{2});
}

TEST_CASE("nobody sits down once the table is closed or given up") {
  Evening evening;
  evening.seal();
  evening.sit(1, evening.friends[0]);
  evening.answer(1, 1);
  session::close(*evening.store, evening.clock, evening.session);
  CHECK(troubleOf([&] { evening.sit(2, evening.friends[1]); }) == Trouble::tableClosed);
  session::abandon(*evening.store, evening.clock, evening.chance, evening.session, "too late", true);
  CHECK(troubleOf([&] { evening.sit(2, evening.friends[1]); }) == Trouble::wrongState);
}
