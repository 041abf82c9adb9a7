#include "insight/table.h"
#include "words/came_out.h"
#include "words/maker.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using namespace oddglass::words;
using table::dealt;
using table::panelOf;

namespace {

CameOut cameOutOf(const RevealedSession& session) { return cameOut(Voice{}, session, insight::findingsOf(session)); }
CameOut cameOutOf(Method method, int people, int right, int rounds = 1) { return cameOutOf(panelOf(method, dealt(people, right), rounds)); }

bool says(const std::vector<std::string>& lines, const std::string& part) {
  return std::ranges::any_of(lines, [&](const std::string& line) { return line.find(part) != std::string::npos; });
}

RevealedSession alone(Method method, int rounds, int right) {
  RevealedSession session = panelOf(method, {right}, rounds);
  session.plan.claim = Claim::me;
  for (const PanelFlight& flight : session.panel) session.makers.emplace_back(static_cast<const RevealedFlight&>(flight));
  session.panel.clear();
  return session;
}

}  // namespace

// Counts and chances: exact binomial; 14 or more of 18 at one in two 4,048 in 262,144; needed numbers as in ISO 10399:2017 and ISO 4120:2021, tables A.1.

TEST_CASE("what was found is said in the words of each method") {
  CHECK(cameOutOf(Method::duoTrio, 18, 14).count == "In 14 of 18 tastings the cup like the marked one was found; guessing gives about 9, and 14 or more about 2 times in 100.");
  CHECK(cameOutOf(Method::duoTrio, 18, 14).headline == "They were told apart.");
  CHECK(cameOutOf(Method::tetrad, 6, 8, 3).count == "In 8 of 18 tastings the two groups were found; guessing gives about 6, and 10 were needed.");
  CHECK(cameOutOf(Method::tetrad, 6, 8, 3).headline == "No difference shown.");
  CHECK(cameOutOf(Method::twoOutOfFive, 6, 3).count == "In 3 of 6 tastings the two odd ones were found; guessing gives one in ten, and 3 or more about 2 times in 100.");
  CHECK_THAT(cameOutOf(Method::duoTrio, 18, 14).method, Catch::StartsWith("Duo-trio test, after ISO 10399:2017, not certified."));
  CHECK_THAT(cameOutOf(Method::tetrad, 18, 14).method, Catch::StartsWith("Tetrad, as is common practice."));
}

TEST_CASE("more of a thing: shown, not shown, and the other way") {
  const CameOut shown = cameOutOf(Method::pair, 6, 14, 3);
  CHECK(shown.headline == "At this table Heather mead was called the more bitter one, in 14 of 18 pairs.");
  CHECK(shown.under == "More is not better or worse.");
  CHECK(shown.count == "14 of 18 pairs pointed to Heather mead; guessing gives about 9, and 14 or more about 2 times in 100.");
  const CameOut notShown = cameOutOf(Method::pair, 6, 11, 3);
  CHECK(notShown.headline == "Heather mead: not shown to be more bitter.");
  CHECK(notShown.under == "It may be equal, slightly more, or less.");
  CHECK_THAT(notShown.count, Catch::Contains("and 13 were needed"));
  CHECK_FALSE(notShown.missed.empty());
  const CameOut other = cameOutOf(Method::pair, 6, 4, 3);
  CHECK(other.headline == "Heather mead: not shown to be more bitter.");
  CHECK(other.under == "14 of 18 pointed the other way. You asked about one direction only, so this is a hint: make it the next question.");
  CHECK(cameOutOf(alone(Method::pair, 8, 8)).headline == "You called Heather mead the more bitter one, in 8 of 8 pairs.");
  CHECK(cameOutOf(Method::threeAfc, 12, 9).headline == "Heather mead was picked as the most bitter one, in 9 of 12 tastings.");
}

