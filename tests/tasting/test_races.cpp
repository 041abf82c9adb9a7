#include "second_hand.h"
#include "store/keep.h"
#include "trouble.h"

#include <catch2/catch.hpp>

#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <map>
#include <thread>

using namespace oddglass;
using testing::Evening;
using testing::Overtaken;
using testing::secondHand;
using testing::troubleOf;

namespace {

/// What the file says about an evening, whoever wrote it.
struct Told {
  int answered = 0, handIns = 0, replies = 0;
};

Told told(store::Store& store) {
  return store::read(store, [](SQLite::Database& db) {
    return Told{db.execAndGet("SELECT count(*) FROM log WHERE kind = 'answered'").getInt(), db.execAndGet("SELECT count(*) FROM hand_in").getInt(),
                db.execAndGet("SELECT count(*) FROM answer").getInt()};
  });
}

void requireWhole(store::Store& store, const SessionId& session, int acknowledged) {
  const Told now = told(store);
  CHECK(now.answered == acknowledged);
  CHECK(now.handIns == acknowledged);
  CHECK(now.replies == 3 * acknowledged);
  CHECK(session::verify(store, session).holds());
  CHECK(store::isWhole(store));
}

tasting::HandIn firstOf(Evening& evening, int place) {
  return evening.choose(place, 1, tasting::nextFlight(*evening.store, evening.session, {place}).value().cups[0].code);
}

std::vector<tasting::HandIn> oneFor(Evening& evening, int places) {
  std::vector<tasting::HandIn> all;
  for (int place = 1; place <= places; ++place) all.push_back(firstOf(evening, place));
  return all;
}

}  // namespace

TEST_CASE("a hand-in that is overtaken by the close is refused, and nothing of it is there") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  const auto in = oneFor(evening, 1).front();
  evening.answer(2, 1);
  auto other = secondHand(evening);
  {
    Overtaken slip(*evening.store, *other, [&](store::Store& store) { session::close(store, evening.clock, evening.session); });
    CHECK(troubleOf([&] { tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, in); }) == Trouble::tableClosed);
    CHECK(slip.hasHappened());
  }
  requireWhole(*evening.store, evening.session, 1);
}

TEST_CASE("a close that is overtaken by a hand-in counts it") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  const auto in = oneFor(evening, 1).front();
  auto other = secondHand(evening);
  Overtaken slip(*evening.store, *other, [&](store::Store& store) { tasting::handIn(store, evening.clock, evening.chance, evening.session, in); });
  const session::Closed closed = session::close(*evening.store, evening.clock, evening.session);
  CHECK(slip.hasHappened());
  CHECK(closed.answered == 1);
  CHECK(closed.missing == 6);
  requireWhole(*evening.store, evening.session, 1);
}

TEST_CASE("a hand-in that is overtaken by its own copy is one hand-in; by another for the same flight it is refused") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  const auto in = oneFor(evening, 1).front();
  auto other = secondHand(evening);
  {
    Overtaken slip(*evening.store, *other, [&](store::Store& store) { tasting::handIn(store, evening.clock, evening.chance, evening.session, in); });
    CHECK(tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, in).wasThere());
    CHECK(slip.hasHappened());
  }
  auto second = firstOf(evening, 2), rival = second;
  rival.clientId[0] ^= 1;
  Overtaken slip(*evening.store, *other, [&](store::Store& store) { tasting::handIn(store, evening.clock, evening.chance, evening.session, second); });
  CHECK(troubleOf([&] { tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, rival); }) == Trouble::flightLocked);
  requireWhole(*evening.store, evening.session, 2);
}

