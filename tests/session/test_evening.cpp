#include "domain/problem.h"
#include "evening.h"
#include "store/keep.h"
#include "trouble.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using testing::Evening;
using testing::troubleOf;

TEST_CASE("a whole evening, from plan to a verified reveal") {
  Evening evening(3);
  const session::Sealed sealed = evening.seal();
  CHECK(sealed.commitment.size() == 64);
  CHECK(sealed.sealMark.size() == 11);

  const session::PourSheet sheet = session::openPourSheet(*evening.store, evening.clock, evening.session);
  CHECK(sheet.openings == 1);
  CHECK(sheet.sealMark == sealed.sealMark);
  CHECK(sheet.bottleByBottle.size() == 2);
  // 8 places, 3 rounds, 3 cups, and one spare code for each cup.
  CHECK(sheet.placeByPlace.size() == 8 * 3 * 3 * 2);
  session::sayPoured(*evening.store, evening.clock, evening.session);

  evening.sitAll();
  tasting::Board board = tasting::board(*evening.store, evening.session);
  CHECK(board.state == State::sealed);
  CHECK(board.expected == 21);
  for (int round = 1; round <= 3; ++round)
    for (int place = 1; place <= 7; ++place) evening.answer(place, 1 + (place + round) % 3, "plain words");
  board = tasting::board(*evening.store, evening.session);
  CHECK(board.state == State::tasting);
  CHECK(board.locked == 21);
  CHECK(board.everyoneHasLocked);

  CHECK(troubleOf([&] { session::revealed(*evening.store, evening.session); }) == Trouble::stillSealed);
  CHECK(troubleOf([&] { session::reveal(*evening.store, evening.clock, evening.session); }) == Trouble::wrongState);
  const session::Closed closed = session::close(*evening.store, evening.clock, evening.session);
  CHECK(closed.answered == 21);
  CHECK(closed.missing == 0);
  const session::Revealed revealed = session::reveal(*evening.store, evening.clock, evening.session);
  CHECK(revealed.commitmentHolds);
  CHECK(std::filesystem::exists(revealed.backup));

  const RevealedSession result = session::revealed(*evening.store, evening.session);
  CHECK(result.panel.size() == 18);
  CHECK(result.makers.size() == 3);
  CHECK(result.commitmentHolds);
  CHECK(result.pourSheetOpenings == 1);
  for (const PanelFlight& flight : result.panel) {
    REQUIRE(flight.drawn.size() == 3);
    CHECK(flight.picks == std::vector{Position{1 + (flight.place.value + flight.round.value) % 3}});
    // The sheet that the pourer saw says the same as the key.
    for (int position = 1; position <= 3; ++position) {
      const auto line = std::ranges::find_if(sheet.placeByPlace, [&](const session::PourLine& each) {
        return each.place == flight.place && each.round == flight.round && each.position == Position{position} && each.spare == 0;
      });
      REQUIRE(line != sheet.placeByPlace.end());
      CHECK(line->slot == flight.drawn[static_cast<std::size_t>(position - 1)]);
    }
  }
  const session::Verification verification = session::verify(*evening.store, evening.session);
  for (const session::Check& check : verification.checks) {
    INFO(check.what << " " << check.where);
    CHECK(check.holds);
  }
  CHECK(verification.pourSheetOpenings == 1);
  session::decide(*evening.store, evening.clock, evening.chance, evening.session, "rack the next one later");
  CHECK(session::revealed(*evening.store, evening.session).decision == "rack the next one later");
  CHECK(session::lastDecision(*evening.store, {evening.mine}) == "rack the next one later");
  CHECK(session::verify(*evening.store, evening.session).holds());
  CHECK(store::isWhole(*evening.store));
}

TEST_CASE("a key that was changed is shown as such, and the session opens all the same") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  for (int place = 1; place <= 7; ++place) evening.answer(place, 1);
  session::close(*evening.store, evening.clock, evening.session);
  // Somebody with another tool gives the session another commitment.
  evening.store->db().exec("DROP TRIGGER session_plan_no_update");
  evening.store->db().exec("UPDATE session_plan SET commitment = zeroblob(32)");
  CHECK_FALSE(session::reveal(*evening.store, evening.clock, evening.session).commitmentHolds);
  CHECK_FALSE(session::revealed(*evening.store, evening.session).commitmentHolds);
  CHECK_FALSE(session::verify(*evening.store, evening.session).holds());
}

