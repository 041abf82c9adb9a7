#include "words/denials.h"
#include "words/plan.h"
#include "words/recommend.h"

#include "words/joined.h"

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


namespace {

const std::vector<Method> everyMethod{Method::triangle, Method::duoTrio, Method::tetrad, Method::twoOutOfFive, Method::pair, Method::threeAfc, Method::sameDifferent, Method::aNotA, Method::preference};

std::vector<std::string> allLines(const Voice& voice, const Setup& setup) {
  const auto outlook = planning::outlookFor(setup);
  std::vector<std::string> lines = outlookLines(voice, outlook, setup.sought);
  lines.push_back(outlookHeadline(voice, outlook, setup.sought));
  lines.push_back(outlookMethod(voice, outlook, setup.gammaPm));
  for (const auto rule : outlook.tooSmall) lines.push_back(tooSmallLine(voice, outlook, rule));
  for (const auto& way : outlook.waysOut) lines.push_back(wayOutLine(voice, way, outlook, setup.sought));
  for (const std::string& line : amountLines(voice, setup, planning::amountsOf(setup), {"one", "two", "three"})) lines.push_back(line);
  lines.push_back(outlookPicture(voice, outlook).sentence);
  return lines;
}

}  // namespace

TEST_CASE("every method speaks in whole sentences, and alone in the second person") {
  const Voice voice;
  for (const Method method : everyMethod)
    for (const int panel : {0, 2, 5, 6, 13, 24})
      for (const int rounds : {1, 4})
        for (const std::size_t lots : {2u, 3u}) {
          if (lots == 3 && method != Method::triangle && method != Method::tetrad && method != Method::duoTrio) continue;
          Setup setup = setupOf(panel, rounds);
          setup.method = method;
          setup.makers = panel == 0 ? 1 : 0;
          setup.evenings = rounds > 1 ? 2 : 1;
          setup.wave = 6;
          setup.lots.resize(lots, {500, 500, 0});
          setup.mayHaveNone = method == Method::preference;
          if (rounds > 1 && lots == 2 && hasGuessing(method) && panel == 6) setup.stopping = Stopping{};
          for (const std::string& line : allLines(voice, setup)) {
            INFO(static_cast<int>(method) << ", " << panel << " people, " << rounds << " rounds: " << line);
            CHECK_FALSE(line.empty());
            CHECK(forbiddenWordIn(line).empty());
            CHECK(line.find_first_of("{}%") == std::string::npos);
            CHECK(line.front() != ' ');
            if (panel == 0 && line.find("ways") == std::string::npos) CHECK(line.find("in 10 can taste") == std::string::npos);
          }
        }
}

TEST_CASE("a preference: five people cannot settle it, six only by 6 to 0") {
  const Voice voice;
  Setup setup = setupOf(5, 1);
  setup.method = Method::preference;
  const auto five = planning::outlookFor(setup);
  CHECK(tooSmallLine(voice, five, planning::TooSmall::practice) == "Five people cannot settle this, whatever they answer.");
  setup.panel = 6;
  setup.rounds = 3;
  const std::string six = joined(outlookLines(voice, planning::outlookFor(setup), Sought::difference));
  CHECK_THAT(six, Catch::Contains("Only 6 to 0 could show a preference.") && Catch::Contains("they are no more votes") && Catch::Contains("What 3 in 4 prefer would be found"));
  setup.panel = 12;  // 10 to 2: two-sided p 158/4096
  CHECK_THAT(joined(outlookLines(voice, planning::outlookFor(setup), Sought::difference)), Catch::Contains("It takes 10 to 2 at least"));
}

TEST_CASE("three comparisons say what each needs, a plan with looks how it ends") {
  const Voice voice;
  Setup setup = setupOf(6, 1);
  setup.lots.push_back({500, 500, 6});
  // 6 of 6 at a third of 5 in 100, 5 of 6 at the half and the whole: exact binomial (1/729, 13/729), Holm 1979.
  CHECK_THAT(joined(outlookLines(voice, planning::outlookFor(setup), Sought::difference)), Catch::Contains("The clearest of the three needs 6 of 6 right answers, then each of the others 5 of 6 right answers."));
  setup.lots.pop_back();
  setup.rounds = 4;
  setup.stopping = Stopping{};
  const std::string looks = joined(outlookLines(voice, planning::outlookFor(setup), Sought::difference));
  CHECK_THAT(looks, Catch::Contains("after every 6 tastings") && Catch::Contains("after 24 at the latest") && Catch::Contains("go on or stop"));
}

