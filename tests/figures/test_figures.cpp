#include "figures/interval.h"
#include "figures/layout.h"
#include "figures/shares.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>
#include <optional>
#include <string>
#include <vector>

using namespace oddglass::figures;

namespace {

struct Box {
  double left, top, right, bottom;
  std::string text;
};

/// Where the ink of a text may lie: ascenders up to the size above its baseline, descenders a quarter below.
Box boxOf(const Text& t) {
  const double wide = roomFor(t.text, t.size);
  const double left = t.anchor == Anchor::start ? t.x : t.anchor == Anchor::middle ? t.x - wide / 2 : t.x - wide;
  return {left, t.y - t.size, left + wide, t.y + t.size / 4, t.text};
}

std::optional<Box> boxOf(const Mark& mark) {
  if (const auto* t = std::get_if<Text>(&mark.shape)) return boxOf(*t);
  if (const auto* r = std::get_if<Rect>(&mark.shape)) return Box{r->x, r->y, r->x + r->width, r->y + r->height, "bar"};
  if (const auto* d = std::get_if<Disc>(&mark.shape)) return Box{d->x - d->radius, d->y - d->radius, d->x + d->radius, d->y + d->radius, "disc"};
  if (const auto* l = std::get_if<Line>(&mark.shape)) return Box{std::min(l->x1, l->x2), std::min(l->y1, l->y2), std::max(l->x1, l->x2), std::max(l->y1, l->y2), "line"};
  return std::nullopt;
}

/// Everything inside the box, no text over another text, a bar or a disc.
std::string fault(const Figure& figure) {
  constexpr double slack = 1e-9;
  std::vector<Box> texts, solids;
  for (const Mark& mark : figure.marks) {
    const auto box = boxOf(mark);
    if (!box) return "an unknown mark";
    if (box->left < -slack || box->top < -slack || box->right > figure.width + slack || box->bottom > figure.height + slack)
      return box->text + " is cut";
    if (std::holds_alternative<Text>(mark.shape)) texts.push_back(*box);
    else if (!std::holds_alternative<Line>(mark.shape)) solids.push_back(*box);
  }
  const auto overlap = [](const Box& a, const Box& b) {
    return a.left < b.right - slack && b.left < a.right - slack && a.top < b.bottom - slack && b.top < a.bottom - slack;
  };
  for (std::size_t i = 0; i < texts.size(); ++i) {
    for (std::size_t j = i + 1; j < texts.size(); ++j)
      if (overlap(texts[i], texts[j])) return texts[i].text + " lies over " + texts[j].text;
    for (const Box& solid : solids)
      if (overlap(texts[i], solid)) return texts[i].text + " lies over a " + solid.text;
  }
  for (const auto& row : figure.table.rows)
    if (row.size() != figure.table.headers.size()) return "a row of the table is short";
  return "";
}

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
