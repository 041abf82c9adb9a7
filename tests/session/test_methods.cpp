#include "domain/flight_form.h"
#include "answers.h"
#include "blinding/orders.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "evening.h"
#include "session/holds.h"
#include "session/look_after.h"
#include "trouble.h"

#include <catch2/catch.hpp>

#include <functional>
#include <map>

using namespace oddglass;
using testing::answersFor;
using testing::Evening;
using testing::Meant;
using testing::requireHolds;
using testing::troubleOf;

namespace {

/// The draft of an evening as another method asks it, ready to be sealed.
Draft askedDraft(Evening& evening, Method method) {
  Draft draft = session::draft(*evening.store, evening.session);
  draft.method = method;
  draft.question = namesAThing(method) ? Question::more : method == Method::preference ? Question::prefer : Question::differ;
  if (namesAThing(method)) {
    draft.attribute = "sour";
    draft.expected = Slot{1};
  }
  if (method == Method::aNotA) draft.marked = Slot{2};
  return draft;
}

struct Played {
  Evening& evening;
  session::PourSheet sheet;

  explicit Played(Evening& at) : evening(at) {
    evening.seal();
    sheet = session::openPourSheet(*evening.store, evening.clock, evening.session);
    session::sayPoured(*evening.store, evening.clock, evening.session);
    evening.sitAll();
  }

  Plan plan() const { return session::record(*evening.store, evening.session).plan; }

  void answer(int place, const Meant& meant) {
    const auto flight = tasting::nextFlight(*evening.store, evening.session, {place}).value();
    tasting::begin(*evening.store, evening.clock, evening.session, {place}, flight.round);
    auto in = answersFor(plan(), sheet, flight, meant);
    evening.chance.fill(in.clientId);
    tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, in);
  }

  RevealedSession end() {
    session::close(*evening.store, evening.clock, evening.session);
    session::reveal(*evening.store, evening.clock, evening.session);
    return session::revealed(*evening.store, evening.session);
  }
};

}  // namespace

TEST_CASE("an evening of every method, from plan to a verified reveal") {
  for (Method method : comparingMethods()) {
    INFO(nameOf(method));
    Evening evening(2);
    session::saveDraft(*evening.store, evening.clock, askedDraft(evening, method));
    Played played(evening);
    const FlightForm form = formOf(method);
    CHECK(static_cast<int>(played.sheet.placeByPlace.size()) == 8 * 2 * form.cups * 2);
    for (int round = 1; round <= 2; ++round)
      for (int place = 1; place <= 7; ++place) played.answer(place, {.isRight = place % 2 == 1, .likes = Slot{1}});
    const RevealedSession result = played.end();
    REQUIRE(result.panel.size() == 12);
    for (const PanelFlight& flight : result.panel) {
      CHECK(flight.isAnswered());
      if (form.hasRight) CHECK(isRight(result.plan, flight) == (flight.place.value % 2 == 1));
      else CHECK(preferredLot(flight) == Slot{1});
    }
    requireHolds(evening);
  }
}

// By counting: each order of a method once in a whole block, and in each both lots as often as the method says.
TEST_CASE("orders of every method, dealt in whole blocks") {
  for (Method method : comparingMethods()) {
    for (std::optional<Slot> marked : {std::optional<Slot>{}, std::optional(Slot{1}), std::optional(Slot{2})}) {
      if (marked && !formOf(method).hasMarked) continue;
      if (!marked && method == Method::aNotA) continue;
      blinding::Deal deal{.method = method, .expected = Slot{2}, .marked = marked};
      const auto orders = blinding::ordersOf(deal);
      INFO(nameOf(method));
      deal.places = 2 * static_cast<int>(orders.size());
      blinding::Stream stream({7}, blinding::StreamName::orders);
      std::map<std::vector<Slot>, int> counts;
      Plan plan;
      plan.method = method;
      plan.expected = deal.expected;
      plan.marked = marked;
      for (const auto& dealt : blinding::dealOrders(deal, stream)) {
        ++counts[dealt.lots];
        RevealedFlight flight;
        flight.drawn = dealt.lots;
        CHECK(static_cast<int>(dealt.lots.size()) == formOf(method).cups);
        if (formOf(method).picks > 0) CHECK(rightCups(plan, flight).has_value());
        if (formOf(method).saysSame) CHECK(isSame(plan, flight).has_value());
        if (marked) CHECK(dealt.lots.front() == *marked);
      }
      CHECK(counts.size() == orders.size());
      for (const auto& [order, count] : counts) CHECK(count == 2);
    }
  }
}

