// What is true of the two years of the demo stands in demo_years.h. The program's findings have to hold it within their intervals.
#include "cellar.h"
#include "demo/demo_years.h"
#include "insight/over_time.h"
#include "insight/room.h"
#include "session/about_lots.h"
#include "session/own.h"
#include "shelf/people.h"
#include "shelf/series.h"

#include <algorithm>

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
