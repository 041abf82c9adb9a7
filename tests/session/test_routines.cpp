#include "by_hand.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "domain/trial.h"
#include "evening.h"
#include "session/found.h"
#include "session/holds.h"
#include "trouble.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <functional>

using namespace oddglass;
using testing::answersFor;
using testing::Evening;
using testing::Hands;
using testing::Meant;
using testing::requireHolds;
using testing::troubleOf;

namespace {

/// A plan of a routine on the invented shelf, sealed, with everybody at their places and the cups hidden.
struct Hidden {
  Evening evening;
  std::vector<TasterId> seated;
  std::optional<Hands> hands;

  Hidden(Routine routine, Method method, int rounds, int friendCount, bool withMaker, const std::function<void(Draft&)>& change = {}) : evening(rounds, 0, friendCount) {
    Draft draft = session::draft(*evening.store, evening.session);
    draft.routine = routine;
    draft.method = method;
    draft.methodChosen = true;
    draft.question = method == Method::pair || method == Method::threeAfc ? Question::more : method == Method::preference ? Question::prefer : Question::differ;
    if (draft.question == Question::more) {
      draft.attribute = "sour";
      draft.expected = Slot{1};
    }
    if (method == Method::duoTrio) draft.marked = Slot{2};
    if (routine != Routine::die) draft.pourer.reset();
    if (!withMaker) draft.tasters.pop_back();
    if (change) change(draft);
    session::saveDraft(*evening.store, evening.clock, draft);
    seated = draft.tasters;
  }

  void begin(unsigned seed = 5) {
    evening.seal();
    hands.emplace(*evening.store, evening.session, seed);
    int place = 0;
    for (const TasterId& who : seated) evening.sit(++place, who);
  }

  void answer(int place, const Meant& meant = {}) {
    const auto flight = tasting::nextFlight(*evening.store, evening.session, {place}).value();
    tasting::begin(*evening.store, evening.clock, evening.session, {place}, flight.round);
    auto in = answersFor(hands->plan, hands->known, flight, meant);
    evening.chance.fill(in.clientId);
    tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, in);
  }

  std::optional<VoidReason> read(const session::FoundFlight& flight, ReadBy by = ReadBy::taster) {
    return session::readOff(*evening.store, evening.clock, evening.chance, evening.session, flight, by);
  }

  void close() { session::close(*evening.store, evening.clock, evening.session); }
  RevealedSession reveal() {
    session::reveal(*evening.store, evening.clock, evening.session);
    return session::revealed(*evening.store, evening.session);
  }
};

}  // namespace

TEST_CASE("a solo evening: four cups, one set aside, turned over after each lock") {
  Hidden solo(Routine::alone, Method::triangle, 3, 0, true);
  solo.begin();
  CHECK(solo.hands->plan.claim == Claim::me);
  for (const Cup& cup : solo.hands->plan.cups) CHECK(cup.spare == 0);
  CHECK(troubleOf([&] { session::openPourSheet(*solo.evening.store, solo.evening.clock, solo.evening.session); }) == Trouble::keyByHand);
  CHECK(troubleOf([&] { solo.read(solo.hands->at(1, 1)); }) == Trouble::notTastedYet);
  solo.answer(1);
  CHECK_FALSE(solo.read(solo.hands->at(1, 1)));
  CHECK(troubleOf([&] { solo.read(solo.hands->at(1, 1)); }) == Trouble::alreadyRead);
  CHECK(troubleOf([&] { solo.read(solo.hands->at(1, 2)); }) == Trouble::notTastedYet);
  solo.answer(1, {.isRight = false});
  // Three of one drink cannot be: the round is set aside, and counted so.
  auto wrong = solo.hands->at(1, 2);
  std::ranges::find(wrong.lines, std::optional(Slot{2}), &session::FoundLine::slot)->slot = Slot{1};
  CHECK(solo.read(wrong) == VoidReason::doesNotAddUp);
  solo.answer(1);
  auto unread = solo.hands->at(1, 3);
  unread.lines[1].slot.reset();
  CHECK(solo.read(unread) == VoidReason::cannotRead);
  solo.close();
  const RevealedSession result = solo.reveal();
  REQUIRE(result.makers.size() == 3);
  CHECK(isRight(result.plan, result.makers[0]) == true);
  CHECK(result.makers[1].voided == VoidReason::doesNotAddUp);
  CHECK(result.makers[2].voided == VoidReason::cannotRead);
  CHECK(result.readBy == std::set{ReadBy::taster});
  requireHolds(solo.evening);
}