TEST_CASE("three lots are compared pair by pair, each pair once in three flights") {
  Evening evening(2, 5);
  Draft draft = session::draft(*evening.store, evening.session);
  Beverage other;
  other.name = "Bought mead, older";
  other.origin = Origin::reference;
  other.abvBp = 1150;
  other.abvFrom = AbvFrom::label;
  draft.lots.push_back(evening.addLot(shelf::save(*evening.store, evening.chance, other), "vintage 1"));
  draft.cupMl = 5;
  session::saveDraft(*evening.store, evening.clock, draft);
  Played played(evening);
  const Plan plan = played.plan();
  CHECK(plan.rounds == 6);
  CHECK(plan.comparisons() == 3);
  for (int round = 1; round <= 6; ++round)
    for (int place = 1; place <= 7; ++place) played.answer(place, {});
  const RevealedSession result = played.end();
  REQUIRE(result.panel.size() == 36);
  std::map<std::tuple<Place, int, std::pair<Slot, Slot>>, int> once;
  for (const PanelFlight& flight : result.panel) {
    CHECK(isRight(result.plan, flight) == true);
    ++once[{flight.place, (flight.round.value - 1) / 3, comparedIn(flight).value()}];
  }
  CHECK(once.size() == 36);
  requireHolds(evening);
}

// Wald 1945 with one in three against two in three, alpha .05, beta .1: four right in a row weigh 2^4 = 16, below (1 - beta) / alpha = 18; five weigh 32.
TEST_CASE("a sequential plan is looked at after whole rounds and says go on or stop") {
  Evening evening(6, 0, 1);
  Draft draft = askedDraft(evening, Method::triangle);
  draft.stopping = Stopping{500, 100};
  draft.cupMl = 5;
  session::saveDraft(*evening.store, evening.clock, draft);
  Played played(evening);
  const auto look = [&] { return session::lookAfterRound(*evening.store, evening.clock, evening.session); };
  CHECK(troubleOf(look) == Trouble::roundOpen);
  for (int round = 1; round <= 5; ++round) {
    INFO(round);
    played.answer(1, {});
    CHECK(troubleOf(look) == Trouble::roundOpen);
    // What the maker says is not counted: always wrong here.
    played.answer(2, {.isRight = false});
    CHECK_FALSE(tasting::nextFlight(*evening.store, evening.session, {1}).has_value());
    const auto board = tasting::board(*evening.store, evening.session);
    CHECK(board.lookIsDue);
    CHECK_FALSE(board.everyoneHasLocked);
    const auto looked = look();
    CHECK(looked.round == Round{round});
    CHECK(looked.goOn == (round < 5));
  }
  const auto board = tasting::board(*evening.store, evening.session);
  CHECK(board.saidStop);
  CHECK(board.everyoneHasLocked);
  CHECK(troubleOf(look) == Trouble::lastRound);
  CHECK(session::close(*evening.store, evening.clock, evening.session).missing == 0);
  session::reveal(*evening.store, evening.clock, evening.session);
  const RevealedSession result = session::revealed(*evening.store, evening.session);
  CHECK(result.panel.size() == 5);
  requireHolds(evening);
}

TEST_CASE("a plan that is not sequential is never looked at early") {
  Evening evening(2);
  Played played(evening);
  for (int place = 1; place <= 7; ++place) played.answer(place, {});
  CHECK(troubleOf([&] { session::lookAfterRound(*evening.store, evening.clock, evening.session); }) == Trouble::notSequential);
}

TEST_CASE("two cups are picked, not one twice, and never the marked one") {
  Evening evening;
  SECTION("tetrad") {
    session::saveDraft(*evening.store, evening.clock, askedDraft(evening, Method::tetrad));
    Played played(evening);
    const auto flight = tasting::nextFlight(*evening.store, evening.session, {1}).value();
    auto in = answersFor(played.plan(), played.sheet, flight, {});
    in.replies.at(1).value = in.replies.at(0).value;
    CHECK(troubleOf([&] { tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, in); }) == Trouble::alreadyThere);
  }
  SECTION("duo-trio") {
    session::saveDraft(*evening.store, evening.clock, askedDraft(evening, Method::duoTrio));
    Played played(evening);
    const auto flight = tasting::nextFlight(*evening.store, evening.session, {1}).value();
    CHECK(flight.cups.front().isMarked);
    auto in = answersFor(played.plan(), played.sheet, flight, {});
    in.replies.front().value = flight.cups.front().code.value;
    CHECK(troubleOf([&] { tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, in); }) == Trouble::codeNotHere);
  }
  CHECK(tasting::board(*evening.store, evening.session).locked == 0);
}

