#include "figures/ages.h"
#include "figures/frame.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace oddglass::figures;
using namespace oddglass::tests;

namespace {

AgeDot agedDot(double age, double value, double half) { return {age, std::to_string(static_cast<int>(age)) + " months, 6 people", value, Span{value - half, value + half}, "at " + std::to_string(static_cast<int>(age))}; }

AgePicture aged(std::vector<AgeDot> dots) {
  AgePicture picture;
  picture.title = "Cardboard, batch minus its cold twin";
  picture.scale = {-50, 50, "less than the twin", "more than the twin", {{0, "0"}}};
  picture.lastAge = 12;
  picture.dots = std::move(dots);
  picture.sentence = "In short.";
  picture.table = {{"age", "difference"}, {{"0", "1"}}};
  return picture;
}

std::string refusedBy(const AgePicture& picture) {
  try {
    ageFigure(picture, 640);
  } catch (const std::invalid_argument& error) {
    return error.what();
  }
  return {};
}

}  // namespace

TEST_CASE("dots stand at their ages and values, upwards") {
  const Figure figure = ageFigure(aged({agedDot(0, -25, 10), agedDot(6, 0, 10), agedDot(12, 25, 10)}), 640);
  const auto dots = all<Disc>(figure);
  REQUIRE(dots.size() == 3);
  CHECK_THAT(dots[1].x - dots[0].x, Catch::WithinAbs(dots[2].x - dots[1].x, 1e-9));
  CHECK_THAT(dots[0].y - dots[1].y, Catch::WithinAbs(dots[1].y - dots[2].y, 1e-9));
  CHECK(dots[0].y > dots[2].y);
  const auto whiskers = saying<Line>(figure, "at 6");
  REQUIRE(whiskers.size() == 3);   // the interval and its two caps
  CHECK_THAT(whiskers[0].y2 - whiskers[0].y1, Catch::WithinAbs(2 * 10 * (dots[0].y - dots[1].y) / 25, 1e-9));
}

TEST_CASE("an interval that runs off the scale ends there, without a cap") {
  AgePicture picture = aged({agedDot(0, 40, 30), agedDot(6, 0, 5)});
  const Figure figure = ageFigure(picture, 640);
  CHECK(saying<Line>(figure, "at 0").size() == 2);
  CHECK(saying<Line>(figure, "at 6").size() == 3);
}

TEST_CASE("a fitted line needs three dots and goes from the first age to the last") {
  AgePicture picture = aged({agedDot(2, -10, 5), agedDot(6, 0, 5), agedDot(10, 10, 5)});
  picture.line = std::pair(-10.0, 10.0);
  const Figure figure = ageFigure(picture, 640);
  const auto line = saying<Line>(figure, "In short.");
  const auto dots = all<Disc>(figure);
  REQUIRE(line.size() == 1);
  CHECK_THAT(line[0].x1, Catch::WithinAbs(dots[0].x, 1e-9));
  CHECK_THAT(line[0].y1, Catch::WithinAbs(dots[0].y, 1e-9));
  CHECK_THAT(line[0].x2, Catch::WithinAbs(dots[2].x, 1e-9));
  CHECK_THAT(line[0].y2, Catch::WithinAbs(dots[2].y, 1e-9));
  picture.dots.pop_back();
  CHECK(refusedBy(picture) == "line: from three dots on");
}

TEST_CASE("what cannot be drawn is refused by name") {
  const auto with = [](auto change) {
    AgePicture picture = aged({agedDot(0, 1, 1)});
    change(picture);
    return refusedBy(picture);
  };
  CHECK(with([](AgePicture&) {}).empty());
  CHECK(with([](AgePicture& p) { p.lastAge = 0; }).starts_with("lastAge"));
  CHECK(with([](AgePicture& p) { p.dots[0].age = 13; }).starts_with("age"));
  CHECK(with([](AgePicture& p) { p.dots[0].age = -1; }).starts_with("age"));
  CHECK(with([](AgePicture& p) { p.dots[0].value = 51; }).starts_with("value"));
  CHECK(with([](AgePicture& p) { p.dots[0].label.clear(); }).starts_with("label"));
  CHECK(with([](AgePicture& p) { p.dots[0].value = std::numeric_limits<double>::quiet_NaN(); }).starts_with("value"));
  CHECK(with([](AgePicture& p) { p.notes.push_back({3, "", ""}); }).starts_with("letter"));
}
