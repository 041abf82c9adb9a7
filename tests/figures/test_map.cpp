#include "figures/frame.h"
#include "figures/map.h"
#include "figures/places.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace oddglass::figures;
using namespace oddglass::tests;

namespace {

MapPicture aMap() {
  MapPicture made;
  made.title = "Where the drinks lie";
  made.xName = "component 1: half of what differs";
  made.yName = "component 2: a third";
  made.count = "7 tasters";
  made.points = {{"a", 1, 0.5, false, MapEllipse{0.8, 0.3, 35, "around a"}, "point a"},
                 {"b", -2, 0.1, true, std::nullopt, "point b"},
                 {"c", 0.4, -1.5, false, std::nullopt, "point c"}};
  made.table = {{"sample", "1", "2"}, {{"a", "1", "0.5"}}};
  return made;
}

struct At {
  double x, y;
};

At at(const Figure& figure, const std::string& readOut) {
  const auto discs = saying<Disc>(figure, readOut);
  const auto rings = saying<Ring>(figure, readOut);
  REQUIRE(discs.size() + rings.size() == 1);
  return discs.empty() ? At{rings[0].x, rings[0].y} : At{discs[0].x, discs[0].y};
}

}  // namespace

TEST_CASE("the map is as far one way as the other, the second component upwards") {
  for (const double width : {300.0, 860.0}) {
    const Figure figure = mapFigure(aMap(), width);
    const At a = at(figure, "point a"), b = at(figure, "point b"), c = at(figure, "point c");
    const double unit = (a.x - b.x) / 3;
    CHECK(unit > 0);
    CHECK_THAT(c.x - b.x, Catch::WithinAbs(2.4 * unit, 1e-9));
    CHECK_THAT(c.y - a.y, Catch::WithinAbs(2 * unit, 1e-9));
    CHECK_THAT(b.y - a.y, Catch::WithinAbs(0.4 * unit, 1e-9));
  }
}

TEST_CASE("the reference is an open ring, and each point has its name") {
  const Figure figure = mapFigure(aMap(), 860);
  CHECK(saying<Ring>(figure, "point b").size() == 1);
  CHECK(saying<Disc>(figure, "point a").size() == 1);
  CHECK_THAT(written(figure), Catch::Contains("7 tasters") && Catch::Contains("component 1: half of what differs") && Catch::Contains("component 2: a third"));
}

TEST_CASE("nothing goes through the middle of the map") {
  const Figure figure = mapFigure(aMap(), 860);
  const auto lines = all<Line>(figure);
  REQUIRE(lines.size() == 2);  // the two sides that carry the names of the components
  const At c = at(figure, "point c");
  CHECK(saying<Line>(figure, "component 1: half of what differs")[0].y1 > c.y);
  CHECK(saying<Line>(figure, "component 2: a third")[0].x1 < at(figure, "point b").x);
}

TEST_CASE("an ellipse lies around its point, turned from the first component to the second") {
  const Figure figure = mapFigure(aMap(), 600);
  const auto ellipses = saying<Ellipse>(figure, "around a");
  REQUIRE(ellipses.size() == 1);
  const Ellipse& e = ellipses[0];
  const At a = at(figure, "point a"), b = at(figure, "point b");
  const double unit = (a.x - b.x) / 3;
  CHECK_THAT(e.x, Catch::WithinAbs(a.x, 1e-9));
  CHECK_THAT(e.y, Catch::WithinAbs(a.y, 1e-9));
  CHECK_THAT(e.rx, Catch::WithinAbs(0.8 * unit, 1e-9));
  CHECK_THAT(e.ry, Catch::WithinAbs(0.3 * unit, 1e-9));
  CHECK_THAT(e.turn, Catch::WithinAbs(-35, 1e-12));  // the second component goes up, y goes down
}

TEST_CASE("points that crowd get numbers, and their names follow below") {
  MapPicture p = aMap();
  for (int i = 0; i < 12; ++i) p.points.push_back({std::string(60, 'W'), 0.01 * i, 0, false, std::nullopt, "crowd"});
  const Figure figure = mapFigure(p, 300);
  CHECK(fault(figure) == "");
  std::vector<std::string> numbers;
  for (const Text& text : all<Text>(figure))
    if (text.text.find_first_not_of("0123456789") == std::string::npos) numbers.push_back(text.text);
  CHECK(numbers.size() == 30);  // fifteen on the map, fifteen before the names
}

TEST_CASE("one point, equal points and no points are laid out") {
  MapPicture p = aMap();
  p.points.resize(1);
  p.points[0].ellipse.reset();
  CHECK(fault(mapFigure(p, 300)) == "");
  for (int i = 0; i < 5; ++i) p.points.push_back(p.points[0]);
  CHECK(fault(mapFigure(p, 300)) == "");
  p.points.clear();
  CHECK(fault(mapFigure(p, 300)) == "");
}

TEST_CASE("a free place touches nothing and stays inside") {
  const Area frame{0, 0, 100, 40};
  const auto right = freePlace(50, 20, 30, 10, 40, frame, {});
  REQUIRE(right);
  CHECK(right->area.left == 60);
  CHECK(right->isNear);
  const auto left = freePlace(50, 20, 30, 10, 40, frame, {{60, 0, 100, 40}});
  REQUIRE(left);
  CHECK(left->area.right == 40);
  CHECK(left->anchor == Anchor::end);
  CHECK_FALSE(freePlace(50, 20, 101, 10, 400, frame, {}));
  CHECK_FALSE(freePlace(50, 20, 30, 10, 400, frame, {{0, 0, 100, 40}}));
}

TEST_CASE("maps that cannot be are refused by name") {
  const auto refused = [](const std::string& name, auto change) {
    MapPicture p = aMap();
    change(p);
    CHECK_THROWS_WITH(mapFigure(p, 400), Catch::StartsWith(name));
  };
  refused("xName", [](MapPicture& p) { p.xName.clear(); });
  refused("yName", [](MapPicture& p) { p.yName.clear(); });
  refused("count", [](MapPicture& p) { p.count.clear(); });
  refused("label", [](MapPicture& p) { p.points[0].label.clear(); });
  refused("x", [](MapPicture& p) { p.points[0].x = std::numeric_limits<double>::infinity(); });
  refused("y", [](MapPicture& p) { p.points[0].y = std::nan(""); });
  refused("ellipse", [](MapPicture& p) { p.points[0].ellipse->rx = -1; });
  refused("turn", [](MapPicture& p) { p.points[0].ellipse->turn = std::nan(""); });
}
