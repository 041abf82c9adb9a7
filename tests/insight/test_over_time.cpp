#include "insight/over_time.h"

#include "domain/day.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <vector>

using namespace oddglass;
using namespace oddglass::insight;
using Catch::Matchers::WithinRel;

namespace {

LotQuestion honeyOf(Part part = Part::main) { return {ItemKind::line, part, "honey", 0, 100}; }

/// A series and the answers to it, written by hand: one session for each age, at whole multiples of 487 days, which are 16 months.
struct Shelf {
  Series series;
  AboutLots about;

  Shelf(const std::vector<int>& steps, ControlKind control, std::vector<LotQuestion> questions = {honeyOf()}) {
    series.batch.text = "batch";
    series.control = control;
    series.begunOn = "2000-01-01";
    about.questions = std::move(questions);
    for (const int step : steps) {
      const SessionId id{"session " + std::to_string(step)};
      const std::string day = dayAfter(series.begunOn, 487 * step).value();
      series.sittings.push_back({static_cast<int>(series.sittings.size()) + 1, day, id});
      LotSession session{id, "t", day, {}, {true, control != ControlKind::none}};
      for (const LotQuestion& each : about.questions) {
        SheetItem item;
        item.kind = each.kind;
        item.part = each.part;
        item.word = each.word;
        item.limit = 10;
        session.plan.items.push_back(item);
      }
      about.sessions.push_back(session);
    }
    series.main = {static_cast<int>(steps.size()), "honey", 10};
  }

  void say(int session, int person, int lot, int value, int question = 0) {
    about.answers.push_back({session, person, lot, question, value});
    about.people = std::max(about.people, person + 1);
  }
};

}  // namespace

// The series of six means in tests/data/checks/trend.json (constructed; SciPy's linregress): slope 0.3157142857 a month, p 0.0013624453947400142. Here its scores stand ten times as high
// and its months sixteen times as far apart; each mean is that of two people who lie apart.
TEST_CASE("the slope over sittings is that of the session means") {
  Shelf shelf({0, 1, 2, 3, 4, 6}, ControlKind::none);
  const int means[] = {55, 60, 64, 69, 70, 74};
  for (int i = 0; i < 6; ++i)
    for (int person = 0; person < 2; ++person) shelf.say(i, person, 0, means[i] + (person == 0 ? 7 : -7));
  const OverTime over = overTimeOf(shelf.series, shelf.about);
  REQUIRE(over.sittings.size() == 6);
  CHECK_THAT(over.sittings.back().age, WithinRel(96.0, 1e-12));
  REQUIRE(over.lines.size() == 1);
  const TimeLine& line = over.lines[0];
  CHECK_THAT(line.trend.slope.estimate.value(), WithinRel(0.3157142857142857 * 10 / 16, 1e-9));
  CHECK_THAT(line.trend.slope.pValue.value(), WithinRel(0.0013624453947400142, 1e-9));
  CHECK_THAT(line.trend.slope.low.value(), WithinRel(0.20531358150243523 * 10 / 16, 1e-8));
  CHECK(line.verdict == TimeVerdict::rose);
  CHECK(line.trend.isConfounded);
  CHECK(over.atBothEnds == 2);
}

TEST_CASE("a control is taken off, person by person, and only whole visits count") {
  Shelf shelf({0, 1, 2, 4}, ControlKind::twin);
  // Three people; the twin stays, the batch falls by 5 a step; every day lifts both cups by another amount.
  const int day[] = {0, 9, -6, 4}, step[] = {0, 1, 2, 4};
  for (int i = 0; i < 4; ++i)
    for (int person = 0; person < 3; ++person) {
      shelf.say(i, person, 0, 60 + 3 * person - 5 * step[i] + day[i]);
      shelf.say(i, person, 1, 50 + 2 * person + day[i]);
    }
  shelf.say(1, 3, 0, 100);   // somebody who had the batch alone
  const OverTime over = overTimeOf(shelf.series, shelf.about);
  REQUIRE(over.lines.size() == 1);
  REQUIRE(over.lines[0].dots.size() == 4);
  CHECK(over.sittings[1].people == 3);
  CHECK(over.lines[0].dots[1].people == 3);
  CHECK_THAT(over.lines[0].dots[1].value.value(), WithinRel(10 + 1 - 5.0, 1e-12));
  CHECK_THAT(over.lines[0].dots[1].batch.value(), WithinRel(60 + 3 - 5 + 9.0, 1e-12));
  CHECK_THAT(over.lines[0].trend.slope.estimate.value(), WithinRel(-5.0 / 16, 1e-9));
  CHECK_FALSE(over.lines[0].trend.isConfounded);
}

TEST_CASE("fewer than three sittings are dots, and one of several words speaks only when it speaks for all of them") {
  Shelf two({0, 1}, ControlKind::none);
  for (int i = 0; i < 2; ++i)
    for (int person = 0; person < 4; ++person) two.say(i, person, 0, 40 + 10 * i + person * (i + 1));
  const OverTime over = overTimeOf(two.series, two.about);
  REQUIRE(over.lines.size() == 1);
  CHECK(over.lines[0].verdict == TimeVerdict::dotsOnly);
  CHECK_FALSE(over.lines[0].pAdjusted);

  // Five points near a line at a slope whose p is between 0.05 / 4 and 0.05: alone it is shown, beside three others it is not.
  std::vector<LotQuestion> questions;
  for (const char* word : {"apple", "bread", "clove", "dust"}) questions.push_back({ItemKind::line, Part::main, word, 0, 100});
  const int noise[] = {6, -8, 5, -7, 3};
  const auto fill = [&](Shelf& shelf, int question, int slope) {
    for (int i = 0; i < 5; ++i)
      for (int person = 0; person < 2; ++person) shelf.say(i, person, 0, 40 + slope * i + noise[i] + person, question);
  };
  Shelf alone({0, 1, 2, 3, 4}, ControlKind::none, {questions[0]});
  fill(alone, 0, 9);
  Shelf many({0, 1, 2, 3, 4}, ControlKind::none, questions);
  fill(many, 0, 9);
  for (int q = 1; q < 4; ++q) fill(many, q, 0);
  const OverTime one = overTimeOf(alone.series, alone.about), four = overTimeOf(many.series, many.about);
  const double p = one.lines[0].trend.slope.pValue.value();
  REQUIRE(p > 0.0125);
  REQUIRE(p < 0.05);
  CHECK(one.lines[0].verdict == TimeVerdict::rose);
  CHECK(four.lines[0].verdict == TimeVerdict::notShown);
  CHECK_THAT(four.lines[0].pAdjusted.value(), WithinRel(4 * p, 1e-9));
}