TEST_CASE("no preference is an answer only where the plan says so") {
  for (bool may : {false, true}) {
    Evening evening;
    Draft draft = askedDraft(evening, Method::preference);
    draft.mayHaveNone = may;
    session::saveDraft(*evening.store, evening.clock, draft);
    Played played(evening);
    const auto flight = tasting::nextFlight(*evening.store, evening.session, {1}).value();
    auto in = answersFor(played.plan(), played.sheet, flight, {.likes = Slot{1}});
    in.replies.front().value = 0;
    const auto give = [&] { tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, in); };
    if (may) CHECK_NOTHROW(give());
    else CHECK(troubleOf(give) == Trouble::codeNotHere);
  }
}

TEST_CASE("what does not go with a method is refused by name") {
  struct Case {
    Method method;
    std::function<void(Draft&)> change;
    Trouble trouble;
    const char* argument;
  };
  const std::vector<Case> cases{
      {Method::pair, [](Draft& draft) { draft.attribute.clear(); }, Trouble::noAttribute, "attribute"},
      {Method::threeAfc, [](Draft& draft) { draft.expected.reset(); }, Trouble::noAttribute, "attribute"},
      {Method::triangle, [](Draft& draft) { draft.attribute = "sour"; }, Trouble::doesNotFit, "attribute"},
      {Method::triangle, [](Draft& draft) { draft.marked = Slot{1}; }, Trouble::doesNotFit, "marked"},
      {Method::aNotA, [](Draft& draft) { draft.marked.reset(); }, Trouble::empty, "marked"},
      {Method::preference, [](Draft& draft) { draft.alsoPrefer = true; }, Trouble::doesNotFit, "also_prefer"},
      {Method::tetrad, [](Draft& draft) { draft.mayHaveNone = true; }, Trouble::doesNotFit, "may_have_none"},
      {Method::sameDifferent, [](Draft& draft) { draft.stopping = Stopping{}; }, Trouble::doesNotFit, "stopping"},
      {Method::pair, [](Draft& draft) { draft.sought = Sought::alike, draft.limitPm = 300; }, Trouble::doesNotFit, "seeks"},
      {Method::triangle, [](Draft& draft) { draft.evenings = 2; }, Trouble::outOfRange, "evenings"},
      {Method::triangle, [](Draft& draft) { draft.expected = Slot{1}; }, Trouble::doesNotFit, "expected"},
      {Method::triangle, [](Draft& draft) { draft.rounds = 1, draft.stopping = Stopping{}; }, Trouble::doesNotFit, "stopping"},
      {Method::preference, [](Draft& draft) { draft.rounds = 2, draft.stopping = Stopping{}; }, Trouble::doesNotFit, "stopping"},
      {Method::triangle, [](Draft& draft) { draft.rounds = 2, draft.cupMl = 10, draft.stopping = Stopping{}, draft.sought = Sought::both, draft.limitPm = 300; }, Trouble::doesNotFit, "seeks"},
      {Method::preference, [](Draft& draft) { draft.sought = Sought::alike, draft.limitPm = 300; }, Trouble::doesNotFit, "seeks"},
      {Method::aNotA, [](Draft& draft) { draft.alsoPrefer = true; }, Trouble::doesNotFit, "also_prefer"},
      {Method::pair, [](Draft& draft) { draft.lots.push_back(draft.lots[0]); }, Trouble::needsThree, "method"},
      {Method::preference, [](Draft& draft) { draft.lots.push_back(draft.lots[0]); }, Trouble::needsThree, "method"},
      {Method::tetrad, [](Draft& draft) { draft.lots.push_back(draft.lots[0]); }, Trouble::sameLotTwice, "lots"},
      {Method::twoOutOfFive, [](Draft& draft) { draft.cupMl = 50; }, Trouble::aboveCeiling, "cup_ml"},
  };
  for (const Case& each : cases) {
    INFO(nameOf(each.method) << ' ' << each.argument);
    Evening evening;
    Draft draft = askedDraft(evening, each.method);
    each.change(draft);
    session::saveDraft(*evening.store, evening.clock, draft);
    try {
      evening.seal();
      FAIL("sealed");
    } catch (const Problem& problem) {
      CHECK(problem.trouble() == each.trouble);
      CHECK(problem.argument() == each.argument);
    }
  }
}
