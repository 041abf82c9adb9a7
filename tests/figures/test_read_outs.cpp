#include "figures/frame.h"
#include "figures/invented.h"
#include "figures/read_outs.h"

#include <catch2/catch.hpp>

#include <set>

using namespace oddglass::figures;
using namespace oddglass::tests;

namespace {

Figure drawn() {
  Figure figure{200, 100, "t", "s", {}, {}};
  figure.marks = {{Rect{0, 50, 100, 10}, Role::soft, "low"},        {Disc{20, 20, 5}, Role::accent, "high left"},
                  {Disc{120, 20, 5}, Role::accent, "high right"},   {Disc{50, 55, 5}, Role::accent, "dot"},
                  {Disc{60, 55, 5}, Role::accent, "dot"},           {Text{0, 90, 14, Anchor::start, "words"}, Role::ink, {}},
                  {Ellipse{150, 70, 30, 10, 90}, Role::muted, "around"}};
  return figure;
}

}  // namespace

TEST_CASE("what a figure tells goes from top to bottom, each sentence once") {
  std::vector<std::string> sentences;
  for (const ReadOut& each : readOuts(drawn())) sentences.push_back(each.sentence);
  CHECK(sentences == std::vector<std::string>{"high left", "high right", "around", "low", "dot"});
  const Area dots = readOuts(drawn())[4].area;
  CHECK(dots.left == 45);
  CHECK(dots.top == 50);
  CHECK(dots.right == 65);
  CHECK(dots.bottom == 60);
  CHECK(readOuts({}).empty());
}

TEST_CASE("pointer and finger meet the uppermost mark") {
  const Figure figure = drawn();
  CHECK(readOutAt(figure, 50, 55, 0) == "dot");
  CHECK(readOutAt(figure, 80, 55, 0) == "low");
  CHECK(readOutAt(figure, 28, 20, 0) == "");
  CHECK(readOutAt(figure, 28, 20, 4) == "high left");
  CHECK(readOutAt(figure, 5, 88, 4) == "");  // words that say nothing more
}

TEST_CASE("an ellipse is met inside, as it is turned") {
  const Figure figure = drawn();
  CHECK(readOutAt(figure, 150, 95, 0) == "around");
  CHECK(readOutAt(figure, 175, 70, 0) == "");
}

TEST_CASE("every sentence of every figure can be reached by keys") {
  Invented invented(11);
  for (const Figure& figure : {gapFigure(invented.gaps(9), 640), meanFigure(invented.means(9), 300), sidesFigure(invented.sides(9), 640), stripFigure(invented.strips(9), 300),
                               rankFigure(invented.ranks(9), 640), mentionFigure(invented.mentions(9), 640), mapFigure(invented.map(9), 640)}) {
    std::set<std::string> said, reached;
    for (const Mark& mark : figure.marks)
      if (!mark.readOut.empty()) said.insert(mark.readOut);
    for (const ReadOut& each : readOuts(figure)) reached.insert(each.sentence);
    CHECK_FALSE(said.empty());
    CHECK(said == reached);
    CHECK(readOuts(figure).size() == said.size());
  }
}
