#include "words/denials.h"
#include "words/plan.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::words;
using planning::Setup;

namespace {

Setup setupOf(int panel, int rounds, Sought sought = Sought::difference) {
  Setup setup;
  setup.panel = panel;
  setup.rounds = rounds;
  setup.sought = sought;
  if (sought != Sought::difference) setup.limitPm = 300;
  setup.lots = {{500, 500, 6}, {1200, 750, 6}};
  return setup;
}

std::string joined(const std::vector<std::string>& lines) {
  std::string all;
  for (const std::string& line : lines) all += line + '\n';
  return all;
}

}  // namespace

TEST_CASE("the headline says what would be missed, or found, in words people use") {
  const Voice voice;
  // Chances to notice what half can taste in a triangle at 5 %: 6 people 0.35, 10 people 0.56, 24 people 0.93 (exact binomial).
  CHECK(outlookHeadline(voice, planning::outlookFor(setupOf(6, 1)), Sought::difference) ==
        "Six people once round would miss what half can taste about two times in three.");
  CHECK(outlookHeadline(voice, planning::outlookFor(setupOf(10, 1)), Sought::difference) ==
        "Ten people once round would find what half can taste more than half the time.");
  CHECK(outlookHeadline(voice, planning::outlookFor(setupOf(24, 1)), Sought::difference) ==
        "24 people once round would find what half can taste more than 9 times in 10.");
  // Five people three times round: 0.77 with people as the unit at gamma 0.3 (simulated and exact for this plan).
  CHECK(outlookHeadline(voice, planning::outlookFor(setupOf(5, 3)), Sought::difference) ==
        "Five people three times round would find what half can taste about 3 times in 4.");
  // Two triangles cannot reach 5 %: 1/9.
  CHECK(outlookHeadline(voice, planning::outlookFor(setupOf(2, 1)), Sought::difference) == "Two people once round can show nothing, whatever is answered.");
  CHECK_THAT(outlookHeadline(voice, planning::outlookFor(setupOf(0, 1)), Sought::difference), Catch::StartsWith("Nobody counts yet."));
}

TEST_CASE("no headline of a plan, no line of it, claims too much or is left unfilled") {
  const Voice voice;
  for (int panel = 0; panel <= 26; ++panel) {
    for (const int rounds : {1, 2, 3, 4}) {
      if (panel * rounds > 40) continue;
      for (const Sought sought : {Sought::difference, Sought::alike, Sought::both}) {
        Setup setup = setupOf(panel, rounds, sought);
        setup.makers = panel % 2;
        const auto outlook = planning::outlookFor(setup);
        std::vector<std::string> lines = outlookLines(voice, outlook, sought);
        lines.push_back(outlookHeadline(voice, outlook, sought));
        lines.push_back(outlookMethod(voice, outlook, setup.gammaPm));
        lines.push_back(panelLine(voice, setup, true));
        for (const auto rule : outlook.tooSmall) lines.push_back(tooSmallLine(voice, outlook, rule));
        for (const auto& way : outlook.waysOut) lines.push_back(wayOutLine(voice, way, outlook, sought));
        const auto picture = outlookPicture(voice, outlook);
        lines.push_back(picture.sentence);
        for (const auto& row : picture.rows) CHECK(row.size() == picture.headers.size());
        for (const std::string& line : lines) {
          INFO(panel << " people, " << rounds << " rounds: " << line);
          CHECK(forbiddenWordIn(line).empty());
          CHECK(line.find_first_of("{}%") == std::string::npos);
          CHECK(line.find(" 1 people") == std::string::npos);
          CHECK(line.find("never") == std::string::npos);
        }
      }
    }
  }
}

TEST_CASE("the check for forbidden words finds words, not parts of words") {
  CHECK(forbiddenWordIn("They taste the SAME.") == "same");
  CHECK(forbiddenWordIn("as good as the bought one") == "as good as");
  CHECK(forbiddenWordIn("“ready”") == "ready");
  CHECK(forbiddenWordIn("already improved, sameness unequalled").empty());
  for (const char* sentence : denyingSentences()) CHECK_FALSE(forbiddenWordIn(sentence).empty());
}

TEST_CASE("a small plan is told so before anything is poured") {
  const Voice voice;
  const auto two = planning::outlookFor(setupOf(2, 1));
  REQUIRE_FALSE(two.tooSmall.empty());
  CHECK_THAT(tooSmallLine(voice, two, planning::TooSmall::practice), Catch::StartsWith("Even all right would show nothing."));
  CHECK(tooSmallLine(voice, two, planning::TooSmall::fewFriends) == "With 2 people you will guess who wrote what. Signed sheets are more honest.");
  const auto six = planning::outlookFor(setupOf(6, 1));
  CHECK(tooSmallLine(voice, six, planning::TooSmall::halfMissed) == "What half can taste would be missed about two times in three. You may go on; this stays in the report.");
}

TEST_CASE("alone the sentences say you") {
  const Voice voice;
  Setup setup = setupOf(0, 8);
  setup.makers = 1;
  const auto outlook = planning::outlookFor(setup);
  REQUIRE(outlook.claim == Claim::me);
  CHECK_THAT(outlookHeadline(voice, outlook, Sought::difference), Catch::StartsWith("You alone, eight times round, would ") && Catch::Contains("what you can taste half the time"));
  CHECK_THAT(joined(outlookLines(voice, outlook, Sought::difference)), !Catch::Contains("people"));
  CHECK_THAT(panelLine(voice, setup, false), Catch::Contains("alone"));
}

TEST_CASE("what it takes: cups, bottles, minutes, grams, one and many") {
  const Voice voice;
  Setup setup = setupOf(5, 1);
  setup.makers = 1;
  setup.cupMl = 15;
  setup.lots[1].freeBottles = 0;
  const auto amounts = planning::amountsOf(setup);
  const std::string lines = joined(amountLines(voice, setup, amounts, {"Heather mead", "Bought mead"}));
  CHECK_THAT(lines, Catch::Contains("3 cups a person, 15 mL in each: 45 mL in all."));
  CHECK_THAT(lines, Catch::Contains("Heather mead: up to 135 mL, 1 bottle."));   // nine cups of each lot in a block of six: the six orders of ISO 4120
  CHECK_THAT(lines, Catch::Contains("Only 0 are free."));
  // 30 mL at 12 % and 15 mL at 5 %: (30 x 0.12 + 15 x 0.05) x 0.789 = 3.43 g
  CHECK_THAT(lines, Catch::Contains("Up to 3.5 g of alcohol a person"));
  CHECK(panelLine(voice, setup, true) == "6 people taste, 1 of them had a hand in it: 5 count. One more pours and does not taste.");
  setup.lots[0].abvBp.reset();
  CHECK_THAT(joined(amountLines(voice, setup, planning::amountsOf(setup), {"a", "b"})), Catch::Contains("No strength is known"));
}