TEST_CASE("a preference in votes") {
  const CameOut all = cameOutOf(Method::preference, 6, 6);
  CHECK(all.headline == "All 6 preferred Heather mead.");
  CHECK(all.count == "By chance alone, 6 to 0 either way comes about 3 times in 100.");  // 2 in 64
  CHECK(all.notSaid == "It says what these six liked today, not what is better made.");
  CHECK(cameOutOf(Method::preference, 6, 0).headline == "All 6 preferred Linden mead.");
  const CameOut four = cameOutOf(Method::preference, 6, 4);
  CHECK(four.headline == "4 to 2: no preference shown.");
  CHECK(four.count == "With six people only 6 to 0 could have shown one.");
  CHECK_THAT(four.missed, Catch::Contains("8 in 10 of such people"));
  const CameOut five = cameOutOf(Method::preference, 5, 5);
  CHECK(five.headline == "No verdict: five people cannot settle this, whatever they answer.");
  CHECK(five.next == "Next: six people are the fewest who can show a preference. A person is one vote, so more rounds add none.");
  CHECK(cameOutOf(Method::preference, 1, 1).headline == "No verdict: one person cannot settle this, whatever they answer.");
  CHECK(cameOutOf(Method::preference, 10, 9).count == "By chance alone, 9 to 1 or clearer, either way, comes about 2 times in 100.");  // 22 in 1,024
  CHECK(cameOutOf(Method::preference, 10, 7).count == "With ten people it takes 9 to 1, or clearer, to show one.");
  CHECK(cameOutOf(alone(Method::preference, 6, 6)).headline == "You preferred Heather mead in all 6 rounds.");
  CHECK(says(cameOutOf(panelOf(Method::preference, {3, 3, 3, 3, 3, 2}, 3)).beside, "Steadiness: 5 of 6 stuck to one answer over the rounds."));
}

TEST_CASE("no preference is told, and what splitting would do") {
  RevealedSession session = panelOf(Method::preference, dealt(8, 8), 1);
  session.plan.mayHaveNone = true;
  session.panel[7].preferred.reset();
  session.panel[7].preferredNone = true;
  const CameOut out = cameOutOf(session);
  CHECK(out.headline == "7 of 8 preferred Heather mead.");
  CHECK(says(out.beside, "1 had no preference and is not in the count. Split half and half it would be 7 to 1, and the verdict would change."));
}

TEST_CASE("a preference asked after the choice counts guesses in and leaves nobody out") {
  RevealedSession session = panelOf(Method::triangle, dealt(15, 10), 1);
  session.plan.alsoPrefer = true;
  int right = 0;
  for (PanelFlight& flight : session.panel) {
    const Slot liked{!*isRight(session.plan, flight) || right++ < 8 ? 1 : 2};
    flight.preferred = Position{static_cast<int>(std::ranges::find(flight.drawn, liked) - flight.drawn.begin()) + 1};
  }
  const CameOut out = cameOutOf(session);
  CHECK(says(out.beside, "Looked at afterwards: among those who were right, 8 liked Heather mead better and 2 Linden mead."));
  CHECK(says(out.beside, "about 11 times in 100: no preference shown."));  // 112 in 1,024
  CHECK(says(out.beside, "Some who chose may have guessed; that is counted in, nobody is left out."));
}

