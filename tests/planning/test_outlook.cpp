#include "planning/outlook.h"

#include "planning/amounts.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace oddglass;
using namespace oddglass::planning;
using Catch::Matchers::WithinAbs;

namespace {

Setup table(int panel, int rounds) {
  Setup setup;
  setup.panel = panel;
  setup.makers = 1;
  setup.rounds = rounds;
  setup.lots = {{500, 500, 40}, {500, 500, 40}};
  return setup;
}

bool says(const Outlook& outlook, TooSmall rule) {
  return std::find(outlook.tooSmall.begin(), outlook.tooSmall.end(), rule) != outlook.tooSmall.end();
}

}  // namespace

// Worked figures of the planning text: 5 x 3 finds half 0.77 and 3 in 10 0.41; as 15 people 0.80 and 0.40; 6 x 3 0.86 and 0.52.
TEST_CASE("five people, three rounds; the maker does not count") {
  const Outlook outlook = outlookFor(table(5, 3));
  CHECK(outlook.people == 5);
  CHECK(outlook.trials == 15);
  CHECK(outlook.claim == Claim::table);
  CHECK(outlook.needed == 9);
  REQUIRE(outlook.findings.size() == 3);
  CHECK(outlook.findings[0].sharePm == 300);
  CHECK_THAT(outlook.findings[0].chance, WithinAbs(0.41, 0.005));
  CHECK_THAT(outlook.findings[0].independent, WithinAbs(0.40, 0.005));
  CHECK_THAT(outlook.findings[1].chance, WithinAbs(0.77, 0.005));
  CHECK_THAT(outlook.findings[1].independent, WithinAbs(0.80, 0.005));
  CHECK(outlook.findings[2].chance > outlook.findings[1].chance);
  CHECK(outlook.tooSmall.empty());
  CHECK(outlook.countsOnly);
}

TEST_CASE("two people once: practice, even all right would prove nothing") {
  // Two of two by guessing is 1 in 9.
  const Outlook outlook = outlookFor(table(2, 1));
  CHECK_FALSE(outlook.needed.has_value());
  CHECK(says(outlook, TooSmall::practice));
  CHECK_FALSE(says(outlook, TooSmall::halfMissed));
  CHECK(says(outlook, TooSmall::fewFriends));
  CHECK(outlook.findings[1].chance == 0.0);
  CHECK(outlook.claim == Claim::people);
}

TEST_CASE("six people once would miss half more often than not: said, with cheaper ways first") {
  const Outlook outlook = outlookFor(table(6, 1));
  CHECK_THAT(outlook.findings[1].chance, WithinAbs(0.35, 0.005));
  CHECK(says(outlook, TooSmall::halfMissed));
  REQUIRE_FALSE(outlook.waysOut.empty());
  CHECK(outlook.waysOut.front().way == Way::nameTheThing);
  CHECK(*outlook.waysOut.front().chanceHalf > outlook.findings[1].chance);
  CHECK(std::is_sorted(outlook.waysOut.begin(), outlook.waysOut.end(), [](const planning::WayOut& a, const planning::WayOut& b) { return a.way < b.way; }));
}

TEST_CASE("alike over 18 trials, limit 3 in 10: 0.41, and it is said") {
  Setup setup = table(6, 3);
  setup.sought = Sought::alike;
  setup.limitPm = 300;
  const Outlook outlook = outlookFor(setup);
  REQUIRE(outlook.alike.has_value());
  CHECK(outlook.alike->largest == 5);
  CHECK_THAT(outlook.alike->chance, WithinAbs(0.41, 0.005));
  CHECK(says(outlook, TooSmall::alikeUnlikely));
  CHECK_FALSE(says(outlook, TooSmall::limitTooWide));
  setup.limitPm = 510;
  CHECK(says(outlookFor(setup), TooSmall::limitTooWide));
}

TEST_CASE("24 people once need 13 and find half 93 times in 100: nothing to mend") {
  const Outlook outlook = outlookFor(table(24, 1));
  CHECK(outlook.needed == 13);
  CHECK_THAT(outlook.findings[1].chance, WithinAbs(0.93, 0.005));
  CHECK(outlook.tooSmall.empty());
  CHECK(outlook.waysOut.empty());
  CHECK_FALSE(outlook.countsOnly);
}

TEST_CASE("no way out goes beyond the ceiling, and each keeps what it promises") {
  for (const int panel : {2, 3, 5, 8})
    for (const int rounds : {1, 2, 5})
      for (const int abvBp : {400, 700, 1300, 2000})
        for (const int cupMl : {15, 30, 60}) {
          Setup setup = table(panel, rounds);
          setup.cupMl = cupMl;
          setup.lots = {{abvBp, 500, 40}, {abvBp, 500, 40}};
          for (const planning::WayOut& out : outlookFor(setup).waysOut) {
            INFO("panel " << panel << " rounds " << rounds << " abv " << abvBp << " cup " << cupMl << " way " << static_cast<int>(out.way));
            if (out.grams) CHECK(*out.grams <= setup.ceilingGrams + 1e-9);
            Setup then = setup;
            if (out.cupMl) then.cupMl = *out.cupMl;
            if (out.people) then.panel = *out.people;
            if (out.rounds) then.rounds = *out.rounds;
            if (out.way == Way::pourLess) {
              CHECK(*out.cupMl < cupMl);
              CHECK(*out.cupMl >= 15);
              CHECK_FALSE(amountsOf(then).aboveCeiling);
            }
            if (out.way == Way::moreRounds || out.way == Way::morePeople) {
              CHECK(*out.chanceHalf >= 0.8);
              CHECK_THAT(outlookFor(then).findings[1].chance, WithinAbs(*out.chanceHalf, 1e-12));
              CHECK(outlookFor(then).needed == out.needed);
            }
            if (out.way == Way::anotherEvening) CHECK(*out.evenings >= 2);
          }
        }
}

TEST_CASE("alone it is one maker's own answers, without people who differ") {
  Setup setup = table(0, 5);
  const Outlook outlook = outlookFor(setup);
  CHECK(outlook.claim == Claim::me);
  CHECK(outlook.people == 1);
  CHECK(outlook.trials == 5);
  CHECK(outlook.needed == 4);  // 4 of 5: 11/243 = .045
  CHECK(outlook.findings[1].chance == outlook.findings[1].independent);
  setup.makers = 2;  // two makers and nobody else are no data
  CHECK(outlookFor(setup).people == 0);
  CHECK(outlookFor(setup).waysOut.empty());
}

TEST_CASE("the largest table still answers") {
  const Outlook outlook = outlookFor(table(60, 3));
  CHECK(outlook.trials == 180);
  for (const Finding& finding : outlook.findings) CHECK(std::isfinite(finding.chance));
}

