#include "figures/frame.h"
#include "figures/invented.h"
#include "figures/svg.h"
#include "figures/well_formed.h"

#include <catch2/catch.hpp>

using namespace oddglass::figures;
using namespace oddglass::tests;

namespace {

/// What is wrong with a figure that was laid out from `picture`.
std::string wrong(const Figure& figure, const std::string& title, const Table& table, double width, MayCross mayCross) {
  if (const std::string found = fault(figure, mayCross); !found.empty()) return found;
  if (figure.width != width) return "another width";
  if (figure.title != title) return "another title";
  if (figure.table.headers != table.headers || figure.table.rows != table.rows) return "another table";
  const std::string text = svg(figure);
  if (text.find("<script") != std::string::npos) return "a script in the SVG";
  return whatIsWrong(text);
}

template <typename Picture, typename LayOut>
void checkAll(Picture (Invented::*invent)(int), LayOut layOut, MayCross mayCross, int most) {
  for (unsigned seed = 1; seed <= 40; ++seed) {
    Invented invented(seed);
    const Picture picture = (invented.*invent)(seed == 1 ? 1 : seed == 2 ? most : invented.whole(0, 9));
    for (const double width : {300.0, 417.5, 560.0, 640.0, 860.0}) {
      INFO("seed " << seed << " width " << width);
      CHECK(wrong(layOut(picture, width, roomFor), picture.title, picture.table, width, mayCross) == "");
    }
  }
}

}  // namespace

TEST_CASE("gaps of any kind stay inside and never overlap") { checkAll(&Invented::gaps, gapFigure, MayCross::nothing, 60); }
TEST_CASE("means of any kind stay inside and never overlap") { checkAll(&Invented::means, meanFigure, MayCross::nothing, 60); }
TEST_CASE("sides of any kind stay inside and never overlap") { checkAll(&Invented::sides, sidesFigure, MayCross::nothing, 60); }
TEST_CASE("answers of any kind stay inside and never overlap") { checkAll(&Invented::strips, stripFigure, MayCross::nothing, 60); }
TEST_CASE("ranks of any kind stay inside and never overlap") { checkAll(&Invented::ranks, rankFigure, MayCross::nothing, 60); }
TEST_CASE("mentions of any kind stay inside and never overlap") { checkAll(&Invented::mentions, mentionFigure, MayCross::nothing, 60); }
TEST_CASE("maps of any kind stay inside and never overlap") { checkAll(&Invented::map, mapFigure, MayCross::lines, 40); }
TEST_CASE("ages of any kind stay inside and never overlap") { checkAll(&Invented::ages, ageFigure, MayCross::nothing, 24); }

TEST_CASE("the check for lines through words can fail") {
  Invented invented(7);
  Figure figure = gapFigure(invented.gaps(4), 640);
  figure.marks.push_back({Text{0, 30, 14, Anchor::start, "aa"}, Role::ink, {}});
  figure.marks.push_back({Line{0, 25, 10, 25, 1}, Role::ink, {}});
  CHECK(fault(figure, MayCross::nothing) != "");
}
