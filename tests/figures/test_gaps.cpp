#include "figures/frame.h"
#include "figures/gaps.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>

using namespace oddglass::figures;
using namespace oddglass::tests;

namespace {

GapRow gapRow(const std::string& label, double gap, double half, GapVerdict verdict) {
  GapRow made;
  made.label = label;
  made.gap = gap;
  made.interval = Span{gap - half, gap + half};
  made.verdict = verdict;
  made.word = verdict == GapVerdict::less ? "less" : verdict == GapVerdict::more ? "more" : verdict == GapVerdict::within ? "within the limit" : "cannot tell yet";
  made.count = "7 of 7";
  made.readOut = label + " in one sentence.";
  return made;
}

GapPicture someGaps(std::vector<GapRow> rows) {
  GapPicture made;
  made.title = "Next to the reference";
  made.scale = {-50, 50, "less", "more", {}};
  made.rows = std::move(rows);
  made.zeroName = "the reference";
  made.limitName = "your limit";
  made.rangeName = "the reference’s own range";
  made.sentence = "In short.";
  made.table = {{"word", "gap"}, {{"sweet", "4"}}};
  return made;
}

/// Where the words of a row begin, from the top.
double topOf(const Figure& figure, const std::string& label) {
  for (const Text& text : all<Text>(figure))
    if (text.text == label) return text.y;
  return -1;
}

const std::string longTitled = "a long label that leaves no room for marks beside it at this width of the figure";

}  // namespace

TEST_CASE("gaps go from the furthest below the reference to the furthest above, those without a gap last") {
  GapPicture p = someGaps({gapRow("b", 10, 2, GapVerdict::more), gapRow("a", -3, 9, GapVerdict::unclear), gapRow("c", -20, 4, GapVerdict::less)});
  GapRow none = gapRow("d", 0, 1, GapVerdict::unclear);
  none.gap.reset();
  none.why = "Nobody answered.";
  p.rows.insert(p.rows.begin(), none);
  for (const double width : {300.0, 860.0}) {
    const Figure figure = gapFigure(p, width);
    CHECK(topOf(figure, "c") > 0);
    CHECK(topOf(figure, "c") < topOf(figure, "a"));
    CHECK(topOf(figure, "a") < topOf(figure, "b"));
    CHECK(topOf(figure, "b") < topOf(figure, "d"));
    CHECK(saying<Ring>(figure, "d in one sentence. Nobody answered.").empty());
    CHECK_FALSE(saying<Text>(figure, "d in one sentence. Nobody answered.").empty());
  }
}

TEST_CASE("a gap and its interval stand at their values") {
  GapPicture p = someGaps({gapRow(longTitled, 25, 15, GapVerdict::more)});
  p.limit = 20;
  p.rows[0].range = Span{-10, 5};
  p.rows[0].rangeReadOut = "The range.";
  const Figure figure = gapFigure(p, 300);  // words above the marks, the scale of 100 from 8 to 292
  const auto dots = saying<Disc>(figure, p.rows[0].readOut);
  REQUIRE(dots.size() == 1);
  CHECK_THAT(dots[0].x, Catch::WithinAbs(8 + 0.75 * 284, 1e-9));
  double low = 300, high = 0;
  for (const Line& line : saying<Line>(figure, p.rows[0].readOut)) {
    low = std::min({low, line.x1, line.x2});
    high = std::max({high, line.x1, line.x2});
  }
  CHECK_THAT(low, Catch::WithinAbs(8 + 0.60 * 284, 1e-9));
  CHECK_THAT(high, Catch::WithinAbs(8 + 0.90 * 284, 1e-9));
  const auto band = saying<Rect>(figure, "The range.");
  REQUIRE(band.size() == 1);
  CHECK_THAT(band[0].x, Catch::WithinAbs(8 + 0.40 * 284, 1e-9));
  CHECK_THAT(band[0].width, Catch::WithinAbs(0.15 * 284, 1e-9));
  const auto limits = saying<Line>(figure, "your limit");
  REQUIRE(limits.size() == 2);
  CHECK_THAT(limits[0].x1, Catch::WithinAbs(8 + 0.30 * 284, 1e-9));
  CHECK_THAT(limits[1].x1, Catch::WithinAbs(8 + 0.70 * 284, 1e-9));
  CHECK(limits[0].dashed);
  const auto zero = saying<Line>(figure, "the reference");
  REQUIRE(zero.size() == 1);
  CHECK_THAT(zero[0].x1, Catch::WithinAbs(150, 1e-9));
  CHECK_FALSE(zero[0].dashed);
}