TEST_CASE("a flight is answered once, in turn, with its own codes") {
  Evening evening(2);
  evening.seal();
  CHECK(troubleOf([&] { evening.answer(1, 1); }) == Trouble::placeEmpty);
  evening.sitAll();
  const auto flight = tasting::nextFlight(*evening.store, evening.session, {1}).value();
  const auto other = tasting::nextFlight(*evening.store, evening.session, {2}).value();
  const auto hand = [&](const tasting::HandIn& in) { return tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, in); };
  CHECK(troubleOf([&] { hand(evening.choose(1, 1, other.cups[0].code)); }) == Trouble::codeNotHere);
  CHECK(troubleOf([&] { hand(evening.choose(1, 2, flight.cups[0].code)); }) == Trouble::notThisRound);
  CHECK(troubleOf([&] { hand(evening.choose(1, 3, flight.cups[0].code)); }) == Trouble::noSuchRound);
  CHECK(troubleOf([&] { hand(evening.choose(99, 1, flight.cups[0].code)); }) == Trouble::noSuchPlace);
  tasting::HandIn bare = evening.choose(1, 1, flight.cups[0].code);
  bare.replies.erase(bare.replies.begin());
  CHECK(troubleOf([&] { hand(bare); }) == Trouble::answerMissing);
  tasting::HandIn wild = evening.choose(1, 1, flight.cups[0].code);
  wild.replies[1].value = 4;
  CHECK(troubleOf([&] { hand(wild); }) == Trouble::answerOutOfRange);
  CHECK(tasting::board(*evening.store, evening.session).locked == 0);

  const tasting::HandIn in = evening.choose(1, 1, flight.cups[0].code);
  const tasting::Receipt first = hand(in);
  CHECK_FALSE(first.wasThere());
  // The same hand-in once more, as after a lost acknowledgement.
  const tasting::Receipt again = hand(in);
  CHECK(again.wasThere());
  CHECK(again.seq() == first.seq());
  CHECK(troubleOf([&] { hand(evening.choose(1, 1, flight.cups[1].code)); }) == Trouble::flightLocked);
  CHECK(tasting::nextFlight(*evening.store, evening.session, {1})->round == Round{2});
}

TEST_CASE("all rows of several hand-ins or none") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  const auto one = tasting::nextFlight(*evening.store, evening.session, {1}).value();
  const auto two = tasting::nextFlight(*evening.store, evening.session, {2}).value();
  CHECK(troubleOf([&] {
          tasting::handInAll(*evening.store, evening.clock, evening.chance, evening.session,
                             {evening.choose(1, 1, one.cups[0].code), evening.choose(2, 1, one.cups[0].code)});
        }) == Trouble::codeNotHere);
  CHECK(tasting::board(*evening.store, evening.session).locked == 0);
  CHECK(tasting::board(*evening.store, evening.session).state == State::sealed);
  tasting::handInAll(*evening.store, evening.clock, evening.chance, evening.session,
                     {evening.choose(1, 1, one.cups[0].code), evening.choose(2, 1, two.cups[0].code)});
  CHECK(tasting::board(*evening.store, evening.session).locked == 2);
}

TEST_CASE("before the first cup: of age, care, consent, a free place, not the pourer, once") {
  Evening evening;
  evening.seal();
  const auto sit = [&](tasting::SitDown who) { return troubleOf([&] { tasting::sit(*evening.store, evening.clock, evening.session, who); }); };
  const TasterId& guest = evening.friends[0];
  CHECK(sit({{1}, guest, ShownAs::signedName, false, true, true, false}) == Trouble::notOfAge);
  CHECK(sit({{1}, guest, ShownAs::signedName, true, false, true, false}) == Trouble::careNotHeard);
  CHECK(sit({{1}, guest, ShownAs::signedName, true, true, false, false}) == Trouble::noConsent);
  CHECK(sit({{1}, evening.pourer, ShownAs::signedName, true, true, true, false}) == Trouble::pourerSits);
  CHECK(sit({{99}, guest, ShownAs::signedName, true, true, true, false}) == Trouble::noSuchPlace);
  evening.sit(1, guest);
  CHECK(sit({{1}, evening.friends[1], ShownAs::signedName, true, true, true, false}) == Trouble::placeTaken);
  CHECK(sit({{2}, guest, ShownAs::signedName, true, true, true, false}) == Trouble::alreadySeated);
}

