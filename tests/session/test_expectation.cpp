// What the brewer expects is sealed with the plan.
#include "session/erase.h"
#include "session/holds.h"
#include "sheet_evening.h"
#include "store/plan_json.h"
#include "trouble.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::asked;
using testing::Evening;
using testing::SheetEvening;
using testing::troubleOf;

namespace {

void expect(Evening& evening, std::optional<int> percent) {
  Draft draft = session::draft(*evening.store, evening.session);
  draft.expectationPc = percent;
  session::saveDraft(*evening.store, evening.clock, draft);
}

}  // namespace

TEST_CASE("an expectation is kept in the draft, sealed with the plan, and holds") {
  Evening evening;
  expect(evening, 70);
  CHECK(session::draft(*evening.store, evening.session).expectationPc == 70);
  evening.seal();
  const session::SessionRecord record = session::record(*evening.store, evening.session);
  CHECK(record.plan.expectationPc == 70);
  CHECK(canon::Json::parse(record.planText).at("expectation_pc") == 70);
  CHECK(store::planFrom(canon::Json::parse(record.planText)) == record.plan);
  testing::requireHolds(evening);
}

TEST_CASE("a plan without one has the text that it always had") {
  Evening evening;
  expect(evening, 70);
  expect(evening, std::nullopt);
  evening.seal();
  CHECK_FALSE(canon::Json::parse(session::record(*evening.store, evening.session).planText).contains("expectation_pc"));
}

TEST_CASE("an expectation outside 1 to 99, or of nothing that can come out, is refused") {
  Evening evening;
  for (const int wrong : {0, 100, -5}) CHECK(troubleOf([&] { expect(evening, wrong); }) == Trouble::outOfRange);
  for (const int right : {1, 99}) CHECK_NOTHROW(expect(evening, right));

  SheetEvening sheet;
  Draft draft = sheet.asSheet({asked(ItemKind::worst), asked(ItemKind::words, "", Part::last)});
  draft.expectationPc = 60;
  session::saveDraft(*sheet.store, sheet.clock, draft);
  CHECK(troubleOf([&] { sheet.seal(); }) == Trouble::doesNotFit);
  draft.sheet.items.push_back(asked(ItemKind::liking));
  session::saveDraft(*sheet.store, sheet.clock, draft);
  CHECK_NOTHROW(sheet.seal());
}

TEST_CASE("a changed expectation breaks the record") {
  Evening evening;
  expect(evening, 70);
  evening.seal();
  session::SessionRecord record = session::record(*evening.store, evening.session);
  record.plan.expectationPc = 30;
  record.planText = canon::canonical(store::planJson(record.plan));
  CHECK_FALSE(session::check(record).holds());
}

TEST_CASE("who is forgotten leaves no expectation in a plan that is being made") {
  Evening evening;
  expect(evening, 70);
  session::erase(*evening.store, evening.clock, evening.chance, evening.maker, ErasureKind::words, true);
  CHECK_FALSE(session::draft(*evening.store, evening.session).expectationPc);
}