TEST_CASE("each verdict has a shape and its word, whatever the colour") {
  GapPicture p = someGaps({gapRow("a", -20, 5, GapVerdict::less), gapRow("b", 20, 5, GapVerdict::more), gapRow("c", 1, 2, GapVerdict::within), gapRow("d", 4, 30, GapVerdict::unclear)});
  p.limit = 10;
  const Figure figure = gapFigure(p, 860);
  CHECK(saying<Disc>(figure, "a in one sentence.").size() == 1);
  CHECK(saying<Disc>(figure, "b in one sentence.").size() == 1);
  CHECK(saying<Rect>(figure, "c in one sentence.").size() == 2);
  CHECK(saying<Ring>(figure, "d in one sentence.").size() == 1);
  CHECK(all<Disc>(figure).size() + all<Ring>(figure).size() == 3);
  for (const std::string word : {"less", "more", "within the limit", "cannot tell yet", "7 of 7", "your limit"}) CHECK_THAT(written(figure), Catch::Contains(word));
}

TEST_CASE("rows with limits of their own have them drawn in their own strips") {
  GapPicture p = someGaps({gapRow("a", -4, 5, GapVerdict::within), gapRow("b", 20, 5, GapVerdict::more)});
  p.rows[0].limit = 10;
  p.rows[1].limit = 20;
  const auto limits = saying<Line>(gapFigure(p, 860), "your limit");
  REQUIRE(limits.size() == 4);
  for (const Line& each : limits) CHECK(each.dashed);
  CHECK_THAT(limits[3].x1 - limits[2].x1, Catch::WithinAbs(2 * (limits[1].x1 - limits[0].x1), 1e-9));
  CHECK(limits[0].y2 < limits[2].y1);
  p.rows[0].limit.reset();
  CHECK_THROWS_WITH(gapFigure(p, 860), Catch::Contains("no limit to be within"));
}

TEST_CASE("without an interval there is the mark alone, and the reason in what it says") {
  GapPicture p = someGaps({gapRow("a", 4, 1, GapVerdict::unclear)});
  p.rows[0].interval.reset();
  CHECK_THROWS_WITH(gapFigure(p, 400), Catch::StartsWith("why"));
  p.rows[0].why = "One taster has no spread.";
  const Figure figure = gapFigure(p, 400);
  CHECK(saying<Ring>(figure, "a in one sentence. One taster has no spread.").size() == 1);
  CHECK(saying<Line>(figure, "a in one sentence. One taster has no spread.").empty());
}

TEST_CASE("an interval that runs off the scale has no upright at that end") {
  const Figure figure = gapFigure(someGaps({gapRow(longTitled, 0, 70, GapVerdict::unclear)}), 300);
  const auto lines = saying<Line>(figure, longTitled + " in one sentence.");
  REQUIRE(lines.size() == 2);
  CHECK_THAT(lines[0].x1, Catch::WithinAbs(8, 1e-9));
  CHECK_THAT(lines[1].x2, Catch::WithinAbs(292, 1e-9));
  for (const Line& line : lines) CHECK(line.y1 == line.y2);
}

