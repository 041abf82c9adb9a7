#include "insight/sheet_findings.h"
#include "sheet_table.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace oddglass;
using namespace oddglass::insight;
using oddglass::testing::SheetTable;
using Catch::Matchers::WithinAbs;

namespace {

constexpr LotRole own = LotRole::compared, bought = LotRole::reference;

// Scores of a batch (lot 1) and a reference (lot 2), one pair a person, to one question of the limit given.
SheetFindings paired(const std::vector<int>& batch, const std::vector<int>& reference, int limit, ItemKind kind = ItemKind::line) {
  SheetTable table(2, {own, bought});
  const Item item = table.ask(kind, "sweet", limit, true);
  for (std::size_t i = 0; i < batch.size(); ++i) {
    table.say(static_cast<int>(i) + 1, item, 1, batch[i]);
    table.say(static_cast<int>(i) + 1, item, 2, reference[i]);
  }
  return sheetFindingsOf(table.session);
}

const LotGap& onlyGap(const SheetFindings& findings) {
  REQUIRE(findings.points.size() == 1);
  REQUIRE(findings.points[0].gaps.size() == 1);
  return findings.points[0].gaps[0];
}

}  // namespace

// Paired equivalence by two one-sided tests (Schuirmann 1987); p and 90 % interval worked out with statsmodels 0.14 ttost_paired on these scores, here
// ten times as large because a sheet holds whole numbers.
TEST_CASE("a batch within the limit of its reference, and one that is not") {
  const auto within = onlyGap(paired({60, 70, 50, 80, 60, 70, 60, 50}, {60, 60, 60, 70, 70, 70, 50, 50}, 10));
  CHECK_THAT(within.difference.value(), WithinAbs(1.25, 1e-12));
  CHECK_THAT(within.pWithin.value(), WithinAbs(0.010468785103462306, 1e-9));
  CHECK_THAT(within.limitLow.value(), WithinAbs(-4.3399242811182304, 1e-8));
  CHECK_THAT(within.limitHigh.value(), WithinAbs(6.83992428111823, 1e-8));
  CHECK_THAT(within.pDifference.value(), WithinAbs(0.6845283355605284, 1e-9));
  CHECK(within.verdict == GapVerdict::within);

  // Told apart (p .039) and within the limit of 7.5 (p .0068): the limit is looked at first. The limit of the source is 0.75 of ten times smaller scores.
  const auto both = onlyGap(paired({500, 600, 700, 600, 500, 800, 700, 600, 600, 700, 500, 600}, {600, 600, 700, 700, 500, 800, 700, 700, 600, 700, 600, 600}, 75, ItemKind::magnitude));
  CHECK_THAT(both.pWithin.value(), WithinAbs(0.006826749051771862, 1e-9));
  CHECK_THAT(both.pDifference.value(), WithinAbs(0.03881409182311226, 1e-9));
  CHECK(both.verdict == GapVerdict::within);

  const auto more = onlyGap(paired({75, 60, 65, 70, 80, 60, 70, 75, 65, 70}, {60, 55, 50, 65, 60, 50, 60, 60, 55, 60}, 10));
  CHECK_THAT(more.difference.value(), WithinAbs(11.5, 1e-12));
  CHECK_THAT(more.pWithin.value(), WithinAbs(0.8282818019310431, 1e-8));
  CHECK_THAT(more.pDifference.value(), WithinAbs(3.1047976987198976e-05, 1e-12));
  CHECK(more.verdict == GapVerdict::more);
}

TEST_CASE("without a limit nothing is within it, and with fewer than three people nothing is told") {
  SheetTable table(2, {own, bought});
  const Item item = table.ask(ItemKind::liking);
  for (int place = 1; place <= 8; ++place) {
    table.say(place, item, 1, place % 2 == 0 ? 6 : 7);
    table.say(place, item, 2, place % 3 == 0 ? 6 : 7);
  }
  CHECK(onlyGap(sheetFindingsOf(table.session)).verdict == GapVerdict::cannotTell);
  const auto two = paired({60, 10}, {20, 5}, 50);
  CHECK(onlyGap(two).verdict == GapVerdict::cannotTell);
  CHECK(onlyGap(two).why == stats::Reason::fewTasters);
  CHECK_FALSE(two.hasVerdicts);
  REQUIRE(two.points[0].lots.size() == 2);
  CHECK(two.points[0].lots[0].mean.value() == 35.0);
  CHECK_FALSE(two.points[0].lots[0].low);
  const auto one = paired({60}, {20}, 50);
  CHECK_FALSE(one.points[0].lots[0].mean);
  CHECK(one.points[0].lots[0].values == std::vector<double>{60.0});
}

