#include "second_hand.h"
#include "store/together.h"
#include "trouble.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::Evening;
using testing::Overtaken;
using testing::secondHand;
using testing::troubleOf;

// Each test lets another step slip in between the request and its write lock.

TEST_CASE("a plan is sealed as it is when the seal writes, not as it was when the seal was asked for") {
  Evening evening;
  auto other = secondHand(evening);
  {
    Overtaken slip(*evening.store, *other, [&](store::Store& store) { shelf::move(store, evening.clock, evening.bought, StockChange::lost, 12); });
    CHECK(troubleOf([&] { evening.seal(); }) == Trouble::tooFewBottles);
    CHECK(slip.hasHappened());
  }
  CHECK(session::draft(*evening.store, evening.session).cupMl == 15);  // still a draft
}

TEST_CASE("what is sealed is the draft that was saved last") {
  Evening evening;
  auto other = secondHand(evening);
  Draft draft = session::draft(*evening.store, evening.session);
  draft.cupMl = 10;
  {
    Overtaken slip(*evening.store, *other, [&](store::Store& store) { session::saveDraft(store, evening.clock, draft); });
    evening.seal();
    CHECK(slip.hasHappened());
  }
  CHECK(session::record(*evening.store, evening.session).plan.cupMl == 10);
}

TEST_CASE("a plan is sealed once") {
  Evening evening;
  auto other = secondHand(evening);
  Overtaken slip(*evening.store, *other, [&](store::Store& store) { session::seal(store, evening.clock, evening.chance, evening.session); });
  CHECK(troubleOf([&] { evening.seal(); }) == Trouble::alreadySealed);
  CHECK(slip.hasHappened());
}

TEST_CASE("the pour sheet does not open once the table is closed") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  for (int place = 1; place <= 7; ++place) evening.answer(place, 1);
  auto other = secondHand(evening);
  {
    Overtaken slip(*evening.store, *other, [&](store::Store& store) { session::close(store, evening.clock, evening.session); });
    CHECK(troubleOf([&] { session::openPourSheet(*evening.store, evening.clock, evening.session); }) == Trouble::tableClosed);
    CHECK(slip.hasHappened());
  }
  CHECK(session::verify(*evening.store, evening.session).pourSheetOpenings == 0);
}

TEST_CASE("a session is revealed or given up, never both") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  for (int place = 1; place <= 7; ++place) evening.answer(place, 1);
  session::close(*evening.store, evening.clock, evening.session);
  auto other = secondHand(evening);
  {
    Overtaken slip(*evening.store, *other,
                   [&](store::Store& store) { session::abandon(store, evening.clock, evening.chance, evening.session, "nobody came back", true); });
    CHECK(troubleOf([&] { session::reveal(*evening.store, evening.clock, evening.session); }) == Trouble::wrongState);
    CHECK(slip.hasHappened());
  }
  CHECK_FALSE(session::record(*evening.store, evening.session).key);
  CHECK(troubleOf([&] { session::revealed(*evening.store, evening.session); }) == Trouble::stillSealed);
}

TEST_CASE("several steps as one wait for whoever is writing, and say so when that lasts") {
  Evening evening;
  auto other = secondHand(evening);
  other->db().exec("BEGIN IMMEDIATE");
  sqlite3_busy_timeout(evening.store->db().getHandle(), 0);
  CHECK(troubleOf([&] { store::Together together(*evening.store); }) == Trouble::storeInUse);
  CHECK(troubleOf([&] { evening.seal(); }) == Trouble::storeInUse);
  other->db().exec("ROLLBACK");
  {
    store::Together together(*evening.store);
    evening.seal();
  }
  CHECK(session::draft(*evening.store, evening.session).cupMl == 15);  // nothing without a commit
}