TEST_CASE("a couple's two sheets are joined by their marks after the close") {
  Hidden couple(Routine::couple, Method::triangle, 2, 1, true);
  couple.begin();
  for (int round = 1; round <= 2; ++round)
    for (int place = 1; place <= 2; ++place) couple.answer(place, {.isRight = place == 1});
  CHECK(troubleOf([&] { couple.read(couple.hands->at(1, 1), ReadBy::twoSheets); }) == Trouble::tableOpen);
  couple.close();
  CHECK(troubleOf([&] { couple.reveal(); }) == Trouble::notReadOff);
  std::vector<session::MarkedLot> first;
  std::vector<session::MarkedCode> second;
  for (int round = 1; round <= 2; ++round)
    for (int place = 1; place <= 2; ++place) {
      const auto sheets = couple.hands->twoSheets(place, round);
      first.insert(first.end(), sheets.first.begin(), sheets.first.end());
      second.insert(second.end(), sheets.second.begin(), sheets.second.end());
    }
  CHECK(troubleOf([&] { session::joined({first.begin() + 1, first.end()}, second); }) == Trouble::markNotThere);
  CHECK(troubleOf([&] { session::joined(first, {second.front(), second.front()}); }) == Trouble::alreadyThere);
  const auto all = session::joined(first, second);
  for (const auto& reason : session::readOffAll(*couple.evening.store, couple.evening.clock, couple.evening.chance, couple.evening.session, all, ReadBy::twoSheets)) CHECK_FALSE(reason);
  for (const session::ToRead& each : session::toRead(*couple.evening.store, couple.evening.session)) CHECK((each.isRead && each.hasAside && each.cups.size() == 3));
  const RevealedSession result = couple.reveal();
  REQUIRE(result.panel.size() == 2);
  REQUIRE(result.makers.size() == 2);
  for (const auto& flight : result.panel) CHECK(isRight(result.plan, flight) == true);
  for (const auto& flight : result.makers) CHECK(isRight(result.plan, flight) == false);
  CHECK(result.readBy == std::set{ReadBy::twoSheets});
  requireHolds(couple.evening);
}

TEST_CASE("a die: a maker who does not taste may throw it and keeps the list") {
  Hidden die(Routine::die, Method::pair, 1, 5, false);
  Draft draft = session::draft(*die.evening.store, die.evening.session);
  draft.pourer = die.evening.maker;
  session::saveDraft(*die.evening.store, die.evening.clock, draft);
  die.begin();
  for (int place = 1; place <= 5; ++place) die.answer(place);
  die.close();
  for (int place = 1; place <= 5; ++place) CHECK_FALSE(die.read(die.hands->at(place, 1), ReadBy::pourer));
  const RevealedSession result = die.reveal();
  REQUIRE(result.panel.size() == 5);
  for (const auto& flight : result.panel) CHECK(isRight(result.plan, flight) == true);
  CHECK(result.readBy == std::set{ReadBy::pourer});
  requireHolds(die.evening);
}

TEST_CASE("whole bottles: a letter says what every cup from it held") {
  Hidden bottles(Routine::bottles, Method::preference, 1, 6, true);
  bottles.begin();
  for (const Cup& cup : bottles.hands->plan.cups) CHECK((cup.bottle == 1 || cup.bottle == 2));
  for (int place = 1; place <= 7; ++place) bottles.answer(place, {.likes = Slot{1}});
  bottles.close();
  const auto peel = [&](std::vector<session::Peeled> all) {
    return session::peel(*bottles.evening.store, bottles.evening.clock, bottles.evening.chance, bottles.evening.session, all, ReadBy::another);
  };
  CHECK(troubleOf([&] { peel({{1, Slot{1}}}); }) == Trouble::bottlesNotTold);
  CHECK(troubleOf([&] { peel({{1, Slot{1}}, {2, Slot{3}}}); }) == Trouble::unknown);
  CHECK(peel(bottles.hands->peeled()).size() == 7);
  const RevealedSession result = bottles.reveal();
  for (const auto& flight : result.panel) CHECK(preferredLot(flight) == Slot{1});
  requireHolds(bottles.evening);
}

TEST_CASE("two labels that say the same spoil all that was poured from either") {
  Hidden bottles(Routine::bottles, Method::pair, 1, 4, false);
  bottles.begin();
  for (int place = 1; place <= 4; ++place) bottles.answer(place);
  bottles.close();
  const auto reasons = session::peel(*bottles.evening.store, bottles.evening.clock, bottles.evening.chance, bottles.evening.session, {{1, Slot{2}}, {2, Slot{2}}}, ReadBy::taster);
  for (const auto& reason : reasons) CHECK(reason == VoidReason::doesNotAddUp);
  const RevealedSession result = bottles.reveal();
  for (const auto& flight : result.panel) CHECK(flight.voided == VoidReason::doesNotAddUp);
  requireHolds(bottles.evening);
}