TEST_CASE("a place, a spilled cup and a person are looked at when they are written") {
  Evening evening;
  evening.seal();
  evening.sit(1, evening.friends[0]);
  const Code cup = tasting::nextFlight(*evening.store, evening.session, {1})->cups[0].code;
  auto other = secondHand(evening);
  {
    Overtaken slip(*evening.store, *other, [&](store::Store& store) {
      tasting::sit(store, evening.clock, evening.session, {{2}, evening.friends[1], ShownAs::signedName, true, true, true, false});
    });
    CHECK(troubleOf([&] { evening.sit(2, evening.friends[2]); }) == Trouble::placeTaken);
    CHECK(slip.hasHappened());
  }
  {
    Overtaken slip(*evening.store, *other, [&](store::Store& store) { tasting::spilled(store, evening.clock, evening.session, cup); });
    CHECK(troubleOf([&] { tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, evening.choose(1, 1, cup)); }) == Trouble::codeNotHere);
    CHECK(slip.hasHappened());
  }
  {
    Overtaken slip(*evening.store, *other, [&](store::Store& store) { tasting::stopHere(store, evening.clock, evening.session, {1}); });
    CHECK(troubleOf([&] { tasting::begin(*evening.store, evening.clock, evening.session, {1}, {1}); }) == Trouble::placeLeft);
    CHECK(slip.hasHappened());
  }
  CHECK(session::verify(*evening.store, evening.session).holds());
}

TEST_CASE("answers of one thread racing with the close of another are stored whole or refused") {
  Evening evening(1, 0, 12);
  evening.seal();
  int place = 0;
  for (const TasterId& each : evening.friends) evening.sit(++place, each);
  const auto all = oneFor(evening, 12);
  auto other = secondHand(evening);
  std::atomic<int> handed{0};
  std::atomic<bool> isClosed{false};
  std::vector<Trouble> refused;
  std::thread table([&] {
    testing::FixedClock clock;
    testing::FixedChance chance(7);
    for (const tasting::HandIn& in : all) {
      try {
        tasting::handIn(*other, clock, chance, evening.session, in);
        ++handed;
      } catch (const Problem& problem) {
        refused.push_back(problem.trouble());
      }
    }
  });
  std::thread host([&] {
    testing::FixedClock clock;
    while (handed < 4) std::this_thread::yield();
    session::close(*evening.store, clock, evening.session);
    isClosed = true;
  });
  table.join();
  host.join();
  CHECK(isClosed);
  CHECK(handed >= 4);
  CHECK(handed + static_cast<int>(refused.size()) == 12);
  CHECK(std::ranges::all_of(refused, [](Trouble trouble) { return trouble == Trouble::tableClosed; }));
  requireWhole(*evening.store, evening.session, handed);
  const session::SessionRecord record = session::record(*evening.store, evening.session);
  CHECK(record.state == State::closed);
  CHECK(canon::Json::parse(record.log.back().body)["missing"] == 12 - handed);
}

TEST_CASE("a process that is killed while it hands in loses nothing that it acknowledged") {
  Evening evening(1, 0, 12);
  evening.seal();
  int place = 0;
  for (const TasterId& each : evening.friends) evening.sit(++place, each);
  const auto all = oneFor(evening, 12);
  const auto file = evening.store->file();
  for (std::size_t dies : {1, 4, 9}) {
    INFO("dies after " << dies);
    const int before = told(*evening.store).handIns;
    evening.store.reset();
    int pipe[2];
    REQUIRE(::pipe(pipe) == 0);
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
      // The child speaks through the pipe only after each acknowledgement, and ends without closing anything.
      try {
        testing::FixedClock clock;
        testing::FixedChance chance(static_cast<unsigned>(dies));
        auto store = store::Store::open(file, store::Access::write, clock, chance);
        for (std::size_t i = 0; i < dies; ++i) {
          tasting::handIn(*store, clock, chance, evening.session, all[i]);
          if (::write(pipe[1], "x", 1) != 1) ::_exit(3);
        }
        store->db().exec("BEGIN IMMEDIATE");
        store->db().exec("UPDATE session SET title = 'half' WHERE 1");
        ::kill(::getpid(), SIGKILL);
      } catch (...) {
      }
      ::_exit(2);
    }
    ::close(pipe[1]);
    int acknowledged = 0;
    for (char each = 0; ::read(pipe[0], &each, 1) == 1;) ++acknowledged;
    ::close(pipe[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    REQUIRE(WIFSIGNALED(status));
    CHECK(acknowledged == static_cast<int>(dies));
    evening.store = store::Store::open(file, store::Access::write, evening.clock, evening.chance);
    requireWhole(*evening.store, evening.session, std::max(before, static_cast<int>(dies)));
    CHECK(session::sessions(*evening.store).front().title == "Heather against bought");
  }
}
