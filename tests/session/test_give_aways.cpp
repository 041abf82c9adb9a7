#include "evening.h"
#include "session/follow.h"
#include "session/same_again.h"
#include "session/steps.h"
#include "store/plan_json.h"
#include "trouble.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::Evening;
using testing::troubleOf;

namespace {

void settle(Evening& evening, std::optional<GiveAways> found, bool isUnasked = false) {
  Draft draft = session::draft(*evening.store, evening.session);
  draft.giveAways = std::move(found);
  draft.giveAwaysUnasked = isUnasked;
  session::saveDraft(*evening.store, evening.clock, draft);
}

Plan sealedPlan(Evening& evening) {
  evening.seal();
  return session::record(*evening.store, evening.session).plan;
}

}  // namespace

TEST_CASE("nothing is sealed before the give-aways are settled, each with a way out that it has") {
  Evening evening;
  settle(evening, std::nullopt);
  CHECK(troubleOf([&] { evening.seal(); }) == Trouble::giveAwaysOpen);
  settle(evening, GiveAways{{GiveAway::hadBefore, WayOut::mend}});
  CHECK(troubleOf([&] { evening.seal(); }) == Trouble::giveAwayUnfit);
  settle(evening, GiveAways{{GiveAway::haze, WayOut::ask}});  // and a triangle asks about no haze
  CHECK(troubleOf([&] { evening.seal(); }) == Trouble::giveAwayUnfit);
  const GiveAways found{{GiveAway::colour, WayOut::mend}, {GiveAway::fizz, WayOut::anyMeans}, {GiveAway::hadBefore, WayOut::anyMeans}};
  settle(evening, found);
  CHECK(sealedPlan(evening).giveAways == found);
  CHECK(session::sameAgain(*evening.store, evening.session).giveAways == found);
  CHECK(session::verify(*evening.store, evening.session).holds());
}

TEST_CASE("a plan from a file that says nothing of give-aways is sealed as one where nobody looked") {
  Evening evening;
  settle(evening, std::nullopt, true);
  CHECK_FALSE(sealedPlan(evening).giveAways);
  CHECK_FALSE(session::sameAgain(*evening.store, evening.session).giveAwaysUnasked);  // next time it is asked
}

TEST_CASE("another question opens what was settled by asking") {
  Evening evening;
  Draft draft = session::draft(*evening.store, evening.session);
  draft.question = Question::more;
  draft.method = Method::pair;
  draft.attribute = "dark";
  draft.giveAways = GiveAways{{GiveAway::colour, WayOut::ask}};
  const auto facts = session::draftFacts(*evening.store, evening.session);
  session::fit(draft, facts);
  CHECK(draft.giveAways);
  draft.question = Question::differ;
  draft.method = Method::triangle;
  session::fit(draft, facts);
  CHECK_FALSE(draft.giveAways);
}

TEST_CASE("a sealed plan of another program with a way out that a check has not is no possible plan") {
  Evening evening;
  Plan plan = sealedPlan(evening);
  CHECK(session::isPossible(plan));
  plan.giveAways = GiveAways{{GiveAway::hadBefore, WayOut::ask}};
  CHECK_FALSE(session::isPossible(plan));
  canon::Json json = store::planJson(plan);
  json["give_aways"] = {{"smell", "mend"}};
  CHECK_THROWS(store::planFrom(json));
  json["give_aways"] = {{"colour", 3}};
  CHECK_THROWS(store::planFrom(json));
  json["give_aways"] = canon::Json::array();
  CHECK_THROWS(store::planFrom(json));
}
