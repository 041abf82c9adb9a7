#include "words/aging.h"
#include "words/denials.h"
#include "words/over_time.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::words;
using insight::ChangeVerdict;
using insight::TimeVerdict;
using Catch::Matchers::Contains;

namespace {

stats::Estimated slopeOf(double estimate, double low, double high) {
  stats::Estimated found;
  found.estimate = estimate;
  found.low = low;
  found.high = high;
  found.pValue = 0.01;
  return found;
}

struct Aged {
  Series series;
  insight::OverTime over;

  explicit Aged(ControlKind control = ControlKind::twin, int sittings = 6) {
    series.title = "Hedge mead";
    series.main = {sittings, "cardboard", 10};
    series.control = over.control = control;
    for (int i = 0; i < sittings; ++i) over.sittings.push_back({i + 1, {}, "2026-0" + std::to_string(i + 1) + "-10", 2.0 * i, 6, 4});
    over.main = {sittings, "cardboard", ItemKind::line, 4, slopeOf(24, 10, 38), std::nullopt, ChangeVerdict::more};
    over.atBothEnds = 4;
    insight::TimeLine line;
    line.question = {ItemKind::line, Part::main, "cardboard", 0, 100};
    for (int i = 0; i < sittings; ++i) line.dots.push_back({i, 6, 30.0 + i, 30.0, 1.0 * i, -2.0, 5.0});
    line.trend.slope = slopeOf(6, 2, 10);
    line.trend.tasters = 6;
    line.verdict = TimeVerdict::rose;
    over.lines.push_back(line);
  }

  OverTimeWords words(const std::string& next = "2027-01-10") const { return overTimeWords(Voice{}, series, over, next); }
};

stats::Alike alikeBetween(double low, double high, bool isAlike) {
  stats::Alike alike;
  alike.low = low;
  alike.high = high;
  alike.difference = (low + high) / 2;
  alike.isAlike = isAlike;
  return alike;
}

}  // namespace

TEST_CASE("a change is told with its range, its control and whom it rests on") {
  Aged aged;
  const OverTimeWords out = aged.words();
  CHECK(out.headline == "Cardboard rose from the first sitting to the one asked about: by 24 of 100 (10 to 38), beside the cold bottles.");
  CHECK(out.word == "changed");
  CHECK(out.shape == Shape::disc);
  REQUIRE(!out.lines.empty());
  CHECK(out.lines[0] == "Worked out from the 4 people who sat at both.");
  REQUIRE(out.round.size() == 1);
  CHECK(out.round[0].lines[0] == "Cardboard rose since 2026-01-10: about 6.0 of 100 a month (2.0 to 10.0), beside the cold bottles.");
  REQUIRE(out.round[0].rows.size() == 6);
  for (const auto& row : out.round[0].rows) CHECK(row.size() == out.round[0].headers.size());
  CHECK(out.next == "Next look: 2027-01-10.");
  CHECK(aged.words("").next.empty());

  aged.over.main.verdict = ChangeVerdict::less;
  aged.over.main.change = slopeOf(-24, -38, -10);
  CHECK(aged.words().headline == "Cardboard fell from the first sitting to the one asked about: by 24 of 100 (10 to 38), beside the cold bottles.");
}

TEST_CASE("no change shown is not no change, and says what could have been missed") {
  Aged aged;
  aged.over.main.verdict = ChangeVerdict::notShown;
  aged.over.main.change = slopeOf(3, -9, 15);
  aged.over.lines[0].verdict = TimeVerdict::notShown;
  aged.over.lines[0].trend.slope = slopeOf(0.4, -1.5, 2.3);
  const OverTimeWords out = aged.words();
  CHECK(out.headline == "No change shown in cardboard, beside the cold bottles. Anything from −9 to 15 of 100 fits.");
  CHECK(out.shape == Shape::ring);
  CHECK_THAT(out.lines.back(), Contains("a small one may be there"));
  CHECK(out.round[0].lines[0] == "Cardboard: no change shown; up to 2.3 of 100 a month could have been missed.");
}

TEST_CASE("within the limit, and the last two looks") {
  Aged aged;
  aged.over.main.verdict = ChangeVerdict::within;
  aged.over.main.alike = alikeBetween(-4, 7, true);
  aged.over.lines[0].limit = 10;
  aged.over.lines[0].lastTwo = alikeBetween(-3, 6, true);
  const OverTimeWords out = aged.words();
  CHECK(out.headline == "Cardboard is within your limit of where it began: no more than 10 of 100 (here between −4 to 7), beside the cold bottles.");
  CHECK(out.shape == Shape::bars);
  CHECK(out.round[0].lines.back() == "The last two looks were alike within your limit (10 of 100).");
  aged.over.lines[0].lastTwo = alikeBetween(-18, 9, false);
  CHECK(aged.words().round[0].lines.back() == "Whether the last two looks lie within your limit (10 of 100) cannot be told yet: anything from −18 to 9 fits.");
}

