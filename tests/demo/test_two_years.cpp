// What is true of the two years of the demo stands in demo_years.h. The program's findings have to hold it within their intervals.
#include "cellar.h"
#include "demo/demo_years.h"
#include "insight/over_time.h"
#include "insight/references.h"
#include "insight/room.h"
#include "insight/side_by_side.h"
#include "session/about_lots.h"
#include "session/own.h"
#include "shelf/batches.h"
#include "shelf/people.h"
#include "shelf/references.h"
#include "shelf/series.h"

#include <boost/math/distributions/students_t.hpp>

#include <algorithm>
#include <cmath>

using namespace oddglass;

namespace {

/// Played once for all cases.
struct Shown {
  DemoShelf demo;
  two_years::Years years = two_years::play(demo);
};
Shown& shown() {
  static Shown once;
  return once;
}

void requireHolds(const stats::Estimated& found, double truth) {
  REQUIRE(found.low);
  REQUIRE(found.high);
  CAPTURE(*found.low, *found.high, truth);
  CHECK(*found.low <= truth);
  CHECK(truth <= *found.high);
}

/// The same for one of several that are looked at together: the interval is widened until all of them hold at 95 % (Bonferroni).
void requireHoldsAmong(int several, const stats::Estimated& found, double truth) {
  REQUIRE(found.estimate);
  REQUIRE(found.se);
  REQUIRE(found.df);
  const double reach = *found.se * quantile(boost::math::students_t(*found.df), 1 - 0.025 / several);
  CAPTURE(*found.estimate, reach, truth);
  CHECK(std::abs(*found.estimate - truth) <= reach);
}

const insight::TimeLine& lineOf(const insight::OverTime& over, const std::string& word) {
  const auto found = std::ranges::find(over.lines, word, [](const insight::TimeLine& line) { return line.question.word; });
  REQUIRE(found != over.lines.end());
  return *found;
}

}  // namespace

TEST_CASE("two years: what the batch gained over its cold twin is found, and what stayed is not called a change") {
  Shown& all = shown();
  const Series series = shelf::series(*all.demo.store, all.years.series);
  const insight::OverTime over = insight::overTimeOf(series, session::aboutLots(*all.demo.store, series));
  REQUIRE(over.sittings.size() == 5);
  CHECK(over.atBothEnds == 6);
  CHECK(over.sittings[2].people == 5);

  const insight::TimeLine& cardboard = lineOf(over, "cardboard");
  CHECK(cardboard.verdict == insight::TimeVerdict::rose);
  requireHolds(cardboard.trend.slope, two_years::cardboardEachMonth);
  const insight::TimeLine& honey = lineOf(over, "honey");
  CHECK(honey.verdict == insight::TimeVerdict::notShown);
  requireHolds(honey.trend.slope, two_years::honeyEachMonth);

  CHECK(over.main.verdict == insight::ChangeVerdict::more);
  requireHolds(over.main.change, two_years::cardboardEachMonth * (over.sittings[4].age - over.sittings[0].age));
}

TEST_CASE("two years: how far the maker leans to their own is found, to the friends they know") {
  Shown& all = shown();
  const auto tastings = session::ownTastings(*all.demo.store, shelf::brewer(*all.demo.store)->id);
  const insight::Lean lean = insight::roomOf(tastings).lean;
  REQUIRE(lean.sessions.size() == 4);
  CHECK(lean.verdict == insight::LeanVerdict::kinder);
  requireHolds(lean.over, two_years::leanOfMaker);
}

TEST_CASE("two years: what another yeast and less blossom did stands between the batches, and the other well did nothing that shows") {
  store::Store& store = *shown().demo.store;
  const auto batches = shelf::batchesOf(store, "hedge mead");
  REQUIRE(batches.size() == 3);
  const BatchTastings tastings = session::batchTastings(store, batches);
  const insight::SideBySide found = insight::sideBySideOf(batches, tastings, shelf::wordsNow(store, wordsAsked(tastings.about)));
  REQUIRE(found.steps.size() == 2);
  const auto gapOf = [&](int step, const std::string& word) -> const insight::BatchGap& {
    const auto& gaps = found.steps[static_cast<std::size_t>(step)].gaps;
    const auto gap = std::ranges::find_if(gaps, [&](const insight::BatchGap& each) { return found.lines[static_cast<std::size_t>(each.line)].question.word == word; });
    REQUIRE(gap != gaps.end());
    return *gap;
  };
  CHECK(found.steps[0].link == insight::BatchLink::together);
  CHECK(found.steps[0].changed.size() == 2);
  CHECK(gapOf(0, "honey").verdict == insight::GapVerdict::less);
  CHECK(gapOf(0, "sour").verdict != insight::GapVerdict::less);
  REQUIRE(found.comparisons >= 4);
  requireHoldsAmong(found.comparisons, gapOf(0, "sour").difference, two_years::sourOfNewYeast);
  requireHoldsAmong(found.comparisons, gapOf(0, "honey").difference, two_years::honeyOfNewYeast);
  CHECK(found.steps[1].changed.size() == 1);
  for (const char* word : {"sour", "honey"}) {
    CHECK(gapOf(1, word).verdict != insight::GapVerdict::more);
    CHECK(gapOf(1, word).verdict != insight::GapVerdict::less);
    requireHoldsAmong(found.comparisons, gapOf(1, word).difference, two_years::ofOtherWater);
  }
}

TEST_CASE("two years: the older vintage is the one with more honey") {
  store::Store& store = *shown().demo.store;
  auto all = shelf::references(store);
  const auto bought = std::ranges::find(all, "Bought hedge mead", [](const Reference& each) { return each.beverage.name; });
  REQUIRE(bought != all.end());
  session::readPoured(store, *bought);
  const insight::ReferenceFindings found = insight::referenceOf(*bought, "2026-08-01");
  const auto honey = std::ranges::find(found.ranges, "honey", [](const insight::VintageRange& range) { return range.question.word; });
  REQUIRE(honey != found.ranges.end());
  CHECK(bought->lots[static_cast<std::size_t>(honey->high.lot)].id == shown().years.older);
  CHECK(bought->lots[static_cast<std::size_t>(honey->low.lot)].id == shown().years.younger);
  CHECK(honey->sessions == 1);
}