TEST_CASE("evenings and waves are said with their cups") {
  const Voice voice;
  Setup setup = setupOf(24, 2);
  setup.evenings = 2;
  setup.wave = 6;
  const std::string lines = joined(amountLines(voice, setup, planning::amountsOf(setup), {"one", "two"}));
  CHECK_THAT(lines, Catch::Contains("Over 2 evenings: on the longest 3 cups a person, 90 mL") && Catch::Contains("In 4 waves of 6: 18 cups on the trays at a time, 540 mL."));
}

TEST_CASE("each way to ask comes with its reasons, its chance and its price") {
  const Voice voice;
  Setup setup = setupOf(6, 1);
  setup.cupMl = 15;
  for (const Question question : {Question::differ, Question::more, Question::prefer})
    for (const auto& choice : planning::recommend(question, setup).choices) {
      const auto lines = choiceLines(voice, choice, "");
      CHECK(lines.size() == choice.because.size() + 1);
      for (const std::string& line : lines) CHECK_FALSE(line.empty());
      CHECK_THAT(choicePrice(voice, choice), Catch::Contains("mL a person") && Catch::Contains("g of alcohol"));
      CHECK(choiceChance(voice, choice, Claim::people).find_first_of("{}%") == std::string::npos);
    }
  setup.lots.push_back({500, 500, 6});
  const auto recommendation = planning::recommend(Question::differ, setup);
  REQUIRE(recommendation.references);
  std::vector<PlannedLot> lots(3);
  lots[0].beverageName = "Heather mead";
  lots[0].slot = Slot{1};
  for (const int lot : {1, 2}) {
    lots[lot].slot = Slot{lot + 1};
    lots[lot].beverageName = "Linden mead";
    lots[lot].lotName = lot == 1 ? "vintage 2019" : "vintage 2021";
    lots[lot].origin = Origin::reference;
  }
  const ReferencesWords words = referencesWords(voice, *recommendation.references, Claim::people, lots);
  CHECK_THAT(words.advice, Catch::Contains("One target is recommended"));
  REQUIRE(words.ways.size() == 3);  // the batch beside the one or the other, or all pairs
  CHECK(words.ways[0].name == "Heather mead beside Linden mead, vintage 2019; Linden mead, vintage 2021 another day");
  CHECK(words.ways[0].lots == std::vector{0, 1});
  CHECK(words.ways[1].lots == std::vector{0, 2});
  CHECK_THAT(joined(words.ways[0].lines), Catch::Contains("4 cups, 60 mL a person; 24 cups in all."));
  CHECK_THAT(joined(words.ways[2].lines), Catch::Contains("12 cups, 180 mL a person; 72 cups in all."));  // three tetrads
  lots[1].origin = Origin::batch;
  CHECK(referencesWords(voice, *recommendation.references, Claim::people, lots).ways.size() == 4);  // two batches: any pair may be the target
}

TEST_CASE("whether the way was picked or chosen is said, and why another would be better") {
  const Voice voice;
  const auto recommendation = planning::recommend(Question::differ, setupOf(6, 1));
  REQUIRE(recommendation.best().method == Method::tetrad);
  CHECK(pickedLine(voice, recommendation, Method::tetrad, false) == "The program picked this way, and picks again when drinks, people or amounts change.");
  CHECK(pickedLine(voice, recommendation, Method::tetrad, true) == "You chose this way. It is the one that is recommended.");
  const std::string other = pickedLine(voice, recommendation, Method::triangle, true);
  CHECK_THAT(other, Catch::StartsWith("You chose this way: triangle. Better here: tetrad."));
  for (const planning::Because because : recommendation.best().because) CHECK_THAT(other, Catch::Contains(reasonLine(voice, because)));
}

TEST_CASE("three comparisons that are alike: every step is said") {
  const Voice voice;
  Setup setup = setupOf(18, 1);
  setup.lots.assign(3, {500, 750, 60});
  setup.sought = Sought::alike;
  setup.limitPm = 300;
  // SciPy: binom.cdf(4, 18, 8/15) = .0073, binom.cdf(5, 18, 8/15) = .0257; held against .05/3, .05/2 and .05.
  const planning::Outlook outlook = planning::outlookFor(setup);
  CHECK_THAT(joined(outlookLines(voice, outlook, Sought::alike)), Catch::Contains("The pair with the fewest right answers counts as alike up to 4 of 18, then the next up to 4, then the last up to 5.") && Catch::Contains("That is alike within 3 in 10; one pair by itself"));
}