TEST_CASE("an interval of no width is the mark alone") {
  const Figure figure = gapFigure(someGaps({gapRow("a", 4, 0, GapVerdict::unclear)}), 400);
  CHECK(saying<Line>(figure, "a in one sentence.").empty());
  CHECK(saying<Ring>(figure, "a in one sentence.").size() == 1);
}

TEST_CASE("a picture with its signs turned is its mirror image") {
  const auto xs = [](double sign) {
    GapPicture p = someGaps({gapRow(longTitled, sign * 12, 7, sign > 0 ? GapVerdict::more : GapVerdict::less), gapRow(longTitled, sign * 31, 40, GapVerdict::unclear)});
    p.limit = 10;
    std::vector<double> at;
    for (const Mark& mark : gapFigure(p, 300).marks)
      if (!std::holds_alternative<Text>(mark.shape) && !mark.readOut.empty()) at.push_back(boxOf(mark).left + boxOf(mark).right);
    std::vector<double> turned;
    for (const double x : at) turned.push_back(sign > 0 ? x : 600 - x);
    std::sort(turned.begin(), turned.end());
    return turned;
  };
  const auto one = xs(1), other = xs(-1);
  REQUIRE(one.size() == other.size());
  for (std::size_t i = 0; i < one.size(); ++i) CHECK_THAT(one[i], Catch::WithinAbs(other[i], 1e-9));
}

TEST_CASE("a scale for gaps reaches just past the furthest") {
  GapPicture p = someGaps({gapRow("a", -22, 100, GapVerdict::less)});
  CHECK(gapReach(p) == 30);
  p.limit = 31;
  CHECK(gapReach(p) == 50);
  p.rows[0].range = Span{-51, 3};
  CHECK(gapReach(p) == 100);
  p.rows[0].range = Span{-100, 3};
  CHECK(gapReach(p) == 100);
  CHECK(gapReach(someGaps({})) == 1);
  CHECK_THAT(evenReach(0.19), Catch::WithinRel(0.2, 1e-12));
  CHECK_THROWS_WITH(evenReach(-1), Catch::StartsWith("furthest"));
}

TEST_CASE("gaps that cannot be are refused by name") {
  const auto refused = [](const std::string& name, auto change) {
    GapPicture p = someGaps({gapRow("a", 4, 1, GapVerdict::unclear)});
    p.limit = 10;
    change(p);
    CHECK_THROWS_WITH(gapFigure(p, 400), Catch::StartsWith(name));
  };
  refused("scale", [](GapPicture& p) { p.scale.high = -50; });
  refused("zero", [](GapPicture& p) { p.scale.low = 1; });
  refused("lowName", [](GapPicture& p) { p.scale.lowName.clear(); });
  refused("gap", [](GapPicture& p) { p.rows[0].gap = 51; });
  refused("gap", [](GapPicture& p) { p.rows[0].gap = std::nan(""); });
  refused("interval", [](GapPicture& p) { p.rows[0].interval = Span{3, 2}; });
  refused("interval", [](GapPicture& p) { p.rows[0].interval = Span{0, std::numeric_limits<double>::infinity()}; });
  refused("range", [](GapPicture& p) { p.rows[0].range = Span{-60, 2}; });
  refused("rangeName", [](GapPicture& p) { p.rows[0].range = Span{-6, 2}; p.rangeName.clear(); });
  refused("limit", [](GapPicture& p) { p.limit = 0; });
  refused("limit", [](GapPicture& p) { p.limit = 60; });
  refused("limitName", [](GapPicture& p) { p.limitName.clear(); });
  refused("word", [](GapPicture& p) { p.rows[0].word.clear(); });
  refused("count", [](GapPicture& p) { p.rows[0].count.clear(); });
  refused("verdict", [](GapPicture& p) { p.rows[0].verdict = GapVerdict::less; });
  refused("verdict", [](GapPicture& p) { p.limit.reset(); p.rows[0].verdict = GapVerdict::within; });
  CHECK_THROWS_WITH(gapFigure(someGaps({}), 100), Catch::StartsWith("width"));
}
