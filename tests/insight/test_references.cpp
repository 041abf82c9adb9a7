#include "insight/references.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::insight;
using Catch::Matchers::WithinRel;

namespace {

Lot vintage(const std::string& id, const std::string& packaged, const std::string& bestBefore, int bottles) {
  Lot lot;
  lot.id.text = lot.name = id;
  lot.packagedOn = packaged;
  lot.bestBefore = bestBefore;
  lot.bottles = bottles;
  return lot;
}

/// Two vintages and answers about them, written by hand.
struct Vintages {
  Reference reference;

  Vintages() {
    reference.lots = {vintage("one", "2024-01-01", "2025-06-01", 1), vintage("two", "2025-01-01", "2026-06-01", 3), vintage("three", "", "", 0)};
    reference.together.questions = {{ItemKind::line, Part::main, "honey", 0, 100}};
  }

  int session() {
    reference.together.sessions.push_back({{"s" + std::to_string(reference.together.sessions.size())}, "t", "2025-12-08", {}, {}});
    return static_cast<int>(reference.together.sessions.size()) - 1;
  }

  void say(int session, int lot, std::initializer_list<int> values) {
    int person = 0;
    for (const int value : values) reference.together.answers.push_back({session, person++, lot, 0, value});
  }

  ReferenceFindings found() const { return referenceOf(reference, "2025-12-31"); }
};

}  // namespace

// 2024-01-01 to 2025-12-31 are 730 days, 2025-06-01 to 2025-12-31 are 213 (the calendar).
TEST_CASE("a lot is as old as its day of packaging says, past its best-before or not, and the last bottle is one") {
  const ReferenceFindings found = Vintages().found();
  REQUIRE(found.lots.size() == 3);
  CHECK_THAT(found.lots[0].age.value(), WithinRel(730 / (365.25 / 12), 1e-12));
  CHECK(found.lots[0].daysPast == 213);
  CHECK(found.lots[0].isLast);
  CHECK(found.lots[1].daysPast == -152);
  CHECK_FALSE(found.lots[1].isLast);
  CHECK_FALSE(found.lots[2].age);
  CHECK_FALSE(found.lots[2].daysPast);
  CHECK(found.lots[2].isGone);
  CHECK(found.ranges.empty());
}

TEST_CASE("the target range goes from the lowest to the highest vintage of sessions that poured two of them") {
  Vintages vintages;
  const int together = vintages.session(), alone = vintages.session();
  vintages.say(together, 0, {30, 40, 50});
  vintages.say(together, 1, {60, 70});
  vintages.say(alone, 0, {100, 100, 100});   // one vintage by itself says nothing of a range
  ReferenceFindings found = vintages.found();
  REQUIRE(found.ranges.size() == 1);
  CHECK(found.ranges[0].low.lot == 0);
  CHECK_THAT(found.ranges[0].low.mean, WithinRel(40.0, 1e-12));
  CHECK(found.ranges[0].low.people == 3);
  CHECK(found.ranges[0].high.lot == 1);
  CHECK_THAT(found.ranges[0].high.mean, WithinRel(65.0, 1e-12));
  CHECK(found.ranges[0].high.people == 2);
  CHECK(found.ranges[0].sessions == 1);

  // The doubled cup of one person is averaged first: that person still counts once.
  vintages.say(together, 1, {80});
  CHECK_THAT(vintages.found().ranges[0].high.mean, WithinRel(70.0, 1e-12));

  // A vintage that was flawed on purpose is no vintage, and one person alone is no mean.
  PlannedLot flawed;
  flawed.lot = vintages.reference.lots[1].id;
  flawed.role = LotRole::control;
  vintages.reference.together.sessions[0].plan.lots = {flawed};
  CHECK(vintages.found().ranges.empty());
  Vintages one;
  const int session = one.session();
  one.say(session, 0, {30, 40});
  one.say(session, 1, {60});
  CHECK(one.found().ranges.empty());
}
