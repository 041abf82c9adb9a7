#include "words/noticing.h"

#include "insight/table.h"
#include "words/came_out.h"
#include "words/care.h"
#include "words/denials.h"
#include "words/method.h"
#include "words/seal.h"
#include "insight/findings.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::words;

namespace {

insight::Noticed noticedOf(int right, int trials, std::size_t sessions) {
  insight::Noticed noticed;
  noticed.word = "butter";
  noticed.right = right;
  noticed.trials = trials;
  noticed.visits.resize(sessions);
  if (trials > 0) noticed.methods.push_back({Method::pair, right, trials, 0.6, 0.2, 0.9});
  return noticed;
}

}  // namespace

TEST_CASE("a table is told quietly what nobody there is known to notice") {
  const Voice voice;
  CHECK(coverageLine(voice, {}, true).empty());
  CHECK(coverageLine(voice, {"mousy"}, true) == "Nobody here is known to notice “mousy”. If it is not named tonight, it may be there all the same.");
  CHECK(coverageLine(voice, {"mousy", "butter", "rubber"}, true).starts_with("Nobody here is known to notice “mousy”, “butter” or “rubber”."));
  CHECK(coverageLine(voice, {"a", "b", "c", "d", "e", "f", "g", "h"}, true).find("2 more") != std::string::npos);
  CHECK(coverageLine(voice, {"mousy"}, false).find("nobody at this table has tasted a known difference") != std::string::npos);
}

TEST_CASE("what somebody noticed is said with its count, never as a mark") {
  const Voice voice;
  insight::Noticed noticed = noticedOf(14, 18, 2);
  noticed.isKnown = true;
  noticed.leftOut = 1;
  const auto lines = noticedLines(voice, noticed);
  REQUIRE(lines.size() == 3);
  CHECK(lines[0] == "“butter”: 14 of 18 right, over 2 tastings. Known to notice it.");
  CHECK(lines[1].find("directional pair, 14 of 18") != std::string::npos);
  CHECK(lines[2].starts_with("1 answer is left out"));
  CHECK(noticedLines(voice, noticedOf(4, 6, 1))[0] == "“butter”: 4 of 6 right, in one tasting. Not shown yet; that is not “does not notice it”.");
  CHECK(noticedLines(voice, noticedOf(0, 0, 0)).size() == 1);
  CHECK(wordNoticedLine(voice, {"butter", 5, 2}) == "“butter”: 2 of the 5 who tried it are known to notice it.");
  CHECK(wordNoticedLine(voice, {"butter", 1, 0}) == "“butter”: nobody here is known to notice it; 1 person tried.");
  CHECK(wordNoticedLine(voice, {"butter", 1, 1}) == "“butter”: 1 of the 1 who tried it is known to notice it.");
}

TEST_CASE("getting better is said with counts and a range, and as too little known before") {
  const Voice voice;
  insight::Noticed noticed = noticedOf(5, 12, 2);
  CHECK(changeLine(voice, noticed) == "Getting better at “butter”? Too little known: it takes three tastings asked in one way, so far 2.");
  noticed.change = insight::NoticedChange{Method::pair, 4, 4, 12, 11, 12, 0.5, 0.11, 0.83};
  CHECK(changeLine(voice, noticed) == "Getting better at “butter”: 4 of 12 right in the earlier tastings, 11 of 12 in the later ones. Noticed now from once more in 10 to 8 times more in 10.");
  noticed.change->low = -0.2;
  CHECK(changeLine(voice, noticed).find("No change shown") != std::string::npos);
  CHECK(changeLine(voice, noticed).find("Anything from 2 times less in 10 to 8 times more in 10 fits.") != std::string::npos);
  noticed.change->high = -0.01;
  CHECK(changeLine(voice, noticed).find("hardly less often") != std::string::npos);
}

TEST_CASE("a known difference has its question, its promise and its verdict in words") {
  const Voice voice;
  CHECK(questionLine(voice, Question::notice, "butter") == "Can my friends notice “butter”?");
  CHECK(questionLine(voice, Question::notice, "butter", true) == "Do I notice “butter” where I know it is?");
  CHECK(outcomeIf(voice, Outcome::shown, Method::pair, Question::notice) == "If it is noticed");
  for (const int right : {3, 1}) {
    RevealedSession session = table::panelOf(Method::pair, {right, right, right, right, right, right}, 3);
    session.plan.question = Question::notice;
    session.plan.attribute = "butter";
    session.plan.dose = "half a drop a litre";
    const CameOut out = cameOut(voice, session, insight::findingsOf(session));
    CHECK(out.headline == (right == 3 ? "At this table “butter” was noticed." : "Not shown that “butter” was noticed."));
    CHECK(out.under.find("Known beforehand: Heather mead has more of “butter” (half a drop a litre).") != std::string::npos);
    CHECK(forbiddenWordIn(out.headline).empty());
  }
}

TEST_CASE("care names what was added on purpose") {
  CareFacts facts;
  CHECK(care(Voice{}, facts).dosed.empty());
  facts.isDosed = true;
  const CarePage page = care(Voice{}, facts);
  CHECK(page.dosed.find("is an ingredient") != std::string::npos);
  CHECK(page.all()[1] == page.dosed);
}
