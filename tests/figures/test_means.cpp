#include "figures/frame.h"
#include "figures/means.h"

#include <catch2/catch.hpp>

using namespace oddglass::figures;
using namespace oddglass::tests;

namespace {

MeanRow meanRow(const std::string& label, double mean, double half) {
  MeanRow made;
  made.label = label;
  made.mean = mean;
  made.interval = Span{mean - half, mean + half};
  made.word = "the mean";
  made.count = "7 tasters";
  made.readOut = label + " in one sentence.";
  return made;
}

MeanPicture someMeans(std::vector<MeanRow> rows) {
  return {"How much they liked it", {1, 9, "dislike extremely", "like extremely", {{5, "neither"}}}, std::move(rows), "In short.", {{"sample", "mean"}, {{"a", "4"}}}};
}

const std::string longLabel = "a long label that leaves no room for marks beside it at this width of the figure";

}  // namespace

TEST_CASE("means stand at their values, in the order given, the ends of the scale at its ends") {
  const Figure figure = meanFigure(someMeans({meanRow(longLabel, 9, 0), meanRow("b", 1, 0), meanRow("c", 5, 2)}), 300);  // eight steps from 8 to 292
  const auto dots = all<Disc>(figure);
  REQUIRE(dots.size() == 3);
  CHECK_THAT(dots[0].x, Catch::WithinAbs(292, 1e-9));
  CHECK_THAT(dots[1].x, Catch::WithinAbs(8, 1e-9));
  CHECK_THAT(dots[2].x, Catch::WithinAbs(150, 1e-9));
  CHECK(dots[0].y < dots[1].y);
  CHECK(dots[1].y < dots[2].y);
  const auto lines = saying<Line>(figure, "c in one sentence.");
  REQUIRE(lines.size() == 4);  // two halves, two uprights
  CHECK_THAT(lines[0].x1, Catch::WithinAbs(150 - 2 * 35.5, 1e-9));
  CHECK_THAT(lines[1].x2, Catch::WithinAbs(150 + 2 * 35.5, 1e-9));
}

TEST_CASE("beside the words, the distance between two means is that of their values") {
  const Figure figure = meanFigure(someMeans({meanRow("a", 2, 1), meanRow("b", 3, 1), meanRow("c", 7, 1)}), 860);
  const auto dots = all<Disc>(figure);
  REQUIRE(dots.size() == 3);
  CHECK_THAT(dots[2].x - dots[1].x, Catch::WithinAbs(4 * (dots[1].x - dots[0].x), 1e-9));
  CHECK(dots[0].x < dots[1].x);
}

TEST_CASE("a drink poured twice is two joined rings in a row of its own") {
  MeanPicture p = someMeans({meanRow("a", 6, 1), meanRow("b", 4, 1)});
  p.rows[0].twice = Twice{7.5, 5, "the same drink twice", "moved by 2.5", "7 tasters", "The same drink moved by 2.5 points."};
  const Figure figure = meanFigure(p, 860);
  const auto rings = saying<Ring>(figure, p.rows[0].twice->readOut);
  const auto joins = saying<Line>(figure, p.rows[0].twice->readOut);
  const auto dots = all<Disc>(figure);
  REQUIRE(rings.size() == 2);
  REQUIRE(joins.size() == 1);
  REQUIRE(dots.size() == 2);
  CHECK_THAT(rings[1].x - rings[0].x, Catch::WithinAbs(2.5 / 2 * (dots[0].x - dots[1].x), 1e-9));
  CHECK(rings[0].y == rings[1].y);
  CHECK(joins[0].y1 == rings[0].y);
  CHECK(rings[0].y > dots[0].y);
  CHECK(rings[0].y < dots[1].y);
  CHECK_THAT(joins[0].x1, Catch::WithinAbs(rings[0].x + rings[0].radius, 1e-9));
  CHECK_THAT(joins[0].x2, Catch::WithinAbs(rings[1].x - rings[1].radius, 1e-9));
  for (const std::string word : {"the same drink twice", "moved by 2.5"}) CHECK_THAT(written(figure), Catch::Contains(word));

  p.rows[0].twice->second = 7.5;  // it did not move
  CHECK(saying<Line>(meanFigure(p, 860), p.rows[0].twice->readOut).empty());
  CHECK(saying<Ring>(meanFigure(p, 860), p.rows[0].twice->readOut).size() == 2);
}

TEST_CASE("a mean without an interval says why, and no mean is words alone") {
  MeanPicture p = someMeans({meanRow("a", 6, 1)});
  p.rows[0].interval.reset();
  CHECK_THROWS_WITH(meanFigure(p, 400), Catch::StartsWith("why"));
  p.rows[0].why = "Two tasters give no interval.";
  CHECK(saying<Disc>(meanFigure(p, 400), "a in one sentence. Two tasters give no interval.").size() == 1);
  p.rows[0].mean.reset();
  CHECK(all<Disc>(meanFigure(p, 400)).empty());
  CHECK_THAT(written(meanFigure(p, 400)), Catch::Contains("7 tasters"));
}

TEST_CASE("means that cannot be are refused by name") {
  const auto refused = [](const std::string& name, auto change) {
    MeanPicture p = someMeans({meanRow("a", 4, 1)});
    p.rows[0].twice = Twice{4, 5, "twice", "", "7", ""};
    change(p);
    CHECK_THROWS_WITH(meanFigure(p, 400), Catch::StartsWith(name));
  };
  refused("mean", [](MeanPicture& p) { p.rows[0].mean = 9.1; });
  refused("interval", [](MeanPicture& p) { p.rows[0].interval = Span{3, 2}; });
  refused("label", [](MeanPicture& p) { p.rows[0].label.clear(); });
  refused("count", [](MeanPicture& p) { p.rows[0].count.clear(); });
  refused("twice.first", [](MeanPicture& p) { p.rows[0].twice->first = 0; });
  refused("twice.label", [](MeanPicture& p) { p.rows[0].twice->label.clear(); });
  refused("twice.count", [](MeanPicture& p) { p.rows[0].twice->count.clear(); });
  refused("tick", [](MeanPicture& p) { p.scale.ticks[0].at = 10; });
  refused("highName", [](MeanPicture& p) { p.scale.highName.clear(); });
}
