#include "figures/frame.h"
#include "figures/mentions.h"

#include <catch2/catch.hpp>

using namespace oddglass::figures;
using namespace oddglass::tests;

namespace {

Mention mention(const std::string& word, int times, int of) {
  return {times, of, std::to_string(times) + " of " + std::to_string(of), word + ", " + std::to_string(times)};
}

MentionPicture someMentions() {
  return {"Words", {"ours", "theirs"},
          {{"bready", {mention("bready ours", 1, 7), mention("bready theirs", 2, 7)}},
           {"hoppy", {mention("hoppy ours", 6, 7), mention("hoppy theirs", 3, 6)}},
           {"sour", {mention("sour ours", 2, 7), mention("sour theirs", 1, 7)}}},
          "In short.", {{"word", "ours", "theirs"}, {{"hoppy", "6 of 7", "3 of 6"}}}};
}

double heightOf(const Figure& figure, const std::string& word) {
  for (const Text& text : all<Text>(figure))
    if (text.text == word) return text.y;
  return -1;
}

/// How long the bar is, as a share of the soft bar behind it.
double share(const Figure& figure, const std::string& readOut) {
  const auto bars = saying<Rect>(figure, readOut);
  REQUIRE(bars.size() == 2);
  CHECK(bars[0].x == bars[1].x);
  return bars[1].width / bars[0].width;
}

}  // namespace

TEST_CASE("the words said most come first, equal ones as they came") {
  for (const double width : {300.0, 860.0}) {
    const Figure figure = mentionFigure(someMentions(), width);
    CHECK(heightOf(figure, "hoppy") > 0);
    CHECK(heightOf(figure, "hoppy") < heightOf(figure, "bready"));
    CHECK(heightOf(figure, "bready") < heightOf(figure, "sour"));
  }
}

TEST_CASE("bars are as long as the share of people, side by side under the names of their samples") {
  const Figure figure = mentionFigure(someMentions(), 860);
  CHECK_THAT(share(figure, "hoppy ours, 6"), Catch::WithinAbs(6.0 / 7, 1e-12));
  CHECK_THAT(share(figure, "hoppy theirs, 3"), Catch::WithinAbs(0.5, 1e-12));
  const Rect ours = saying<Rect>(figure, "sour ours, 2")[0], theirs = saying<Rect>(figure, "sour theirs, 1")[0];
  CHECK(ours.y == theirs.y);
  CHECK(ours.width == theirs.width);
  CHECK(ours.x + ours.width < theirs.x);
  for (const Text& text : all<Text>(figure)) {
    if (text.text == "ours") CHECK(text.x == ours.x);
    if (text.text == "theirs") CHECK(text.x == theirs.x);
  }
  CHECK_THAT(written(figure), Catch::Contains("6 of 7") && Catch::Contains("3 of 6") && Catch::Contains("theirs"));
}

TEST_CASE("nobody asked: words, and a bar of no length") {
  MentionPicture p = someMentions();
  p.rows[0].mentions[0] = mention("bready ours", 0, 0);
  const Figure figure = mentionFigure(p, 400);
  CHECK(share(figure, "bready ours, 0") == 0);
  CHECK_THAT(written(figure), Catch::Contains("0 of 0"));
}

TEST_CASE("mentions that cannot be are refused by name") {
  const auto refused = [](const std::string& name, auto change) {
    MentionPicture p = someMentions();
    change(p);
    CHECK_THROWS_WITH(mentionFigure(p, 400), Catch::StartsWith(name));
  };
  refused("samples", [](MentionPicture& p) { p.samples.clear(); });
  refused("samples", [](MentionPicture& p) { p.samples.resize(7, "x"); });
  refused("samples", [](MentionPicture& p) { p.samples[0].clear(); });
  refused("mentions", [](MentionPicture& p) { p.rows[0].mentions.pop_back(); });
  refused("times", [](MentionPicture& p) { p.rows[0].mentions[0].times = 8; });
  refused("times", [](MentionPicture& p) { p.rows[0].mentions[0].times = -1; });
  refused("value", [](MentionPicture& p) { p.rows[0].mentions[0].value.clear(); });
  refused("word", [](MentionPicture& p) { p.rows[0].word.clear(); });
}