TEST_CASE("without a control it says what cannot be known") {
  Aged aged(ControlKind::none);
  CHECK_THAT(aged.words().headline, Contains("whether drink or day did it cannot be known"));
  CHECK(aged.words().shape == Shape::dash);
  CHECK_THAT(aged.words().cautions.front(), Contains("Cannot be known here"));
  aged.over.main.verdict = ChangeVerdict::within;
  aged.over.main.alike = alikeBetween(-4, 7, true);
  CHECK_THAT(aged.words().headline, Contains("These two sittings were alike"));
  CHECK(aged.words().shape == Shape::dash);
}

TEST_CASE("a peak is told only from a curve, with both sides") {
  Aged aged;
  insight::TimeLine liking;
  liking.question = {ItemKind::liking, Part::main, "", 1, 9};
  liking.dots = aged.over.lines[0].dots;
  liking.trend.shape.chosen = stats::Shape::quadratic;
  liking.trend.peak.age = 6.0;
  liking.trend.peak.low = 3.0;
  aged.over.lines = {liking};
  CHECK_THAT(aged.words().round[0].lines[1], Contains("Liking was highest at 6 months; anything from 3 months to past the last bottle fits these answers."));
  aged.over.lines[0].trend.shape.chosen = stats::Shape::linear;
  const OverTimeWords straight = aged.words();
  for (const std::string& line : straight.round[0].lines) CHECK_THAT(line, !Contains("highest"));
}

TEST_CASE("no headline of a series claims too much, whatever came out") {
  for (const ControlKind control : {ControlKind::none, ControlKind::twin, ControlKind::reference})
    for (const ChangeVerdict verdict : {ChangeVerdict::more, ChangeVerdict::less, ChangeVerdict::within, ChangeVerdict::notShown, ChangeVerdict::notHeld, ChangeVerdict::noFirst, ChangeVerdict::notAsked, ChangeVerdict::cannotTell})
      for (const int people : {0, 1, 2, 6})
        for (const char* word : {"", "cardboard"}) {
          Aged aged(control);
          aged.over.main.verdict = verdict;
          aged.over.main.people = people;
          aged.over.main.word = aged.series.main.word = word;
          aged.over.main.alike = alikeBetween(-1, 1, true);
          const OverTimeWords out = aged.words();
          INFO(out.headline);
          CHECK(forbiddenWordIn(out.headline).empty());
          CHECK_FALSE(out.word.empty());
          std::vector<std::string> all = out.lines;
          all.push_back(out.headline);
          all.insert(all.end(), out.cautions.begin(), out.cautions.end());
          for (const OutSection& section : out.round) all.insert(all.end(), section.lines.begin(), section.lines.end());
          for (const std::string& line : all) {
            INFO(line);
            CHECK(line.find_first_of("{}%") == std::string::npos);
            CHECK(forbiddenWordIn(line).empty());
            CHECK(line.find("  ") == std::string::npos);
          }
        }
  insight::OverTime nothing;
  CHECK(overTimeWords(Voice{}, Series{}, nothing, "").headline == "Nothing has been tasted in this series yet.");
}

TEST_CASE("ages are said as people say them") {
  CHECK(ageName(Voice{}, 14 / insight::daysOfAMonth) == "2 weeks");
  CHECK(ageName(Voice{}, 30 / insight::daysOfAMonth) == "4 weeks");
  CHECK(ageName(Voice{}, 61 / insight::daysOfAMonth) == "2 months");
  CHECK(ageName(Voice{}, 365 / insight::daysOfAMonth) == "12 months");
  CHECK(ageName(Voice{}, 2.5) == "2.5 months");
}

TEST_CASE("what a series takes is a sum that adds up, and the cheaper way is named") {
  planning::AgingSetup setup{planning::usualAges(), ControlKind::twin, 1, 2, 12, 6};
  const AgingWords said = agingWords(Voice{}, setup, planning::agingOutlook(setup));
  CHECK(said.headline == "6 sittings × (1 + 1 cold) + 2 in reserve = 14 bottles; you have 12 bottles.");
  CHECK_THAT(said.cheaper, Contains("5 sittings × (1 + 1 cold) + 2 in reserve = 12 bottles"));
  setup.bottles = 14;
  CHECK(agingWords(Voice{}, setup, planning::agingOutlook(setup)).headline == "6 sittings × (1 + 1 cold) + 2 in reserve = 14 bottles.");
  setup.bottles = 3;
  CHECK_THAT(agingWords(Voice{}, setup, planning::agingOutlook(setup)).cheaper, Contains("too few for a series"));
}

TEST_CASE("what was set up otherwise is named") {
  CHECK(setupLine(Voice{}, {}).empty());
  CHECK(setupLine(Voice{}, {SetupPart::cupMl, SetupPart::cleanser}) == "Set otherwise than at the first sitting: more or less in a cup and another cleanser.");
}
