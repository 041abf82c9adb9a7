#include "evening.h"
#include "domain/same_setup.h"
#include "session/same_again.h"
#include "store/plan_json.h"
#include "store/plans_read.h"
#include "trouble.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::Evening;
using testing::troubleOf;

namespace {

// The evening's draft, changed, saved and sealed.
template <class Change>
Trouble refusedAfter(Change&& change) {
  Evening evening;
  return troubleOf([&] {
    Draft draft = session::draft(*evening.store, evening.session);
    change(draft, evening);
    session::saveDraft(*evening.store, evening.clock, draft);
    evening.seal();
  });
}

}  // namespace

TEST_CASE("a plan that cannot be sealed says why") {
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.title = "  "; }) == Trouble::empty);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.lots.pop_back(); }) == Trouble::needsTwoLots);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.lots[1] = draft.lots[0]; }) == Trouble::sameLotTwice);
  CHECK(refusedAfter([](Draft& draft, Evening& evening) { draft.pourer = evening.maker; std::erase(draft.tasters, evening.maker); }) == Trouble::makerPours);
  CHECK(refusedAfter([](Draft& draft, Evening& evening) { draft.pourer = evening.friends[0]; }) == Trouble::pourerTastes);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.tasters.clear(); }) == Trouble::noPanel);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.sought = Sought::alike; }) == Trouble::alikeNeedsLimit);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.limitPm = 501; }) == Trouble::limitTooWide);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.cupMl = 100; }) == Trouble::aboveCeiling);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.rounds = 0; }) == Trouble::outOfRange);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.careSettled = false; }) == Trouble::careNotHeard);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.question = Question::prefer; }) == Trouble::otherQuestion);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.question = Question::more; }) == Trouble::otherQuestion);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.method = Method::preference; }) == Trouble::otherQuestion);
  CHECK(refusedAfter([](Draft& draft, Evening&) { draft.question = Question::more, draft.method = Method::pair; }) == Trouble::noAttribute);
  CHECK(refusedAfter([](Draft& draft, Evening& evening) {
          shelf::move(*evening.store, evening.clock, draft.lots[0], StockChange::given, 12);
        }) == Trouble::tooFewBottles);
}

TEST_CASE("a sealed plan is frozen and holds what the shelf said then") {
  Evening evening;
  evening.seal();
  Beverage batch = shelf::beverage(*evening.store, shelf::lot(*evening.store, evening.mine).beverage);
  batch.name = "Renamed afterwards";
  batch.abvBp = 500;
  shelf::save(*evening.store, evening.chance, batch);
  const Plan plan = session::record(*evening.store, evening.session).plan;
  CHECK(plan.lots[0].beverageName == "Heather mead");
  CHECK(plan.lots[0].abvBp == 1200);
  CHECK(plan.panelPlanned == 6);
  CHECK(plan.makersPlanned == 1);
  CHECK(plan.places == 8);
  CHECK(plan.claim == Claim::people);
  CHECK(troubleOf([&] { session::draft(*evening.store, evening.session); }) == Trouble::alreadySealed);
  CHECK(troubleOf([&] { evening.seal(); }) == Trouble::alreadySealed);
  CHECK(troubleOf([&] { session::discardDraft(*evening.store, evening.session); }) == Trouble::alreadySealed);
}

TEST_CASE("plan and draft go to text and back") {
  Evening evening(3, 2);
  const Draft draft = session::draft(*evening.store, evening.session);
  Draft same = store::draftFrom(store::draftJson(draft));
  same.id = draft.id;
  same.title = draft.title;
  same.guestTitle = draft.guestTitle;
  CHECK(same == draft);
  evening.seal();
  const session::SessionRecord record = session::record(*evening.store, evening.session);
  CHECK(store::planFrom(canon::Json::parse(record.planText)) == record.plan);
}

TEST_CASE("how the drinks are served is sealed with the plan, comes again with the same table, and what differs is named") {
  Evening evening;
  Draft draft = session::draft(*evening.store, evening.session);
  draft.serving = {"  dark cups\n", 12, Mouthful::spatOut};
  session::saveDraft(*evening.store, evening.clock, draft);
  draft = session::draft(*evening.store, evening.session);
  CHECK(draft.serving.vessel == "dark cups");
  draft.serving.temperatureC = warmestServed + 1;
  CHECK(troubleOf([&] { session::saveDraft(*evening.store, evening.clock, draft); }) == Trouble::outOfRange);
  draft.serving.temperatureC = 12;
  draft.serving.vessel = std::string(61, 'm');
  CHECK(troubleOf([&] { session::saveDraft(*evening.store, evening.clock, draft); }) == Trouble::tooLong);
  evening.seal();
  const session::SessionRecord record = session::record(*evening.store, evening.session);
  CHECK(record.plan.serving == Serving{"dark cups", 12, Mouthful::spatOut});
  CHECK(store::planFrom(canon::Json::parse(record.planText)) == record.plan);
  CHECK(session::verify(*evening.store, evening.session).holds());
  CHECK(session::sameAgain(*evening.store, evening.session).serving == record.plan.serving);

  Plan other = record.plan;
  CHECK(setupDifferences(record.plan, other).empty());
  other.serving = {"wine glasses", std::nullopt, Mouthful::swallowed};
  CHECK(setupDifferences(record.plan, other) == std::vector{SetupPart::vessel, SetupPart::temperature, SetupPart::mouthful});
  // Nothing on record is no key in the text, so that the text of older plans stays as it was.
  other.serving = {};
  CHECK_FALSE(store::planJson(other).contains("serving"));
}