TEST_CASE("spilled, set aside, stopped, said: all on record and counted") {
  Evening evening(2, 1);
  evening.seal();
  evening.sitAll();
  const auto flight = tasting::nextFlight(*evening.store, evening.session, {1}).value();
  tasting::begin(*evening.store, evening.clock, evening.session, {1}, {1});
  const Code lost = flight.cups[1].code;
  const Code spare = tasting::spilled(*evening.store, evening.clock, evening.session, lost);
  CHECK(spare != lost);
  const auto again = tasting::nextFlight(*evening.store, evening.session, {1}).value();
  CHECK_FALSE(again.began);
  CHECK(again.cups[1].code == spare);
  CHECK(again.cups[0] == flight.cups[0]);
  CHECK(troubleOf([&] { tasting::spilled(*evening.store, evening.clock, evening.session, lost); }) == Trouble::alreadySpilled);
  CHECK(troubleOf([&] { tasting::spilled(*evening.store, evening.clock, evening.session, spare); }) == Trouble::noSpareLeft);
  CHECK(troubleOf([&] { tasting::spilled(*evening.store, evening.clock, evening.session, {100}); }) == Trouble::codeNotHere);

  tasting::setAside(*evening.store, evening.clock, evening.chance, evening.session, {2}, {1}, VoidReason::mixedUp);
  CHECK(tasting::nextFlight(*evening.store, evening.session, {2})->round == Round{2});
  tasting::stopHere(*evening.store, evening.clock, evening.session, {3});
  CHECK(troubleOf([&] { tasting::nextFlight(*evening.store, evening.session, {3}); }) == Trouble::placeLeft);
  tasting::said(*evening.store, evening.clock, evening.chance, evening.session, {{4}, {5}}, "somebody said butter");
  evening.answer(1, 2);
  const TasterId late = shelf::save(*evening.store, evening.chance, Taster{{}, "Late Guest", "", false, false});
  tasting::sit(*evening.store, evening.clock, evening.session, {{8}, late, ShownAs::loose, true, true, true, true});
  CHECK(tasting::board(*evening.store, evening.session).timesSaid == 2);

  const session::Closed closed = session::close(*evening.store, evening.clock, evening.session);
  CHECK(closed.answered == 1);
  CHECK(closed.voided == 1);
  CHECK(closed.missing == 8 * 2 - 2);
  CHECK(troubleOf([&] { evening.answer(1, 1); }) == Trouble::tableClosed);
  session::reveal(*evening.store, evening.clock, evening.session);
  const RevealedSession result = session::revealed(*evening.store, evening.session);
  CHECK(result.said.size() == 2);
  CHECK(result.said[0].heardBy == std::set<Place>{{4}, {5}});
  CHECK(result.said[0].words == "somebody said butter");
  const auto person = [&](int place) { return *std::ranges::find(result.people, Place{place}, &ShownPerson::place); };
  CHECK(person(3).left);
  CHECK(person(8).late);
  CHECK(person(8).shown.size() == 1);
  CHECK(person(7).isMaker);
  const auto aside = std::ranges::find_if(result.panel, [](const PanelFlight& each) { return each.place == Place{2} && each.round == Round{1}; });
  CHECK(aside->voided == VoidReason::mixedUp);
  CHECK(session::verify(*evening.store, evening.session).holds());
}