// Drops and penalties: definition of Rothman and Parker 2009 (ASTM MNL63) and Popper and Kroll 2005; the data were constructed and worked out with NumPy.
TEST_CASE("what too little and too much cost in liking") {
  const std::vector<int> right{1, 1, 2, 2, 2, 3, 3, 3, 3, 3, 3, 3, 4, 4, 5}, liking{5, 6, 6, 6, 7, 8, 7, 8, 9, 7, 8, 7, 6, 7, 4};
  SheetTable table(2, {own, bought});
  const Item asked = table.ask(ItemKind::justRight, "sweet"), liked = table.ask(ItemKind::liking);
  for (std::size_t i = 0; i < right.size(); ++i) {
    table.say(static_cast<int>(i) + 1, asked, 1, right[i]);
    table.say(static_cast<int>(i) + 1, liked, 1, liking[i]);
  }
  const auto findings = sheetFindingsOf(table.session);
  REQUIRE(findings.counts.right.size() == 1);
  const RightLot& lot = findings.counts.right[0].lots.at(0);
  CHECK(lot.people == 15);
  CHECK(lot.right == 7);
  CHECK(lot.little.people == 5);
  CHECK(lot.much.people == 3);
  CHECK_THAT(lot.little.drop.value(), WithinAbs(1.7142857142857144, 1e-9));
  CHECK_THAT(lot.much.drop.value(), WithinAbs(2.0476190476190474, 1e-9));
  CHECK_THAT(lot.little.penalty.value(), WithinAbs(0.5714285714285714, 1e-9));
  CHECK_THAT(lot.much.penalty.value(), WithinAbs(0.4095238095238095, 1e-9));
  CHECK(lot.little.low);
  CHECK(findings.counts.right[0].lots.at(1).people == 0);
}

// Cochran's Q of Conover's twelve games and three predictors: NAG Library example g08alf, Q = 2.8, p = 0.2466; exact p by enumeration of the rows' permutations.
TEST_CASE("words that apply are compared over the drinks") {
  const std::vector<std::vector<int>> games{{1, 1, 1}, {1, 1, 1}, {0, 1, 0}, {1, 1, 0}, {0, 0, 0}, {1, 1, 1}, {1, 1, 1}, {1, 1, 0}, {0, 0, 1}, {0, 1, 0}, {1, 1, 1}, {1, 1, 1}};
  SheetTable table(3);
  const Item item = table.ask(ItemKind::check, "smoky");
  for (std::size_t i = 0; i < games.size(); ++i)
    for (int cup = 1; cup <= 3; ++cup) table.say(static_cast<int>(i) + 1, item, cup, games[i][static_cast<std::size_t>(cup - 1)]);
  const auto findings = sheetFindingsOf(table.session);
  REQUIRE(findings.counts.ticked.size() == 1);
  CHECK(findings.counts.ticked[0].ticked == std::vector<int>{8, 10, 7});
  CHECK(findings.counts.ticked[0].people == std::vector<int>{12, 12, 12});
  CHECK_THAT(findings.counts.ticked[0].pValue.value(), WithinAbs(0.3950617283950617, 1e-8));
}

