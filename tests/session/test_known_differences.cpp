// A known difference from plan to reveal, and how it is read without the rest of the sessions.
#include "session/known_differences.h"

#include "known_evenings.h"
#include "domain/names.h"
#include "session/erase.h"
#include "session/holds.h"
#include "session/same_again.h"
#include "store/plan_json.h"
#include "trouble.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::KnownEvenings;
using testing::troubleOf;

TEST_CASE("a known difference is sealed with its word, its lot and what was done, by every method that can be guessed") {
  for (const Method method : {Method::pair, Method::threeAfc, Method::triangle, Method::duoTrio, Method::tetrad, Method::twoOutOfFive}) {
    INFO(nameOf(method));
    KnownEvenings evenings(method, 1);
    evenings.tell(KnownEvenings::right({}));
    const Plan plan = session::record(*evenings.store, evenings.session).plan;
    CHECK(plan.question == Question::notice);
    CHECK(plan.attribute == "butter");
    CHECK(plan.expected == Slot{1});
    CHECK(plan.dose == "half a drop a litre");
    CHECK(store::planFrom(store::planJson(plan)) == plan);
    testing::requireHolds(evenings);
    const Draft again = session::sameAgain(*evenings.store, evenings.session);
    CHECK(again.dose == plan.dose);
    CHECK(again.question == Question::notice);
  }
}

TEST_CASE("what only a known difference has is refused elsewhere, and a known difference without it too") {
  KnownEvenings evenings;
  const auto sealed = [&](const std::function<void(Draft&)>& change) {
    Draft draft = evenings.pattern;
    change(draft);
    session::saveDraft(*evenings.store, evenings.clock, draft);
    return troubleOf([&] { evenings.seal(); });
  };
  CHECK(sealed([](Draft& draft) { draft.attribute.clear(); }) == Trouble::noAttribute);
  CHECK(sealed([](Draft& draft) { draft.method = Method::triangle, draft.expected.reset(); }) == Trouble::noAttribute);
  CHECK(sealed([](Draft& draft) { draft.question = Question::more; }) == Trouble::doesNotFit);
  CHECK(sealed([](Draft& draft) { draft.question = Question::differ, draft.method = Method::triangle, draft.dose.clear(); }) == Trouble::doesNotFit);
  Draft draft = evenings.pattern;
  for (const Method method : {Method::preference, Method::sheet, Method::sameDifferent, Method::aNotA}) {
    draft.method = method;
    CHECK(troubleOf([&] { session::saveDraft(*evenings.store, evenings.clock, draft); }) == Trouble::otherQuestion);
  }
  draft = evenings.pattern;
  draft.dose = std::string(61, 'x');
  CHECK(troubleOf([&] { session::saveDraft(*evenings.store, evenings.clock, draft); }) == Trouble::tooLong);
}

TEST_CASE("a plan without a known difference has nothing of it in its text") {
  testing::Evening evening;
  evening.seal();
  const std::string text = session::record(*evening.store, evening.session).planText;
  CHECK(text.find("dose") == std::string::npos);
  CHECK(text.find("attribute") == std::string::npos);
}

TEST_CASE("known differences are read with the panel and the makers apart, and say the same as the whole session") {
  KnownEvenings evenings;
  evenings.tell(KnownEvenings::right({{1, 2}, {2, 0}, {5, 1}}), {{3, ShownAs::loose}, {4, ShownAs::nickname}});
  evenings.taste(KnownEvenings::right({}));  // still sealed
  const KnownDifferences known = session::knownDifferences(*evenings.store);
  REQUIRE(known.size() == 1);
  CHECK(known[0].session.plan.cups.empty());
  CHECK(known[0].who.size() == 4);
  CHECK_FALSE(known[0].who.contains(Place{3}));
  CHECK(known[0].who.at(Place{5}) == evenings.maker);
  const RevealedSession whole = session::revealed(*evenings.store, known[0].session.id);
  REQUIRE(known[0].session.panel.size() == whole.panel.size());
  REQUIRE(known[0].session.makers.size() == whole.makers.size());
  for (const PanelFlight& flight : whole.panel) {
    const auto read = std::ranges::find_if(known[0].session.panel, [&](const PanelFlight& each) { return each.place == flight.place && each.round == flight.round; });
    REQUIRE(read != known[0].session.panel.end());
    CHECK(read->picks == flight.picks);
    CHECK(read->poured == flight.poured);
    CHECK(read->clue == flight.clue);
  }
}

TEST_CASE("whoever is forgotten is in no known difference any more, and with everything neither are their answers") {
  KnownEvenings evenings;
  evenings.tell(KnownEvenings::right({}));
  session::erase(*evenings.store, evenings.clock, evenings.chance, evenings.friends[0], ErasureKind::words, true);
  session::erase(*evenings.store, evenings.clock, evenings.chance, evenings.friends[1], ErasureKind::everything, true);
  const KnownDifferences known = session::knownDifferences(*evenings.store);
  REQUIRE(known.size() == 1);
  CHECK(known[0].who.size() == 3);
  CHECK(known[0].session.panel.size() == 9);
}
