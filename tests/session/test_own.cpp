// A person's tastings are read without the rest of the sessions, and say the same as the whole of them.
#include "session/own.h"

#include "aging_evenings.h"
#include "own_evenings.h"
#include "session/erase.h"
#include "trouble.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::asked;
using testing::OwnEvenings;
using testing::troubleOf;

namespace {

OwnTastings ofMaker(OwnEvenings& evenings) { return session::ownTastings(*evenings.store, evenings.maker); }

/// What a flight says of the liking: by lot, with the number given.
std::multimap<int, int> likings(const RevealedFlight& flight, const Plan& plan) {
  std::multimap<int, int> said;
  for (const SheetReply& reply : flight.replies)
    if (plan.items.at(static_cast<std::size_t>(reply.item.value) - 1).kind == ItemKind::liking)
      if (const auto slot = flight.poured.at(static_cast<std::size_t>(reply.cup->value) - 1)) said.emplace(slot->value, *reply.value);
  return said;
}

template <class Flight>
void sameLikings(const std::vector<Flight>& read, const std::vector<Flight>& whole, const Plan& plan) {
  std::map<std::pair<Place, Round>, std::multimap<int, int>> here, there;
  for (const Flight& flight : read) here[{flight.place, flight.round}] = likings(flight, plan);
  for (const Flight& flight : whole)
    if (flight.isAnswered()) there[{flight.place, flight.round}] = likings(flight, plan);
  CHECK(here == there);
}

}  // namespace

TEST_CASE("a maker's sheets are read with the panel apart, the liking alone, by what was poured") {
  OwnEvenings evenings;
  evenings.tell(evenings.proud(), 70);
  const OwnTastings own = ofMaker(evenings);
  CHECK(own.isBrewer);
  REQUIRE(own.sessions.size() == 1);
  const OwnSession& one = own.sessions[0];
  CHECK(one.own == std::vector{Slot{1}});
  CHECK(one.seat == Place{5});
  CHECK(one.isExpected);
  CHECK(one.known.size() == 4);
  CHECK(one.session.plan.cups.empty());
  CHECK(one.session.plan.expectationPc == 70);
  const RevealedSession whole = session::revealed(*evenings.store, evenings.session);
  CHECK(one.session.title == whole.title);
  CHECK(one.session.revealedAt == whole.revealedAt);
  sameLikings(one.session.panel, whole.panel, whole.plan);
  sameLikings(one.session.makers, whole.makers, whole.plan);
  CHECK(one.session.panel.size() == 4);
  for (const PanelFlight& flight : one.session.panel) {
    CHECK(flight.place != Place{5});
    CHECK(flight.replies.size() == 2);
  }
}

TEST_CASE("people keep their number over sessions; who asked to be only in the sums has none") {
  OwnEvenings evenings;
  evenings.tell(evenings.proud());
  evenings.tell(evenings.proud(), std::nullopt, {{2, ShownAs::loose}, {3, ShownAs::nickname}});
  const OwnTastings own = ofMaker(evenings);
  REQUIRE(own.sessions.size() == 2);
  CHECK(own.sessions[1].known.size() == 3);
  CHECK_FALSE(own.sessions[1].known.contains({2}));
  for (const int place : {1, 3, 4}) CHECK(own.sessions[0].known.at({place}) == own.sessions[1].known.at({place}));
}

TEST_CASE("a maker who asked to be only in the sums is not found again") {
  OwnEvenings evenings;
  evenings.tell(evenings.proud(), std::nullopt, {{5, ShownAs::loose}});
  CHECK(ofMaker(evenings).sessions.empty());
}

TEST_CASE("beside the cold twin of their own drink nobody leans to their own") {
  testing::AgingEvenings evening;
  evening.hold(1, 1765200000000, [](int, int, const SheetItem& item, Slot, int) -> testing::Said { return {item.kind == ItemKind::check ? 0 : 5}; });
  CHECK(session::ownTastings(*evening.store, evening.maker).sessions.empty());
}

TEST_CASE("nothing is read before the key is open, nor of a broken seal") {
  OwnEvenings evenings;
  evenings.taste(evenings.proud(), 70);
  CHECK(ofMaker(evenings).sessions.empty());
  session::breakSeal(*evenings.store, evenings.clock, evenings.chance, evenings.session, "could not wait", true);
  CHECK(ofMaker(evenings).sessions.empty());
}

