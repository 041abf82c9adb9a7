#include "figures/frame.h"
#include "figures/interval.h"
#include "figures/layout.h"
#include "figures/shares.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>
#include <string>
#include <vector>

using namespace oddglass::figures;
using oddglass::tests::fault;

namespace {

IntervalPicture interval(double low, double high) {
  IntervalPicture p;
  p.low = low;
  p.high = high;
  p.point = (low + high) / 2;
  p.title = "How many people like these can tell";
  p.none = "none";
  p.half = "half";
  p.all = "all";
  p.range = "from none to about half";
  p.sentence = "Between none and about half of people like these can tell.";
  p.table = {{"from", "to"}, {{"none", "half"}}};
  return p;
}

SharesPicture shares() {
  SharesPicture p;
  p.title = "What this panel would show";
  for (const double share : {0.0, 0.004, 0.43, 1.0})
    p.bars.push_back({"if 3 in 10 people can taste it", share, "43 times in 100", "43 times in 100 if 3 in 10 can taste it"});
  p.nothing = "hardly ever";
  p.always = "nearly always";
  p.table = {{"people who can taste it", "shown"}, {{"3 in 10", "43 in 100"}}};
  return p;
}

const std::string longWord(120, 'W');
const std::string longText = "Quantas pessoas como estas conseguem realmente sentir alguma coisa entre as duas bebidas servidas esta noite";

}  // namespace

TEST_CASE("the interval is never cut and its words never overlap") {
  for (double width = 300; width <= 1200; width += 12.5) {
    for (int low = 0; low <= 10; ++low) {
      for (int high = low; high <= 10; ++high) {
        IntervalPicture p = interval(low / 10.0, high / 10.0);
        INFO("width " << width << " from " << low << " to " << high);
        CHECK(fault(intervalFigure(p, width)) == "");
        p.limit = 0.3;
        p.limitLabel = "your limit";
        p.title = p.range = longText;
        CHECK(fault(intervalFigure(p, width)) == "");
        p.none = p.half = p.all = p.limitLabel = longText;
        CHECK(fault(intervalFigure(p, width)) == "");
        p.title = p.range = p.none = p.half = p.all = longWord;
        CHECK(fault(intervalFigure(p, width)) == "");
      }
    }
  }
}

TEST_CASE("the bars are never cut and their words never overlap") {
  for (double width = 300; width <= 1200; width += 12.5) {
    SharesPicture p = shares();
    INFO("width " << width);
    CHECK(fault(sharesFigure(p, width)) == "");
    p.title = p.nothing = p.always = longText;
    for (ShareBar& bar : p.bars) bar.label = bar.value = longText;
    CHECK(fault(sharesFigure(p, width)) == "");
    p.title = p.nothing = p.always = longWord;
    for (ShareBar& bar : p.bars) bar.label = bar.value = longWord;
    CHECK(fault(sharesFigure(p, width)) == "");
  }
}

TEST_CASE("the check for overlaps can fail") {
  Figure figure = intervalFigure(interval(0, 0.5), 300);
  figure.marks.push_back({Text{0, 14, 14, Anchor::start, "over the title"}, Role::ink, {}});
  CHECK_THAT(fault(figure), Catch::Contains("lies over"));
  figure.marks.back() = {Text{290, 14, 14, Anchor::start, "outside"}, Role::ink, {}};
  CHECK_THAT(fault(figure), Catch::Contains("is cut"));
}

TEST_CASE("marks stand where their numbers say") {
  const Figure figure = intervalFigure(interval(0.25, 0.75), 416);  // the scale runs from 8 to 408
  bool band = false, dot = false;
  for (const Mark& mark : figure.marks) {
    if (const auto* r = std::get_if<Rect>(&mark.shape)) {
      band = true;
      CHECK_THAT(r->x, Catch::WithinAbs(108, 1e-9));
      CHECK_THAT(r->width, Catch::WithinAbs(200, 1e-9));
      CHECK(mark.readOut == "from none to about half");
    }
    if (const auto* d = std::get_if<Disc>(&mark.shape)) {
      dot = true;
      CHECK_THAT(d->x, Catch::WithinAbs(208, 1e-9));
    }
  }
  CHECK(band);
  CHECK(dot);

  const Figure bars = sharesFigure(shares(), 500);
  std::vector<double> filled;
  for (const Mark& mark : bars.marks)
    if (const auto* r = std::get_if<Rect>(&mark.shape); r && mark.role == Role::accent) filled.push_back(r->width);
  REQUIRE(filled.size() == 4);
  CHECK_THAT(filled[0], Catch::WithinAbs(0, 1e-9));
  CHECK_THAT(filled[1], Catch::WithinAbs(2, 1e-9));
  CHECK_THAT(filled[2], Catch::WithinAbs(215, 1e-9));
  CHECK_THAT(filled[3], Catch::WithinAbs(500, 1e-9));
}

TEST_CASE("impossible figures are refused by name") {
  CHECK_THROWS_WITH(intervalFigure(interval(0.5, 0.2), 400), Catch::StartsWith("low"));
  CHECK_THROWS_WITH(intervalFigure(interval(0, 1.01), 400), Catch::StartsWith("high"));
  CHECK_THROWS_WITH(intervalFigure(interval(std::nan(""), 1), 400), Catch::StartsWith("low"));
  CHECK_THROWS_WITH(intervalFigure(interval(0, 1), 20), Catch::StartsWith("width"));
  CHECK_THROWS_WITH(intervalFigure(interval(0, 1), std::numeric_limits<double>::infinity()), Catch::StartsWith("width"));
  SharesPicture p = shares();
  p.bars[0].share = -0.1;
  CHECK_THROWS_WITH(sharesFigure(p, 400), Catch::StartsWith("share"));
}

TEST_CASE("lines break between words, and inside a word only when it must be") {
  const Measure tenEach = [](std::string_view text, double) { return 10.0 * static_cast<double>(text.size()); };
  CHECK(wrapped("one two three", 80, tenEach) == std::vector<std::string>{"one two", "three"});
  CHECK(wrapped("abcdefgh ij", 40, tenEach) == std::vector<std::string>{"abcd", "efgh", "ij"});
  CHECK(wrapped("", 40, tenEach).empty());
  for (const std::string& line : wrapped("\xC3\xA9\xC3\xA9\xC3\xA9", 30, tenEach)) CHECK(line.size() % 2 == 0);  // no character is torn
}