TEST_CASE("signal and noise in plain words") {
  RevealedSession session = panelOf(Method::aNotA, std::vector<int>(32, 1), 1);
  int hits = 0, alarms = 0;
  for (PanelFlight& flight : session.panel) {
    table::answer(flight, session.plan, *isSame(session.plan, flight) ? hits++ < 12 : alarms++ >= 4);
    flight.sureness = Sureness::fairly;
  }
  const CameOut out = cameOutOf(session);
  CHECK(out.headline == "They were told apart.");
  // Fisher: of C(32, 16) ways 0.6 in 100 hold 12 hits or more.
  CHECK(out.count == "Of 16 cups of the marked drink 12 were taken for it, and of 16 cups of the other drink 4; if no one could tell, as much or more would come up about 6 times in 1,000.");
  CHECK_THAT(out.range, Catch::StartsWith("How far apart they are: d′ 1.3, from "));
  CHECK(says(out.beside, "R-index 0.75"));  // all equally sure: (H + 1 - F) / 2
  CHECK(says(out.beside, "No strong lean"));
  CHECK_FALSE(out.interval);
  const CameOut clean = cameOutOf(panelOf(Method::sameDifferent, std::vector<int>(12, 1), 1));
  CHECK_THAT(clean.count, Catch::StartsWith("Of 6 flights with both drinks 6 were called different, and of 6 flights with one drink twice 0;"));
  CHECK_THAT(clean.range, Catch::Contains("has no number here"));
}

TEST_CASE("a sequential plan says when it stopped and gives no p") {
  const auto stopped = [](int right, bool early) {
    RevealedSession session = panelOf(Method::triangle, dealt(6, right), 2);
    session.plan.rounds = early ? 4 : 2;
    session.plan.stopping = Stopping{500, 200};
    if (early) session.log.push_back({Seq{400}, 0, Event::judged, std::nullopt, Round{2}, false});
    return cameOutOf(session);
  };
  const CameOut shown = stopped(8, true);
  CHECK(shown.headline == "At this table they were told apart.");
  CHECK(shown.under == "Stopped after round 2.");
  CHECK(shown.count == "8 of 12 tastings were right; the line drawn before asked for 8 of 12.");
  CHECK_THAT(shown.method, Catch::Contains("there is no p"));
  const CameOut none = stopped(4, true);
  CHECK(none.headline == "No difference shown.");
  CHECK(none.under == "Stopped after round 2. That is not “no difference”.");
  CHECK_THAT(none.missed, Catch::Contains("about 20 times in 100 where there is a difference that half of such people can taste"));
  const CameOut open = stopped(6, false);
  CHECK_THAT(open.under, Catch::StartsWith("It went to the last round, round 2. The answers stayed between the two lines that were drawn before: undecided."));
}

TEST_CASE("three pairs are named, each with its own verdict") {
  const CameOut out = cameOutOf(table::threePairs(6, {6, 5, 2}));
  CHECK(out.headline == "Told apart at this table: Heather mead from Linden mead, vintage 2019; Heather mead from Linden mead, vintage 2021.");
  REQUIRE(out.pairs.size() == 3);
  CHECK(out.pairs[0].headline == "Heather mead and Linden mead, vintage 2019: told apart.");
  CHECK(out.pairs[2].headline == "Linden mead, vintage 2019 and Linden mead, vintage 2021: no difference shown.");
  CHECK_THAT(out.pairs[0].count, Catch::Contains("With three pairs compared, that counts as about 4 times in 1,000."));  // 3 in 729
  CHECK(out.pairs[2].what == "Linden mead, vintage 2019 beside Linden mead, vintage 2021");
  CHECK(says(out.lines(), "no difference shown."));
  CHECK(cameOutOf(table::threePairs(6, {2, 2, 2})).headline == "No difference shown in any of the three pairs.");
}

TEST_CASE("a maker's preference stands on the maker's page alone") {
  RevealedSession session = panelOf(Method::preference, dealt(7, 7), 1);
  session.people.back().isMaker = true;
  session.people.back().as = ShownAs::signedName;
  session.people.back().shown = "Mara";
  session.makers.emplace_back(static_cast<const RevealedFlight&>(session.panel.back()));
  session.panel.pop_back();
  const insight::Findings findings = insight::findingsOf(session);
  const MakerPart part = makerPart(Voice{}, session, findings);
  CHECK(part.makers == std::vector<std::string>{"A maker, beside the panel and not counted with it: Mara, liked better: Heather mead 1."});
  CHECK_FALSE(says(cameOut(Voice{}, session, findings).lines(), "maker"));
}
