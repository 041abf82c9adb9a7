#include "words/card.h"

#include "words/denials.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using namespace oddglass::words;

namespace {

insight::Card filled() {
  insight::Card card;
  card.sessions = 4;
  card.sheets = 3;
  card.samples = 6;
  card.isTooFew = false;
  card.level = 0.84;
  card.shrunkLevel = 0.5;
  card.spread = 1.4;
  card.shrunkSpread = 1.3;
  card.othersSpread = 1.2;
  card.agreement = 0.9;
  card.shrunkAgreement = 0.6;
  card.repeats = {2, 2, 1.1, {}};
  card.othersRepeatSd = 0.9;
  return card;
}

}  // namespace

TEST_CASE("a card is handed over, speaks to its person, and holds raw and shrunk") {
  const CardPage page = cardPage(Voice{}, "Ada", filled());
  CHECK(page.headline == "This is for Ada. Others look away.");
  CHECK(page.lead == "What 4 opened tastings say of how you taste. It is no mark, and there is no place in a row.");
  REQUIRE(page.scores.size() == 6);
  CHECK(page.scores[1].find("0.8 points higher") != std::string::npos);
  CHECK(page.scores[1].find("0.5 once it is allowed") != std::string::npos);
  CHECK(page.scores[3].find("correlation 0.90, 0.60 once") != std::string::npos);
  CHECK(page.scores[4].find("scattered by 1.1 points") != std::string::npos);
}

TEST_CASE("a card shames nobody, whatever it says") {
  insight::Card card = filled();
  for (const double level : {-2.0, 0.0, 2.0})
    for (const double agreement : {-0.9, 0.1, 0.3, 0.9}) {
      card.level = level;
      card.shrunkLevel = level / 2;
      card.agreement = card.shrunkAgreement = agreement;
      for (const std::string& line : cardPage(Voice{}, "Ada", card).all()) {
        INFO(line);
        CHECK(line.find_first_of("{}%!") == std::string::npos);
        for (const char* harsh : {"bad", "worst", "wrong answer", "fail", "poor", "rank", "best", "biased", "unreliable", "worse"}) CHECK(line.find(harsh) == std::string::npos);
      }
    }
}

TEST_CASE("too little known is said as such, and why") {
  insight::Card card;
  card.sessions = 2;
  CHECK(cardPage(Voice{}, "Ada", card).lead == "Too little known yet. It takes three opened tastings under your name or nickname; so far 2.");
  CHECK(cardPage(Voice{}, "Ada", card).scores.empty());
  card = filled();
  card.sheets = 1;
  card.repeats = {};
  const CardPage page = cardPage(Voice{}, "Ada", card);
  REQUIRE(page.scores.size() == 1);
  CHECK(page.scores[0] == "Scores: too little known. It takes three score sheets beside two others or more, so far 1.");
}

TEST_CASE("others may know that there is a card, and no more") {
  CHECK(cardExists(Voice{}, "Ada", false).find("asked for a card") != std::string::npos);
  CHECK(cardExists(Voice{}, "Ada", true).find("lets you see it") != std::string::npos);
  CHECK(noCard(Voice{}, "Ada").find("ask for one themselves") != std::string::npos);
}

TEST_CASE("steadiness is said with a range") {
  insight::Repeats repeats{4, 4, 1.5, insight::RepeatChange{2, 2, 2.8, 0.7, 0.25, 0.1, 0.6}};
  CHECK(repeatLines(Voice{}, repeats).at(1).find("You have become steadier: 2.8 points in the earlier tastings, 0.7 in the later ones, 0.1 to 0.6 times as much.") != std::string::npos);
  repeats.change->high = 1.6;
  CHECK(repeatLines(Voice{}, repeats).at(1).starts_with("No change shown"));
  CHECK(repeatLines(Voice{}, {}).empty());
}