TEST_CASE("every method that hands can hide, from the seal to a verified reveal") {
  for (const Routine routine : {Routine::alone, Routine::couple})
    for (const Method method : {Method::triangle, Method::tetrad, Method::duoTrio, Method::pair, Method::threeAfc, Method::preference}) {
      INFO(nameOf(routine) << ' ' << nameOf(method));
      Hidden hidden(routine, method, 2, routine == Routine::alone ? 0 : 2, true);
      hidden.begin(11);
      const int places = static_cast<int>(hidden.seated.size());
      for (int round = 1; round <= 2; ++round)
        for (int place = 1; place <= places; ++place) hidden.answer(place, {.isRight = round == 1, .likes = Slot{2}});
      hidden.close();
      for (int round = 1; round <= 2; ++round)
        for (int place = 1; place <= places; ++place) CHECK_FALSE(hidden.read(hidden.hands->at(place, round)));
      const RevealedSession result = hidden.reveal();
      const auto check = [&](const RevealedFlight& flight) {
        if (method == Method::preference) CHECK(preferredLot(flight) == Slot{2});
        else CHECK(isRight(result.plan, flight) == (flight.round == Round{1}));
      };
      for (const auto& flight : result.panel) check(flight);
      for (const auto& flight : result.makers) check(flight);
      requireHolds(hidden.evening);
    }
}

TEST_CASE("each cup of a flight is told once, and a spilled one sets its round aside") {
  Hidden solo(Routine::alone, Method::triangle, 2, 0, true);
  solo.begin();
  const auto flight = tasting::nextFlight(*solo.evening.store, solo.evening.session, {1}).value();
  CHECK_FALSE(tasting::lostCup(*solo.evening.store, solo.evening.clock, solo.evening.chance, solo.evening.session, flight.cups[1].code));
  CHECK(tasting::nextFlight(*solo.evening.store, solo.evening.session, {1})->round == Round{2});
  solo.answer(1);
  auto lines = solo.hands->at(1, 2);
  auto without = lines, twice = lines, elsewhere = lines, noLot = lines;
  without.lines.pop_back();
  twice.lines.back() = twice.lines.front();
  elsewhere.lines.front().code = flight.cups[0].code;
  noLot.lines.front().slot = Slot{3};
  CHECK(troubleOf([&] { solo.read(without); }) == Trouble::cupsNotTold);
  CHECK(troubleOf([&] { solo.read(twice); }) == Trouble::cupsNotTold);
  CHECK(troubleOf([&] { solo.read(elsewhere); }) == Trouble::codeNotHere);
  CHECK(troubleOf([&] { solo.read(noLot); }) == Trouble::unknown);
  solo.close();
  CHECK(troubleOf([&] { solo.reveal(); }) == Trouble::notReadOff);
  tasting::setAside(*solo.evening.store, solo.evening.clock, solo.evening.chance, solo.evening.session, {1}, {2}, VoidReason::other);
  const RevealedSession result = solo.reveal();
  CHECK(result.makers[0].voided == VoidReason::cupLost);
  CHECK(result.makers[1].voided == VoidReason::other);
  requireHolds(solo.evening);
}

TEST_CASE("a drawn key is not read off, and what hands cannot do is refused before the seal") {
  Hidden drawn(Routine::pourer, Method::triangle, 1, 3, true);
  drawn.evening.seal();
  CHECK(troubleOf([&] { session::toRead(*drawn.evening.store, drawn.evening.session); }) == Trouble::keyDrawn);
  Hidden five(Routine::alone, Method::twoOutOfFive, 1, 0, true);
  CHECK(troubleOf([&] { five.evening.seal(); }) == Trouble::notByHand);
  Hidden two(Routine::alone, Method::triangle, 1, 1, true);
  CHECK(troubleOf([&] { two.evening.seal(); }) == Trouble::notByHand);
  // Seven cups of 120 mL are more than the one bottle of 750 mL that a letter stands for.
  Hidden large(Routine::bottles, Method::pair, 1, 6, true, [](Draft& draft) { draft.cupMl = 120; });
  CHECK(troubleOf([&] { large.evening.seal(); }) == Trouble::notByHand);
}

// Two truths under the same cups: until the reveal everything that can be shown, printed or exported is the same, apart from salted digests.
TEST_CASE("before the reveal nothing depends on what was read off") {
  const auto night = [](unsigned seed) {
    Hidden solo(Routine::alone, Method::triangle, 2, 0, true);
    solo.begin(seed);
    std::string seen;
    for (int round = 1; round <= 2; ++round) {
      solo.evening.answer(1, round);
      CHECK_FALSE(solo.read(solo.hands->at(1, round)));
    }
    solo.close();
    const session::SessionRecord record = session::record(*solo.evening.store, solo.evening.session);
    CHECK_FALSE(record.key);
    for (const auto& entry : record.log) {
      auto body = canon::Json::parse(entry.body);
      if (entry.event != Event::sealed) body.erase("digest");
      seen += std::string(nameOf(entry.event)) + body.dump() + '\n';
    }
    for (const session::ToRead& each : session::toRead(*solo.evening.store, solo.evening.session)) {
      seen += std::to_string(each.place.value) + ' ' + std::to_string(each.round.value) + ' ' + std::to_string(each.isRead);
      for (const auto& [position, code] : each.cups) seen += ' ' + std::to_string(code.value);
    }
    return std::pair(seen, solo.hands->under);
  };
  const auto one = night(3), other = night(4);
  CHECK(one.second != other.second);
  CHECK(one.first == other.first);
}
