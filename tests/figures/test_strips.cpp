#include "figures/frame.h"
#include "figures/stack.h"
#include "figures/strips.h"

#include <catch2/catch.hpp>

#include <map>

using namespace oddglass::figures;
using namespace oddglass::tests;

namespace {

StripPicture answers(std::vector<StripRow> rows) {
  return {"Every answer", {0, 100, "not at all", "extremely", {}}, std::move(rows), "In short.", {{"answer", "people"}, {{"50", "2"}}}};
}

RankPicture ranks(std::vector<std::vector<int>> times) {
  RankPicture made{"Ranked", "liked most", "liked least", {}, "In short.", {{"sample", "ranks"}, {{"a", "1 2"}}}};
  for (auto& each : times) {
    RankRow row;
    row.label = "sample " + std::to_string(made.rows.size());
    for (std::size_t rank = 0; rank < each.size(); ++rank) row.readOuts.push_back(row.label + " rank " + std::to_string(rank + 1));
    row.times = std::move(each);
    row.rankSum = "rank sum 12";
    row.count = "7 tasters";
    made.rows.push_back(std::move(row));
  }
  return made;
}

bool touch(const Disc& a, const Disc& b) { return std::hypot(a.x - b.x, a.y - b.y) < a.radius + b.radius - 1e-9; }

std::string touching(const Figure& figure) {
  const auto dots = all<Disc>(figure);
  for (std::size_t i = 0; i < dots.size(); ++i)
    for (std::size_t j = i + 1; j < dots.size(); ++j)
      if (touch(dots[i], dots[j])) return std::to_string(i) + " touches " + std::to_string(j);
  return "";
}

}  // namespace

TEST_CASE("every answer is a dot at its value, and none lies over another") {
  const Figure figure = stripFigure(answers({{"a", {{100, 4, "all"}, {0, 3, "none"}, {50, 1, "half"}, {51, 2, "nearly half"}}, "", "10 tasters"}}), 860);
  CHECK(saying<Disc>(figure, "all").size() == 4);
  CHECK(saying<Disc>(figure, "none").size() == 3);
  CHECK(saying<Disc>(figure, "nearly half").size() == 2);
  REQUIRE(saying<Disc>(figure, "half").size() == 1);
  const double low = saying<Disc>(figure, "none")[0].x, high = saying<Disc>(figure, "all")[0].x;
  CHECK_THAT(saying<Disc>(figure, "half")[0].x, Catch::WithinAbs((low + high) / 2, 1e-9));
  for (const Disc& dot : saying<Disc>(figure, "nearly half")) CHECK_THAT(dot.x, Catch::WithinAbs(low + 0.51 * (high - low), 1e-9));
  CHECK(touching(figure) == "");
}

TEST_CASE("who answered does not show: the order of answers changes nothing") {
  const StripPicture p = answers({{"a", {{10, 1, "x"}, {70, 2, "y"}, {71, 1, "z"}, {30, 1, "w"}}, "", "5 tasters"}});
  StripPicture turned = p;
  std::reverse(turned.rows[0].heaps.begin(), turned.rows[0].heaps.end());
  const auto one = all<Disc>(stripFigure(p, 400)), other = all<Disc>(stripFigure(turned, 400));
  REQUIRE(one.size() == 5);
  REQUIRE(other.size() == 5);
  for (std::size_t i = 0; i < one.size(); ++i) {
    CHECK(one[i].x == other[i].x);
    CHECK(one[i].y == other[i].y);
  }
}

TEST_CASE("dots stack upwards from their line, without gaps and without jitter") {
  const auto dots = stacked({{100, 3}, {104, 1}, {110, 1}}, 10, 1);
  REQUIRE(dots.size() == 5);
  std::map<double, std::vector<int>> levels;
  for (const Stacked& dot : dots) levels[dot.x].push_back(dot.level);
  CHECK(levels[100] == std::vector<int>{0, 1, 2});
  CHECK(levels[104] == std::vector<int>{3});  // 4 points away from three others
  CHECK(levels[110] == std::vector<int>{0});
  CHECK(levelsOf(dots) == 4);
  CHECK(levelsOf({}) == 0);
}

TEST_CASE("a high heap goes across, centred on its value") {
  const auto dots = stacked({{50, 8}}, 10, 3);
  REQUIRE(dots.size() == 8);
  CHECK(levelsOf(dots) == 3);
  std::map<int, double> sum;
  std::map<int, int> times;
  for (const Stacked& dot : dots) sum[dot.level] += dot.x, ++times[dot.level];
  CHECK(times[0] == 3);
  CHECK(times[2] == 2);
  for (const auto& [level, x] : sum) CHECK_THAT(x / times[level], Catch::WithinAbs(50, 1e-9));
}

TEST_CASE("each rank has as many dots as it was given, over its own column") {
  for (const double width : {300.0, 860.0}) {
    const Figure figure = rankFigure(ranks({{4, 2, 1}, {3, 3, 1}, {0, 2, 5}}), width);
    CHECK(all<Disc>(figure).size() == 21);
    CHECK(saying<Disc>(figure, "sample 0 rank 1").size() == 4);
    CHECK(saying<Disc>(figure, "sample 2 rank 1").empty());
    CHECK(saying<Disc>(figure, "sample 2 rank 3").size() == 5);
    const double first = saying<Disc>(figure, "sample 0 rank 1")[0].x, second = saying<Disc>(figure, "sample 0 rank 2")[0].x, third = saying<Disc>(figure, "sample 0 rank 3")[0].x;
    CHECK_THAT(second - first, Catch::WithinAbs(third - second, 1e-9));
    CHECK(first < second);
    for (const Disc& dot : saying<Disc>(figure, "sample 1 rank 2")) CHECK_THAT(dot.x, Catch::WithinAbs(second, 1e-9));
    CHECK(touching(figure) == "");
    for (const std::string word : {"rank sum 12", "7 tasters", "liked most", "liked least"}) CHECK_THAT(written(figure), Catch::Contains(word));
  }
}

TEST_CASE("sixty people who agree are still sixty dots, and not too high") {
  const Figure figure = rankFigure(ranks({{60, 0, 0, 0}, {20, 20, 10, 10}}), 300);
  CHECK(all<Disc>(figure).size() == 120);
  CHECK(touching(figure) == "");
  CHECK(fault(figure, MayCross::nothing) == "");
  CHECK(figure.height < 320);
}

TEST_CASE("strips that cannot be are refused by name") {
  CHECK_THROWS_WITH(stripFigure(answers({{"a", {{101, 1, ""}}, "", "n"}}), 300), Catch::StartsWith("at"));
  CHECK_THROWS_WITH(stripFigure(answers({{"a", {{10, -1, ""}}, "", "n"}}), 300), Catch::StartsWith("times"));
  CHECK_THROWS_WITH(stripFigure(answers({{"a", {}, "", ""}}), 300), Catch::StartsWith("count"));
  CHECK_THROWS_WITH(rankFigure(ranks({{7}}), 300), Catch::StartsWith("times"));
  CHECK_THROWS_WITH(rankFigure(ranks({{7, 1}, {7, 1, 1}}), 300), Catch::StartsWith("times"));
  RankPicture p = ranks({{4, 3}});
  p.rows[0].readOuts.pop_back();
  CHECK_THROWS_WITH(rankFigure(p, 300), Catch::StartsWith("readOuts"));
  p = ranks({{4, 3}});
  p.rows[0].rankSum.clear();
  CHECK_THROWS_WITH(rankFigure(p, 300), Catch::StartsWith("rankSum"));
}