TEST_CASE("two cups of one drink are one answer, and how far they lay apart is told") {
  SheetTable table(2, {own, bought});
  const Item item = table.ask(ItemKind::line, "bitter", 10, true), liking = table.ask(ItemKind::liking);
  for (int place = 1; place <= 6; ++place) {
    table.flight(place, 1, {1, 2, 1});
    table.say(place, item, 1, 30 + place);
    table.say(place, item, 2, 50 + 2 * place);
    table.say(place, item, 3, 40 + place);
    for (int cup = 1; cup <= 3; ++cup) table.say(place, liking, cup, cup == 2 ? 7 : 5);
  }
  table.session.plan.sheet->hasDuplicate = true;
  const auto findings = sheetFindingsOf(table.session);
  CHECK(findings.doubled == Slot{1});
  const PointsLine& line = findings.points[0];
  CHECK(line.item == item);
  CHECK(line.twice == 6);
  CHECK_THAT(line.moved.value(), WithinAbs(10.0, 1e-12));
  CHECK(line.lots[0].people == 6);
  CHECK_THAT(line.lots[0].mean.value(), WithinAbs(35 + 3.5, 1e-12));
  CHECK_THAT(line.gaps[0].difference.value(), WithinAbs(38.5 - 57.0, 1e-12));
  CHECK_THAT(findings.points[1].moved.value(), WithinAbs(0.0, 1e-12));
}

TEST_CASE("the reference's other vintage is the range that good ones of its own lie in") {
  SheetTable table(3, {own, bought, bought});
  const Item item = table.ask(ItemKind::line, "sweet");
  for (int place = 1; place <= 5; ++place) {
    table.say(place, item, 1, 30 + place % 3);
    table.say(place, item, 2, 50 + place % 2);
    table.say(place, item, 3, 56 + place % 2);
  }
  const auto findings = sheetFindingsOf(table.session);
  CHECK(findings.target == Slot{2});
  REQUIRE(findings.points[0].rangeLow);
  CHECK_THAT(*findings.points[0].rangeLow, WithinAbs(0.0, 1e-12));
  CHECK_THAT(*findings.points[0].rangeHigh, WithinAbs(6.0, 1e-12));
}

TEST_CASE("lacks is said only where most of those asked said too little") {
  const auto lacks = [](int tooLittle) {
    SheetTable table(2, {own, bought});
    const Item line = table.ask(ItemKind::line, "sweet", std::nullopt, true), right = table.ask(ItemKind::justRight, "sweet");
    for (int place = 1; place <= 8; ++place) {
      table.say(place, line, 1, 20 + place);
      table.say(place, line, 2, 60 + place % 3);
      table.say(place, right, 1, place <= tooLittle ? 2 : 3);
      table.say(place, right, 2, 3);
    }
    const auto gap = sheetFindingsOf(table.session).points[0].gaps.at(0);
    CHECK(gap.verdict == GapVerdict::less);
    CHECK(gap.saidTooLittle == tooLittle);
    CHECK(gap.askedRight == 8);
    return gap.lacks;
  };
  CHECK_FALSE(lacks(4));
  CHECK(lacks(5));
}

TEST_CASE("what was said aloud weakens a verdict that does not hold without those who heard it") {
  SheetTable table(2, {own, bought});
  const Item line = table.ask(ItemKind::line, "sweet", std::nullopt, true);
  for (int place = 1; place <= 8; ++place) {
    table.say(place, line, 1, 20 + place);
    table.say(place, line, 2, 60 + place % 3);
  }
  CHECK(sheetFindingsOf(table.session).points[0].gaps[0].verdict == GapVerdict::less);
  table.session.said.push_back({Seq{25}, 0, {}, "butter"});  // heard by all who locked later: places 3 to 8
  const auto gap = sheetFindingsOf(table.session).points[0].gaps[0];
  CHECK(gap.verdict == GapVerdict::cannotTell);
  CHECK(gap.weaker);
}

