#include "insight/beside.h"
#include "insight/findings.h"

#include "found.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <concepts>

using namespace oddglass;
using namespace oddglass::insight;
using found::countOf;
using found::says;
using found::twelveOf18;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

TEST_CASE("the makers stand beside the panel and change nothing in it") {
  auto session = twelveOf18();
  const Findings before = findingsOf(session);
  for (int round = 1; round <= 3; ++round) session.makers.push_back(table::flight<MakerFlight>(7, round, round > 1, 900 + round));
  const Findings after = findingsOf(session);
  CHECK(after.all.right == before.all.right);
  CHECK(after.all.trials == before.all.trials);
  CHECK(after.all.range->low == before.all.range->low);
  CHECK(after.flights == before.flights);
  REQUIRE(after.makers.size() == 1);
  CHECK(after.makers[0].right == 2);
  CHECK(after.makers[0].trials == 3);
  CHECK(before.makers.empty());
}

TEST_CASE("panel and makers are types that cannot be mixed") {
  STATIC_REQUIRE_FALSE(std::convertible_to<Tasted<MakerFlight>, Tasted<PanelFlight>>);
  STATIC_REQUIRE_FALSE(std::convertible_to<Tasted<PanelFlight>, Tasted<MakerFlight>>);
  STATIC_REQUIRE_FALSE(std::convertible_to<MakerFlight, PanelFlight>);
}

TEST_CASE("alone: the maker's answers are the data, and the verdict is about them") {
  auto session = table::session(8, Claim::me);
  session.plan.panelPlanned = 0;
  for (int round = 1; round <= 8; ++round) session.makers.push_back(table::flight<MakerFlight>(1, round, round <= 6, round));
  const Findings f = findingsOf(session);
  CHECK(f.claim == Claim::me);
  CHECK(f.verdict == Verdict::shown);
  // By hand: (28 x 4 + 8 x 2 + 1) / 3^8 = 129 / 6561.
  CHECK_THAT(f.all.pValue.value(), WithinRel(129.0 / 6561.0, 1e-12));
  CHECK(f.all.needed == 6);
  CHECK(f.all.range->by == RangeBy::self);
  CHECK(f.makers.empty());
  CHECK_FALSE(f.peopleDiffer.has_value());
  // Alone there are no people who differ: half is 2/3 right, and 6 or more of 8 then come up (28 x 64 + 8 x 128 + 256) / 6561 of the time.
  CHECK_THAT(f.all.missed[1].chance, WithinRel(3072.0 / 6561.0, 1e-10));
}

TEST_CASE("poured wrong: as poured counts, and three alike are void") {
  auto session = twelveOf18();
  auto& flight = session.panel.front();
  // Turn the odd cup's flight round: the other two now hold the odd lot's partner, so another cup becomes the odd one.
  const int odd = table::oddAsPoured(flight)->value, other = odd % 3 + 1;
  std::swap(flight.poured[odd - 1], flight.poured[other - 1]);
  CHECK(table::oddAsPoured(flight)->value == other);
  const Findings moved = findingsOf(session);
  CHECK(moved.all.trials == 18);
  CHECK(moved.all.right == 11);  // this answer had been right
  CHECK(countOf(moved, DeviationKind::pouredOtherwise) == 2);

  flight.poured = {Slot{1}, Slot{1}, Slot{1}};
  const Findings alike = findingsOf(session);
  CHECK(alike.all.trials == 17);
  CHECK(alike.voided == 1);
  CHECK(countOf(alike, DeviationKind::voided) == 1);
  CHECK(says(alike, Caution::fewerThanPlanned));

  flight.poured = {Slot{1}, std::nullopt, Slot{2}};
  const Findings unsure = findingsOf(session);
  CHECK(unsure.voided == 1);
  CHECK(countOf(unsure, DeviationKind::notSure) == 1);
}

TEST_CASE("one cup of the other lot may leave two alike and one odd") {
  auto session = table::panel({1, 1, 1, 1, 1, 0, 0}, 1);
  auto& flight = session.panel.front();
  flight.drawn = {Slot{1}, Slot{2}, Slot{2}};
  flight.poured = {Slot{1}, Slot{1}, Slot{2}};
  flight.picks = {Position{3}};
  CHECK(table::oddAsPoured(flight) == Position{3});
  CHECK(findingsOf(session).all.right == 5);
  flight.picks = {Position{1}};
  CHECK(findingsOf(session).all.right == 4);
}

TEST_CASE("void and missing flights are counted, and the needed number follows from who answered") {
  auto session = twelveOf18();
  session.panel[0].voided = VoidReason::mixedUp;
  session.panel[1].picks.clear();
  session.panel[1].lockedAt = Seq{0};
  session.people[0].left = true;
  const Findings f = findingsOf(session);
  CHECK(f.all.trials == 16);
  CHECK(f.voided == 1);
  CHECK(f.missing == 1);
  CHECK(f.flights == 18);
  CHECK(f.all.needed == 9);  // of 16, by whole numbers: 2150721 / 3^16 = .050 for 9 or more
  CHECK(countOf(f, DeviationKind::missing) == 1);
  CHECK(countOf(f, DeviationKind::left) == 1);
  CHECK(says(f, Caution::fewerThanPlanned));
}

