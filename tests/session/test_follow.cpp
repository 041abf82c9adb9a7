// The program takes the method that it recommends until the brewer chooses one. The rules of recommending are tested in tests/planning.
#include "session/follow.h"

#include "domain/flight_form.h"
#include "domain/names.h"
#include "evening.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::Evening;

namespace {

template <class Change>
std::optional<Method> followed(Evening& evening, Change&& change) {
  Draft draft = session::draft(*evening.store, evening.session);
  change(draft);
  session::saveDraft(*evening.store, evening.clock, draft);
  const session::DraftFacts facts = session::draftFacts(*evening.store, evening.session);
  return session::methodToFollow(facts.draft, session::recommendationFor(facts));
}

}  // namespace

TEST_CASE("the recommended method is followed until one is chosen") {
  Evening evening;
  CHECK(followed(evening, [](Draft&) {}) == Method::tetrad);
  CHECK_FALSE(followed(evening, [](Draft& draft) { draft.methodChosen = true; }));
  CHECK_FALSE(followed(evening, [](Draft& draft) { draft.methodChosen = false, draft.method = Method::tetrad; }));
  CHECK(followed(evening, [](Draft& draft) { draft.lingers = true; }) == Method::triangle);
  CHECK(followed(evening, [](Draft& draft) { draft.question = Question::more, draft.method = Method::threeAfc; }) == Method::pair);
}

TEST_CASE("supply, strength and the panel move it") {
  Evening evening(1, 0);
  const auto set = [](Draft& draft) { draft.method = Method::tetrad; };
  CHECK_FALSE(followed(evening, set));
  // Seven places: 14 cups of a lot by tetrads, at worst 12 by triangles; one bottle of 750 mL gives 13 cups of 57 mL.
  for (const LotId& lot : {evening.mine, evening.bought}) shelf::move(*evening.store, evening.clock, lot, StockChange::given, 11);
  CHECK(followed(evening, [&](Draft& draft) { set(draft), draft.cupMl = 57; }) == Method::triangle);
  CHECK_FALSE(followed(evening, [&](Draft& draft) { set(draft), draft.cupMl = 15; }));
  Beverage strong = shelf::beverage(*evening.store, shelf::lot(*evening.store, evening.bought).beverage);
  strong.abvBp = 2000;
  shelf::save(*evening.store, evening.chance, strong);
  CHECK(followed(evening, set) == Method::triangle);
  CHECK_FALSE(followed(evening, [&](Draft& draft) { set(draft), draft.tasters.clear(); }));  // nobody counts: nothing to recommend
}

TEST_CASE("a draft is fitted to its question, method and lots, whichever they are") {
  Evening evening;
  const LotId third = evening.addLot(shelf::lot(*evening.store, evening.bought).beverage, "vintage 1");
  const session::DraftFacts facts = session::draftFacts(*evening.store, evening.session);
  for (const Question question : allOf<Question>())
    for (const Method method : comparingMethods())
      for (const bool three : {false, true}) {
        if (!answers(method, question)) continue;
        Draft draft = facts.draft;
        draft.question = question;
        draft.method = method;
        draft.methodChosen = true;
        if (three) draft.lots.push_back(third);
        draft.attribute = "dry";
        draft.marked = Slot{1};
        draft.mayHaveNone = draft.alsoPrefer = true;
        draft.stopping = Stopping{};
        draft.sought = Sought::both;
        draft.limitPm = 300;
        draft.evenings = 3;
        session::fit(draft, facts);
        INFO(nameOf(question) << ' ' << nameOf(method) << ' ' << draft.lots.size());
        session::saveDraft(*evening.store, evening.clock, draft);
        CHECK_NOTHROW(session::requireReady(session::draftFacts(*evening.store, evening.session)));
        CHECK(draft.methodChosen == (draft.lots.size() == 2 || comparesThree(method)));
        if (namesAThing(method) && draft.lots.size() == 2) CHECK(draft.expected == Slot{1});  // the batch stands first
      }
}