TEST_CASE("friends have no page from what the brewer made or expected") {
  OwnEvenings evenings;
  evenings.tell(evenings.proud(), 70);
  const OwnTastings theirs = session::ownTastings(*evenings.store, evenings.friends[0]);
  CHECK_FALSE(theirs.isBrewer);
  CHECK(theirs.sessions.empty());
  CHECK(troubleOf([&] { session::ownTastings(*evenings.store, {std::string(32, 'f')}); }) == Trouble::unknown);
}

TEST_CASE("whoever was forgotten is gone from it") {
  OwnEvenings evenings;
  evenings.tell(evenings.proud());
  session::erase(*evenings.store, evenings.clock, evenings.chance, evenings.friends[1], ErasureKind::everything, true);
  OwnTastings own = ofMaker(evenings);
  CHECK(own.sessions.at(0).session.panel.size() == 3);
  CHECK(own.sessions.at(0).known.size() == 3);
  session::erase(*evenings.store, evenings.clock, evenings.chance, evenings.friends[0], ErasureKind::words, true);
  own = ofMaker(evenings);
  CHECK(own.sessions.at(0).session.panel.size() == 3);  // the answers stay, without a name
  CHECK(own.sessions.at(0).known.size() == 2);
  session::erase(*evenings.store, evenings.clock, evenings.chance, evenings.maker, ErasureKind::everything, true);
  CHECK(troubleOf([&] { ofMaker(evenings); }) == Trouble::unknown);
}

TEST_CASE("a choice of cups is read only for what was expected of it, and as the whole session says it") {
  OwnEvenings evenings;
  Draft draft = session::draft(*evenings.store, evenings.session);
  draft.expectationPc = 35;
  draft.rounds = 2;
  draft.spares = 0;
  session::saveDraft(*evenings.store, evenings.clock, draft);
  evenings.seal();
  const auto sheet = session::openPourSheet(*evenings.store, evenings.clock, evenings.session);
  session::pouredReally(*evenings.store, evenings.clock, evenings.chance, evenings.session, sheet.placeByPlace.at(0).code, Slot{2});
  session::pouredReally(*evenings.store, evenings.clock, evenings.chance, evenings.session, sheet.placeByPlace.at(3).code, std::nullopt);
  session::sayPoured(*evenings.store, evenings.clock, evenings.session);
  evenings.sitAll();
  for (const Cup& cup : session::record(*evenings.store, evenings.session).plan.cups)
    if (cup.place == Place{2} && cup.round == Round{1} && cup.position == Position{3} && cup.spare == 0) tasting::spilled(*evenings.store, evenings.clock, evenings.session, cup.code);
  for (int place = 1; place <= 5; ++place) evenings.answer(place, 1 + place % 3);
  tasting::said(*evenings.store, evenings.clock, evenings.chance, evenings.session, {Place{1}, Place{2}}, "the left one is sour");
  tasting::setAside(*evenings.store, evenings.clock, evenings.chance, evenings.session, Place{3}, Round{2}, VoidReason::mixedUp, "");
  for (const int place : {2, 4}) evenings.answer(place, 2);
  session::close(*evenings.store, evenings.clock, evenings.session);
  session::reveal(*evenings.store, evenings.clock, evenings.session);

  const RevealedSession whole = session::revealed(*evenings.store, evenings.session);
  const OwnTastings own = ofMaker(evenings);
  REQUIRE(own.sessions.size() == 1);
  const RevealedSession& read = own.sessions[0].session;
  REQUIRE(read.said.size() == 1);
  CHECK(read.said[0].seq == whole.said[0].seq);
  CHECK(read.said[0].heardBy == whole.said[0].heardBy);
  int answered = 0;
  for (const PanelFlight& flight : whole.panel) {
    if (!flight.isAnswered()) continue;
    ++answered;
    const auto same = std::ranges::find_if(read.panel, [&](const PanelFlight& each) { return each.place == flight.place && each.round == flight.round; });
    REQUIRE(same != read.panel.end());
    CHECK(same->drawn == flight.drawn);
    CHECK(same->poured == flight.poured);
    CHECK(same->picks == flight.picks);
    CHECK(same->sureness == flight.sureness);
    CHECK(same->clue == flight.clue);
    CHECK(same->lockedAt == flight.lockedAt);
    CHECK(same->voided.has_value() == flight.voided.has_value());
  }
  CHECK(read.panel.size() == static_cast<std::size_t>(answered));
  CHECK(read.makers.size() == 1);
}