TEST_CASE("ranks, behaviour, points split and words are counted lot by lot") {
  SheetTable table(3, {own, bought, own});
  const Item rank = table.ask(ItemKind::rank), behaviour = table.ask(ItemKind::behaviour), split = table.ask(ItemKind::split), worst = table.ask(ItemKind::worst);
  const int places = 4;
  for (int place = 1; place <= places; ++place)
    for (int cup = 1; cup <= 3; ++cup) {
      table.say(place, rank, cup, place == 1 ? 4 - cup : cup);
      table.say(place, behaviour, cup, cup);
      table.say(place, split, cup, cup == 2 ? 3 : 1);
      if (cup == 2) table.say(place, worst, cup, 0);
      else table.write(place, worst, cup, place % 2 == 0 ? "Thin" : "thin");
    }
  const auto counts = sheetFindingsOf(table.session).counts;
  CHECK(counts.ranked[0].sums == std::vector<double>{6, 8, 10});
  CHECK(counts.ranked[0].given[0] == std::vector<int>{3, 0, 1});
  // Friedman: 12 / (4 x 3 x 4) (36 + 64 + 100) - 3 x 4 x 4 = 2; W = 2 / (4 x 2).
  CHECK_THAT(counts.ranked[0].agreement.value(), WithinAbs(0.25, 1e-12));
  CHECK(counts.behaviour[0].counts[0] == std::vector<int>{4, 0, 0});
  CHECK(counts.behaviour[0].counts[2] == std::vector<int>{0, 0, 4});
  CHECK(counts.split[0].points == std::vector<double>{1, 3, 1});
  REQUIRE(counts.said[0].words.size() == 1);
  CHECK(counts.said[0].words[0].people == std::vector<int>{4, 0, 4});
  CHECK(counts.said[0].none == std::vector<int>{0, 4, 0});
}

TEST_CASE("names of one tasting word are one complaint, and words of nobody's list stay as they were written") {
  SheetTable table(2);
  const Item worst = table.ask(ItemKind::worst);
  const char* first[]{"papery", "Wet cardboard", "paper", "a little papery", "eggy"};
  for (int place = 1; place <= 5; ++place) {
    table.write(place, worst, 1, first[place - 1]);
    table.write(place, worst, 2, "Eggy");
  }
  const auto said = sheetFindingsOf(table.session).counts.said[0];
  REQUIRE(said.words.size() == 3);
  CHECK(said.words[0].word == "Eggy");   // as it was first written: nobody used another name
  CHECK(said.words[0].people == std::vector<int>{1, 5});
  CHECK(said.words[1].word == "wet cardboard");
  CHECK(said.words[1].people == std::vector<int>{3, 0});
  CHECK(said.words[2].word == "a little papery");
}

TEST_CASE("cups the pourer was not sure of, flights set aside and people who were forgotten leave the numbers") {
  SheetTable table(2, {own, bought});
  const Item line = table.ask(ItemKind::line, "sweet");
  for (int place = 1; place <= 5; ++place) {
    table.say(place, line, 1, 20 + place);
    table.say(place, line, 2, 60);
  }
  table.flight(1).poured[0].reset();
  table.flight(2).voided = VoidReason::mixedUp;
  table.session.people.push_back({{3}, ShownAs::loose, "A", false, false, false, true});
  const auto findings = sheetFindingsOf(table.session);
  CHECK(findings.unsure == 1);
  CHECK(findings.voided == 1);
  const auto told = std::ranges::find(findings.deviations, DeviationKind::voided, &Deviation::kind);
  REQUIRE(told != findings.deviations.end());
  CHECK(told->count == 1);
  CHECK(findings.people == 3);
  CHECK(findings.points[0].lots[0].people == 2);
  CHECK(findings.points[0].lots[1].people == 3);
}

TEST_CASE("nothing answered, one drink, no spread: a reason, and never a number that is none") {
  SheetTable nobody(2, {own, bought});
  nobody.ask(ItemKind::line, "sweet");
  nobody.flight(1);
  CHECK(sheetFindingsOf(nobody.session).why == NoVerdict::nobodyAnswered);
  SheetTable alike(2, {own, bought});
  const Item line = alike.ask(ItemKind::line, "sweet", 5);
  for (int place = 1; place <= 6; ++place) {
    alike.say(place, line, 1, 40);
    alike.say(place, line, 2, 40);
  }
  const auto gap = sheetFindingsOf(alike.session).points[0].gaps[0];
  CHECK(gap.verdict == GapVerdict::cannotTell);
  CHECK(gap.why == stats::Reason::noSpread);
  SheetTable one(1);
  const Item liking = one.ask(ItemKind::liking);
  for (int place = 1; place <= 6; ++place) one.say(place, liking, 1, place);
  const auto findings = sheetFindingsOf(one.session);
  CHECK(findings.points[0].gaps.empty());
  CHECK(findings.points[0].lots[0].mean.value() == 3.5);
  CHECK(findings.next.step == NextStep::addReference);
}