TEST_CASE("a wrong pour is what the findings follow, and not sure sets the flight aside") {
  Evening evening;
  evening.seal();
  const session::PourSheet sheet = session::openPourSheet(*evening.store, evening.clock, evening.session);
  const auto cup = [&](int place, int position) {
    return *std::ranges::find_if(sheet.placeByPlace, [&](const session::PourLine& each) { return each.place == Place{place} && each.position == Position{position}; });
  };
  const session::PourLine wrong = cup(1, 1), doubtful = cup(2, 3);
  const Slot other{wrong.slot.value == 1 ? 2 : 1};
  session::pouredReally(*evening.store, evening.clock, evening.chance, evening.session, wrong.code, other);
  session::pouredReally(*evening.store, evening.clock, evening.chance, evening.session, doubtful.code, std::nullopt);
  CHECK(troubleOf([&] { session::pouredReally(*evening.store, evening.clock, evening.chance, evening.session, wrong.code, Slot{3}); }) == Trouble::unknown);
  session::tick(*evening.store, evening.clock, evening.session, wrong.code, true);
  const session::PourSheet again = session::openPourSheet(*evening.store, evening.clock, evening.session);
  CHECK(again.openings == 2);
  const auto line = std::ranges::find(again.placeByPlace, wrong.code, &session::PourLine::code);
  CHECK(line->isPoured);
  CHECK(line->really == std::optional<std::optional<Slot>>(other));
  evening.sitAll();
  CHECK_FALSE(tasting::nextFlight(*evening.store, evening.session, {2}));
  for (int place : {1, 3, 4, 5, 6, 7}) evening.answer(place, 1);
  session::close(*evening.store, evening.clock, evening.session);
  session::reveal(*evening.store, evening.clock, evening.session);
  const RevealedSession result = session::revealed(*evening.store, evening.session);
  const auto flight = [&](int place) { return *std::ranges::find(result.panel, Place{place}, &PanelFlight::place); };
  CHECK(flight(1).poured[0] == other);
  CHECK(flight(1).drawn[0] == wrong.slot);
  CHECK_FALSE(flight(2).poured[2]);
  CHECK(flight(2).voided == VoidReason::notSure);
  CHECK(session::verify(*evening.store, evening.session).holds());
}

TEST_CASE("breaking the seal and giving up are asked twice and stay on record") {
  Evening evening;
  evening.seal();
  const auto& store = evening.store;
  CHECK(troubleOf([&] { session::breakSeal(*store, evening.clock, evening.chance, evening.session, "curious", false); }) == Trouble::askTwice);
  CHECK(troubleOf([&] { session::breakSeal(*store, evening.clock, evening.chance, evening.session, " ", true); }) == Trouble::empty);
  session::breakSeal(*store, evening.clock, evening.chance, evening.session, "curious", true);
  CHECK(session::sessions(*store).front().state == State::broken);
  CHECK(session::revealed(*store, evening.session).state == State::broken);
  CHECK(session::verify(*store, evening.session).holds());
  CHECK(shelf::lot(*store, evening.mine).held == 0);
  CHECK(troubleOf([&] { session::reveal(*store, evening.clock, evening.session); }) == Trouble::wrongState);

  Evening other;
  other.seal();
  CHECK(shelf::lot(*other.store, other.mine).held > 0);
  session::abandon(*other.store, other.clock, other.chance, other.session, "nobody came", true);
  CHECK(session::sessions(*other.store).front().state == State::abandoned);
  CHECK(troubleOf([&] { session::revealed(*other.store, other.session); }) == Trouble::stillSealed);
  CHECK(shelf::lot(*other.store, other.mine).held == 0);
}

TEST_CASE("stock before the reveal is the same for both lots; afterwards it is what was poured") {
  Evening evening;
  evening.seal();
  CHECK(shelf::lot(*evening.store, evening.mine).held == shelf::lot(*evening.store, evening.bought).held);
  CHECK(shelf::lot(*evening.store, evening.mine).bottles == 12);
  evening.sitAll();
  for (int place = 1; place <= 7; ++place) evening.answer(place, 1);
  session::close(*evening.store, evening.clock, evening.session);
  CHECK(shelf::lot(*evening.store, evening.mine).held == shelf::lot(*evening.store, evening.bought).held);
  session::reveal(*evening.store, evening.clock, evening.session);
  // 7 places of 3 cups of 15 mL: at least 7 and at most 14 cups of a lot, so one bottle of 750 mL of each.
  CHECK(shelf::lot(*evening.store, evening.mine).bottles == 11);
  CHECK(shelf::lot(*evening.store, evening.bought).bottles == 11);
  CHECK(shelf::lot(*evening.store, evening.mine).held == 0);
}