TEST_CASE("somebody erased leaves no gap, only the note that there was one") {
  auto session = twelveOf18();
  session.people[5].erased = true;
  session.erasedPeople = 1;
  for (auto& flight : session.panel)
    if (flight.place == Place{6}) flight.picks.clear();
  const Findings f = findingsOf(session);
  CHECK(f.all.trials == 15);
  CHECK(f.missing == 0);
  CHECK(f.all.people == 5);
  CHECK(countOf(f, DeviationKind::erased) == 1);
}

TEST_CASE("a broken seal: the answers are kept, there is no verdict") {
  auto session = twelveOf18();
  session.log.push_back({Seq{99}, 0, Event::broken, std::nullopt, std::nullopt});
  const Findings f = findingsOf(session);
  CHECK(f.verdict == Verdict::none);
  CHECK(f.why == NoVerdict::sealBroken);
  CHECK(f.all.right == 12);
}

TEST_CASE("deviations are listed once each, with how many") {
  auto session = twelveOf18();
  CHECK(findingsOf(session).deviations.size() == 1);  // the sheet was opened once
  session.pourSheetOpenings = 3;
  session.commitmentHolds = false;
  session.people[4].late = true;
  session.log.push_back({Seq{12}, 0, Event::spilled, Place{1}, Round{1}});
  session.log.push_back({Seq{14}, 0, Event::spilled, Place{2}, Round{1}});
  const Findings f = findingsOf(session);
  CHECK(f.deviations.front().kind == DeviationKind::commitmentBroken);
  CHECK(countOf(f, DeviationKind::pourSheetOpened) == 3);
  CHECK(countOf(f, DeviationKind::late) == 1);
  CHECK(countOf(f, DeviationKind::spilled) == 2);
  CHECK(f.deviations.size() == 4);
}

TEST_CASE("a habit of the first cup shows in wrong answers only") {
  auto session = table::panel(std::vector<int>(12, 0), 1);
  for (auto& flight : session.panel) {
    const int odd = table::oddAsPoured(flight)->value;
    flight.picks = {Position{odd == 1 ? 2 : 1}};
  }
  const Findings f = findingsOf(session);
  REQUIRE(f.habit.has_value());
  // Expected 4 on each place. Twelve places hold each order twice: four odd cups come first, and there the second cup was taken.
  CHECK(f.habit->counts == std::vector<int>{8, 4, 0});
  CHECK(f.habit->stands);
  CHECK(says(f, Caution::placeHabit));
  // By listing: every wrong answer could have fallen on either of its two cups, 2^12 ways.
  const auto distance = [](const std::vector<int>& counts) {
    int sum = 0;
    for (const int count : counts) sum += (count - 4) * (count - 4);
    return sum;
  };
  int as = 0;
  for (int way = 0; way < 4096; ++way) {
    std::vector<int> counts(3, 0);
    for (int k = 0; k < 12; ++k) {
      const int odd = table::oddAsPoured(session.panel[k])->value - 1, first = odd == 0 ? 1 : 0, second = odd == 2 ? 1 : 2;
      ++counts[(way >> k) & 1 ? second : first];
    }
    as += distance(counts) >= distance(f.habit->counts);
  }
  CHECK_THAT(f.habit->pValue, WithinRel(as / 4096.0, 1e-10));
}

TEST_CASE("people who differ: some always right, the rest never") {
  const Findings f = findingsOf(table::panel({3, 3, 3, 3, 0, 0, 0, 0}, 3));
  REQUIRE(f.peopleDiffer.has_value());
  CHECK(f.peopleDiffer->pValue < 0.05);
  CHECK(f.peopleDiffer->gamma > 0.3);
  CHECK_FALSE(findingsOf(table::panel({1, 0, 1, 1}, 1)).peopleDiffer.has_value());
}

TEST_CASE("by person, for the maker's page") {
  const auto lines = panelByPerson(table::panel({3, 0, 2}, 3));
  REQUIRE(lines.size() == 3);
  CHECK(lines[0].right == 3);
  CHECK(lines[1].right == 0);
  CHECK(lines[2].trials == 3);
}

TEST_CASE("the order in which people sit changes nothing") {
  const Findings a = findingsOf(table::panel({3, 1, 2, 0, 3, 3}, 3)), b = findingsOf(table::panel({0, 1, 2, 3, 3, 3}, 3));
  CHECK(a.verdict == b.verdict);
  CHECK(a.all.pValue == b.all.pValue);
  CHECK(a.all.range->low == b.all.range->low);
  CHECK(a.all.missed[0].chance == b.all.missed[0].chance);
}
