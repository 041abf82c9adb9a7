#include "figures/frame.h"
#include "figures/sides.h"

#include <catch2/catch.hpp>

using namespace oddglass::figures;
using namespace oddglass::tests;

namespace {

SidesRow sidesRow(const std::string& label, int little, int right, int much) {
  return {label, {little, label + " little"}, {right, label + " right"}, {much, label + " much"}, "of 7"};
}

SidesPicture someSides(std::vector<SidesRow> rows) {
  return {"Too little or too much", "too little", "about right", "too much", std::move(rows), "In short.", {{"word", "little"}, {{"sweet", "5"}}}};
}

Rect bar(const Figure& figure, const std::string& readOut) {
  const auto bars = saying<Rect>(figure, readOut);
  REQUIRE(bars.size() == 1);
  return bars[0];
}

std::string number(const Figure& figure, const std::string& readOut) {
  const auto texts = saying<Text>(figure, readOut);
  REQUIRE(texts.size() == 1);
  return texts[0].text;
}

}  // namespace

TEST_CASE("one answer is as long to either side and in every row") {
  for (const double width : {300.0, 860.0}) {
    const Figure figure = sidesFigure(someSides({sidesRow("a", 4, 2, 1), sidesRow("b", 0, 0, 7), sidesRow("c", 2, 5, 0)}), width);
    const double one = bar(figure, "a much").width;
    CHECK(one > 0);
    CHECK_THAT(bar(figure, "a little").width, Catch::WithinAbs(4 * one, 1e-9));
    CHECK_THAT(bar(figure, "b much").width, Catch::WithinAbs(7 * one, 1e-9));
    CHECK_THAT(bar(figure, "b little").width, Catch::WithinAbs(0, 1e-9));
    CHECK_THAT(bar(figure, "c little").width, Catch::WithinAbs(2 * one, 1e-9));
    const Rect left = bar(figure, "a little"), right = bar(figure, "a much");
    const double middle = saying<Text>(figure, "a right")[0].x;
    CHECK_THAT(middle - (left.x + left.width), Catch::WithinAbs(right.x - middle, 1e-9));
    CHECK(left.x + left.width < middle);
  }
}

TEST_CASE("the counts are written beside their bars, in people") {
  const Figure figure = sidesFigure(someSides({sidesRow("a", 4, 2, 1)}), 300);
  CHECK(number(figure, "a little") == "4");
  CHECK(number(figure, "a right") == "2");
  CHECK(number(figure, "a much") == "1");
  CHECK(written(figure).find('%') == std::string::npos);
  for (const std::string word : {"too little", "about right", "too much", "of 7"}) CHECK_THAT(written(figure), Catch::Contains(word));
}

TEST_CASE("sides turned round give the mirror image") {
  const Figure one = sidesFigure(someSides({sidesRow("a", 4, 2, 1)}), 300), other = sidesFigure(someSides({sidesRow("a", 1, 2, 4)}), 300);
  const Rect little = bar(one, "a little"), much = bar(other, "a much");
  CHECK_THAT(little.x + little.width / 2, Catch::WithinAbs(300 - (much.x + much.width / 2), 1e-9));
  CHECK_THAT(little.width, Catch::WithinAbs(much.width, 1e-9));
}

TEST_CASE("sides that cannot be are refused by name") {
  CHECK_THROWS_WITH(sidesFigure(someSides({sidesRow("a", -1, 2, 1)}), 300), Catch::StartsWith("times"));
  CHECK_THROWS_WITH(sidesFigure(someSides({sidesRow("", 1, 2, 1)}), 300), Catch::StartsWith("label"));
  SidesPicture p = someSides({sidesRow("a", 1, 2, 1)});
  p.rows[0].count.clear();
  CHECK_THROWS_WITH(sidesFigure(p, 300), Catch::StartsWith("count"));
  p = someSides({});
  p.much.clear();
  CHECK_THROWS_WITH(sidesFigure(p, 300), Catch::StartsWith("much"));
}

TEST_CASE("nobody answered: numbers, and bars of no length") {
  const Figure figure = sidesFigure(someSides({sidesRow("a", 0, 0, 0)}), 300);
  CHECK(number(figure, "a right") == "0");
  CHECK(bar(figure, "a little").width == 0);
}
