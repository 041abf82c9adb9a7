#include "planning/outlook.h"
#include "report/evening.h"
#include "report/made.h"
#include "report/pictures.h"

#include <catch2/catch.hpp>

#include <set>

using namespace oddglass;

TEST_CASE("the interval of a finding can be drawn at every width") {
  const RevealedSession session = report_test::evening();
  const auto out = words::cameOut(words::Voice{}, session, insight::findingsOf(session));
  REQUIRE(out.interval);
  for (const double width : {300.0, 640.0, 1200.0}) {
    const auto figure = figures::intervalFigure(report::picture(*out.interval), width);
    CHECK(figure.width == width);
    CHECK(figure.sentence == out.interval->sentence);
    CHECK(figure.table.rows.size() == 4);  // both ends, the middle, the limit
  }
}

TEST_CASE("what a panel would show has three bars and a table behind them") {
  planning::Setup setup;
  setup.panel = 6;
  setup.lots = {{500, 500, 6}, {500, 500, 6}};
  const auto outlook = words::outlookPicture(words::Voice{}, planning::outlookFor(setup));
  const auto figure = figures::sharesFigure(report::picture(outlook), 860);
  CHECK(figure.table.rows.size() == 3);
  CHECK(report::picture(outlook).bars.size() == 3);
  CHECK_THAT(figure.sentence, Catch::Contains("What half can taste would be found about 35 times in 100."));  // 0.35, exact binomial
}

TEST_CASE("each verdict has a mark of its own shape") {
  const auto disc = report::verdictMark(words::Shape::disc, "shown"), ring = report::verdictMark(words::Shape::ring, "not shown");
  const auto bars = report::verdictMark(words::Shape::bars, "alike"), dash = report::verdictMark(words::Shape::dash, "no verdict");
  REQUIRE(disc.marks.size() == 1);
  CHECK(std::holds_alternative<figures::Disc>(disc.marks[0].shape));
  REQUIRE(ring.marks.size() == 1);
  CHECK(std::holds_alternative<figures::Ring>(ring.marks[0].shape));
  CHECK(bars.marks.size() == 2);
  CHECK(dash.marks.size() == 1);
  CHECK(ring.sentence == "not shown");
}

TEST_CASE("orders are counted as they were dealt, and codes in files have words of their own") {
  const RevealedSession session = report_test::evening();
  const auto orders = report::ordersDealt(session);
  REQUIRE(orders.size() == 6);
  for (const auto& each : orders) CHECK(each.flights >= 0);
  std::set<std::string_view> seen;
  for (int i = 0; i <= static_cast<int>(insight::Verdict::none); ++i) CHECK(seen.insert(report::nameOf(static_cast<insight::Verdict>(i))).second);
  seen.clear();
  for (int i = 0; i <= static_cast<int>(insight::DeviationKind::erased); ++i) CHECK(seen.insert(report::nameOf(static_cast<insight::DeviationKind>(i))).second);
  seen.clear();
  for (int i = 0; i <= static_cast<int>(insight::Caution::countsOnly); ++i) CHECK(seen.insert(report::nameOf(static_cast<insight::Caution>(i))).second);
  CHECK(seen.count("") == 0);
}