TEST_CASE("plans that are read one after the other are what each one says, whatever their drinks are called") {
  Evening evening(2, 1);
  evening.seal();
  Plan plan = session::record(*evening.store, evening.session).plan;
  store::PlansRead plans;
  const auto read = [&](const Plan& each) { return plans.read(canon::canonical(store::planJson(each))); };
  const auto bare = [](Plan each) {
    each.cups.clear();
    return each;
  };
  CHECK_FALSE(plan.cups.empty());
  CHECK(read(plan) == bare(plan));
  Plan odd = plan;
  odd.lots[0].beverageName = R"(a "mead" [of sorts] \")";
  odd.lots[1].storage = R"("items":[{]},"cups":[1])";
  CHECK(read(odd) == bare(odd));
  odd.expectationPc = 70;   // the same drinks and questions once more, and something else beside them
  CHECK(read(odd) == bare(odd));
  CHECK(read(plan) == bare(plan));
  CHECK(troubleOf([&] { plans.read("{}"); }) == Trouble::brokenReference);
}

TEST_CASE("the brewer may taste alone; two makers without a panel may not") {
  Evening evening;
  Draft draft = session::draft(*evening.store, evening.session);
  draft.tasters = {evening.maker};
  draft.rounds = 5;
  draft.cupMl = 10;
  session::saveDraft(*evening.store, evening.clock, draft);
  evening.seal();
  CHECK(session::record(*evening.store, evening.session).plan.claim == Claim::me);
}

TEST_CASE("the seal says nothing of the key before the reveal") {
  Evening evening;
  evening.seal();
  const session::SessionRecord record = session::record(*evening.store, evening.session);
  CHECK_FALSE(record.key);
  CHECK(record.handIns.empty());
  CHECK(troubleOf([&] { session::revealed(*evening.store, evening.session); }) == Trouble::stillSealed);
}

TEST_CASE("a pourer who is typed in by the name of somebody here is that person") {
  Evening evening;
  Draft draft = session::draft(*evening.store, evening.session);
  draft.pourer.reset();
  draft.pourerName = "wenna TARN";
  draft.tasters.pop_back();  // the maker pours and does not taste: still refused
  session::saveDraft(*evening.store, evening.clock, draft);
  CHECK(troubleOf([&] { evening.seal(); }) == Trouble::makerPours);
  draft.pourerName = "Friend A";
  session::saveDraft(*evening.store, evening.clock, draft);
  CHECK(troubleOf([&] { evening.seal(); }) == Trouble::pourerTastes);
  // The same letters in two Unicode forms (NFC and NFD; Unicode annex 15): e with acute, and e followed by a combining acute.
  const TasterId rene = shelf::save(*evening.store, evening.chance, Taster{{}, "Ren\xC3\xA9", "", false, false});
  draft.pourerName = "Rene\xCC\x81";
  session::saveDraft(*evening.store, evening.clock, draft);
  evening.seal();
  CHECK(troubleOf([&] { evening.sit(1, rene); }) == Trouble::pourerSits);
}

TEST_CASE("a lot is named in either Unicode form") {
  Evening evening;
  Lot lot = shelf::lot(*evening.store, evening.mine);
  lot.name = "Cuv\xC3\xA9" "e";
  shelf::save(*evening.store, evening.chance, lot);
  evening.seal();
  CHECK(session::slotNamed(*evening.store, evening.session, "CUVE\xCC\x81" "E") == Slot{1});
  CHECK(troubleOf([&] { session::slotNamed(*evening.store, evening.session, "cuvee"); }) == Trouble::unknown);
}

TEST_CASE("a draft can be thrown away, a sealed plan cannot") {
  Evening evening;
  const SessionId other = session::newDraft(*evening.store, evening.clock, evening.chance, "another");
  session::discardDraft(*evening.store, other);
  CHECK(troubleOf([&] { session::draft(*evening.store, other); }) == Trouble::unknown);
  CHECK(troubleOf([&] { session::discardDraft(*evening.store, other); }) == Trouble::unknown);
  evening.seal();
  CHECK(troubleOf([&] { session::discardDraft(*evening.store, evening.session); }) == Trouble::alreadySealed);
  CHECK(session::sessions(*evening.store).size() == 1);
}

TEST_CASE("a batch for which no maker is named was made by the brewer") {
  Evening evening;
  Beverage batch = shelf::beverage(*evening.store, shelf::lot(*evening.store, evening.mine).beverage);
  batch.makers.clear();
  shelf::save(*evening.store, evening.chance, batch);
  const session::DraftFacts facts = session::draftFacts(*evening.store, evening.session);
  REQUIRE(facts.makers.size() == 1);
  CHECK(facts.makers[0].taster == evening.maker);
  CHECK(facts.panel.size() == 6);
}

TEST_CASE("a draft that was kept with a question its method does not answer is refused before the seal, by name") {
  Evening evening;
  session::DraftFacts facts = session::draftFacts(*evening.store, evening.session);
  facts.draft.question = Question::prefer;
  try {
    session::requireReady(facts);
    FAIL("it was let through");
  } catch (const Problem& problem) {
    CHECK(problem.argument() == "method");
    CHECK(problem.values() == Problem::Values{{"method", "triangle"}, {"question", "prefer"}});
  }
}
