// A round with the labels known: after the reveal only, once for each place, beside the log, forgotten with everything.
#include "session/open_round.h"

#include "own_evenings.h"
#include "session/erase.h"
#include "session/holds.h"
#include "session/own.h"
#include "trouble.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::OwnEvenings;
using testing::requireHolds;
using testing::troubleOf;

namespace {

session::OpenAnswers openly(int place, int own, int reference) { return {{place}, {{Slot{1}, own}, {Slot{2}, reference}}}; }

Trouble refused(OwnEvenings& evenings, const session::OpenAnswers& answers) {
  return troubleOf([&] { session::answerOpenly(*evenings.store, evenings.clock, evenings.session, {answers}); });
}

}  // namespace

TEST_CASE("an open round is there after the reveal, for whoever handed in a sheet") {
  OwnEvenings evenings;
  evenings.taste(evenings.proud(), std::nullopt, {{2, ShownAs::loose}});
  CHECK_FALSE(session::openRound(*evenings.store, evenings.session));
  CHECK(refused(evenings, openly(1, 6, 5)) == Trouble::wrongState);
  session::reveal(*evenings.store, evenings.clock, evenings.session);
  const auto round = session::openRound(*evenings.store, evenings.session);
  REQUIRE(round);
  CHECK(round->item.kind == ItemKind::liking);
  CHECK(round->lots.size() == 2);
  REQUIRE(round->places.size() == 5);
  CHECK(round->places[0].shown == "Friend A");
  CHECK(round->places[1].shown.size() == 1);
  CHECK(round->places[4].isMaker);
}

TEST_CASE("answers with the labels known are kept once for each place, all or none") {
  OwnEvenings evenings;
  evenings.tell(evenings.proud());
  CHECK(refused(evenings, openly(9, 6, 5)) == Trouble::noSuchPlace);
  CHECK(refused(evenings, openly(1, 10, 5)) == Trouble::outOfRange);
  CHECK(refused(evenings, {{1}, {{Slot{1}, 5}}}) == Trouble::empty);
  CHECK(refused(evenings, {{1}, {{Slot{1}, 5}, {Slot{3}, 5}}}) == Trouble::unknown);
  CHECK(troubleOf([&] { session::answerOpenly(*evenings.store, evenings.clock, evenings.session, {openly(1, 6, 5), openly(1, 6, 5)}); }) == Trouble::alreadyThere);
  CHECK_FALSE(session::openRound(*evenings.store, evenings.session)->places[0].isDone);
  session::answerOpenly(*evenings.store, evenings.clock, evenings.session, {openly(1, 6, 5), openly(5, 9, 2)});
  const auto round = session::openRound(*evenings.store, evenings.session);
  CHECK(round->places[0].isDone);
  CHECK_FALSE(round->places[1].isDone);
  CHECK(refused(evenings, openly(1, 7, 5)) == Trouble::alreadyThere);
  requireHolds(evenings);
  const session::SessionRecord record = session::record(*evenings.store, evenings.session);
  CHECK(record.open.size() == 4);
  const OwnTastings own = session::ownTastings(*evenings.store, evenings.maker);
  CHECK(own.sessions.at(0).open.at({5}) == std::map<Slot, int>{{Slot{1}, 9}, {Slot{2}, 2}});
}

TEST_CASE("a session without a reference, without the liking, or of another method has no open round") {
  OwnEvenings first;
  first.pattern.sheet.items = {testing::asked(ItemKind::line, "sweet")};
  first.tell(first.proud());
  CHECK_FALSE(session::openRound(*first.store, first.session));
  testing::Evening triangle;
  triangle.seal();
  triangle.sitAll();
  for (int place = 1; place <= 7; ++place) triangle.answer(place, 1);
  session::close(*triangle.store, triangle.clock, triangle.session);
  session::reveal(*triangle.store, triangle.clock, triangle.session);
  CHECK_FALSE(session::openRound(*triangle.store, triangle.session));
  CHECK(troubleOf([&] { session::answerOpenly(*triangle.store, triangle.clock, triangle.session, {openly(1, 5, 5)}); }) == Trouble::doesNotFit);
}

TEST_CASE("open answers go with everything of a person, and stand without a name where only words are forgotten") {
  OwnEvenings evenings;
  evenings.tell(evenings.proud());
  session::answerOpenly(*evenings.store, evenings.clock, evenings.session, {openly(1, 6, 5), openly(2, 7, 5), openly(5, 9, 2)});
  session::erase(*evenings.store, evenings.clock, evenings.chance, evenings.friends[0], ErasureKind::everything, true);
  session::erase(*evenings.store, evenings.clock, evenings.chance, evenings.friends[1], ErasureKind::words, true);
  CHECK(session::record(*evenings.store, evenings.session).open.size() == 4);
  requireHolds(evenings);
  const OwnTastings own = session::ownTastings(*evenings.store, evenings.maker);
  CHECK_FALSE(own.sessions.at(0).open.contains({1}));
  CHECK(own.sessions.at(0).open.contains({2}));
  CHECK_FALSE(own.sessions.at(0).known.contains({2}));
}

TEST_CASE("an open answer that was altered is found") {
  OwnEvenings evenings;
  evenings.tell(evenings.proud());
  session::answerOpenly(*evenings.store, evenings.clock, evenings.session, {openly(1, 6, 5)});
  const session::SessionRecord whole = session::record(*evenings.store, evenings.session);
  const auto breaks = [&](const std::function<void(session::RecordedOpen&)>& change) {
    session::SessionRecord record = whole;
    change(record.open.back());
    return !session::check(record).holds();
  };
  CHECK(session::check(whole).holds());
  CHECK(breaks([](session::RecordedOpen& open) { open.value = 12; }));
  CHECK(breaks([](session::RecordedOpen& open) { open.place = {8}; }));
  CHECK(breaks([](session::RecordedOpen& open) { open.slot = {3}; }));
  CHECK(breaks([](session::RecordedOpen& open) { open.slot = {1}; }));
  CHECK(breaks([](session::RecordedOpen& open) { open.item = {7}; }));
}