// Student's paired t by hand: changes 8, 12, 10, 14 have mean 11 and standard error sqrt(20/3)/2, so t = 8.52 at 3 degrees of freedom: p between 0.002 and 0.005 (Student's table:
// 5.841 at 0.01 and 10.215 at 0.002, two-sided).
TEST_CASE("the main comparison is that sitting minus the first, by those who sat at both") {
  Shelf shelf({0, 1, 2}, ControlKind::none);
  const int changes[] = {8, 12, 10, 14};
  for (int person = 0; person < 4; ++person) {
    shelf.say(0, person, 0, 30 + 5 * person);
    shelf.say(2, person, 0, 30 + 5 * person + changes[person]);
  }
  shelf.say(1, 0, 0, 90);
  shelf.say(2, 7, 0, 99);    // came later
  const OverTime over = overTimeOf(shelf.series, shelf.about);
  CHECK(over.main.people == 4);
  CHECK_THAT(over.main.change.estimate.value(), WithinRel(11.0, 1e-12));
  CHECK_THAT(over.main.change.se.value(), WithinRel(std::sqrt(20.0 / 3.0) / 2.0, 1e-12));
  CHECK(over.main.change.pValue.value() > 0.002);
  CHECK(over.main.change.pValue.value() < 0.005);
  CHECK(over.main.verdict == ChangeVerdict::more);
  CHECK(over.sittings[2].people == 5);
  CHECK(over.sittings[2].alsoAtFirst == 4);
  CHECK(over.atBothEnds == 4);

  Shelf still({0, 1, 2}, ControlKind::none);
  for (int person = 0; person < 8; ++person) {
    still.say(0, person, 0, 50);
    still.say(2, person, 0, 50 + (person % 2 == 0 ? 3 : -3));
  }
  CHECK(overTimeOf(still.series, still.about).main.verdict == ChangeVerdict::within);
  still.series.main.limit.reset();
  CHECK(overTimeOf(still.series, still.about).main.verdict == ChangeVerdict::notShown);
  still.series.main.word = "smoke";
  CHECK(overTimeOf(still.series, still.about).main.verdict == ChangeVerdict::notAsked);
  still.series.main = {3, "honey", 10};
  still.series.sittings.push_back({4, "2020-01-01", std::nullopt});
  still.series.main.sitting = 4;
  CHECK(overTimeOf(still.series, still.about).main.verdict == ChangeVerdict::notHeld);

  Shelf late({0, 1, 2}, ControlKind::none);
  for (int person = 0; person < 4; ++person)
    for (const int sitting : {1, 2}) late.say(sitting, person, 0, 40 + person * sitting);
  CHECK(overTimeOf(late.series, late.about).main.verdict == ChangeVerdict::noFirst);
}

TEST_CASE("checked words are counted over those who were asked, and nothing is worked out where nothing is") {
  Shelf shelf({0, 1}, ControlKind::twin, {{ItemKind::check, Part::main, "vinegar", 0, 1}});
  for (int i = 0; i < 2; ++i)
    for (int person = 0; person < 5; ++person) {
      shelf.say(i, person, 0, i == 1 && person < 2);
      shelf.say(i, person, 1, 0);
    }
  const OverTime over = overTimeOf(shelf.series, shelf.about);
  CHECK(over.lines.empty());
  REQUIRE(over.mentions.size() == 1);
  REQUIRE(over.mentions[0].counts.size() == 2);
  CHECK(over.mentions[0].counts[0].batch == 0);
  CHECK(over.mentions[0].counts[1].batch == 2);
  CHECK(over.mentions[0].counts[1].batchOf == 5);
  CHECK(over.mentions[0].counts[1].control == 0);
  CHECK(over.mentions[0].counts[1].controlOf == 5);
  CHECK(over.mentions[0].counts[1].noticersOf == 0);
  shelf.about.who = {{"a"}, {"b"}, {"c"}, {"d"}, {"e"}};
  const OverTime known = overTimeOf(shelf.series, shelf.about, {{"vinegar", {{"a"}, {"e"}}}});
  CHECK(known.mentions[0].counts[1].noticers == 1);
  CHECK(known.mentions[0].counts[1].noticersOf == 2);

  const OverTime nothing = overTimeOf(shelf.series, AboutLots{});
  CHECK(nothing.sittings.empty());
  CHECK(nothing.lines.empty());
  CHECK(nothing.main.verdict == ChangeVerdict::notHeld);
  Shelf elsewhere({0, 1}, ControlKind::none);
  elsewhere.say(0, 0, 0, 5);
  elsewhere.series.sittings.clear();
  CHECK(overTimeOf(elsewhere.series, elsewhere.about).sittings.empty());
}
