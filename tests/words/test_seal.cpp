#include "words/seal.h"

#include "words/joined.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::words;

namespace {

SealFacts facts() {
  SealFacts f;
  f.drinks = {"Heather mead, bottled 14 March", "a bought mead, vintage 2024"};
  f.panel = 6;
  f.makers = 1;
  f.rounds = 3;
  f.needed = 10;  // 18 triangles at 5 %: ISO 4120:2021, table A.1
  f.promises = {{Outcome::shown, "find out in what"}};
  return f;
}

}  // namespace

TEST_CASE("the promise stands on one page") {
  const Voice voice;
  const SealPage page = sealPage(voice, facts());
  CHECK(page.question == "Can anyone tell Heather mead, bottled 14 March from a bought mead, vintage 2024?");
  const std::string rule = joined(page.rule);
  CHECK_THAT(rule, Catch::Contains("6 people who did not make it, 3 rounds each: 18 tastings count."));
  CHECK_THAT(rule, Catch::Contains("from 10 right answers of 18 on. Guessing alone reaches that no more often than 5 times in 100."));
  CHECK_THAT(rule, Catch::Contains("1 maker tastes as well"));
  CHECK_THAT(rule, !Catch::Contains("alike"));
  REQUIRE(page.promises.size() == 2);
  CHECK(page.promises[0] == "If they are told apart: find out in what");
  CHECK(page.promises[1] == "If no difference is shown: nothing is promised yet.");
}

TEST_CASE("alike is promised only with its limit, and what cannot come out is said before") {
  const Voice voice;
  SealFacts f = facts();
  f.sought = Sought::both;
  f.limitPm = 300;
  f.alikeInTurn = {5};  // 18 triangles, limit 3 in 10, 5 %: exact binomial, P(X <= 5 | 0.5333) = 0.026, P(X <= 6) = 0.071
  CHECK_THAT(joined(sealPage(voice, f).rule), Catch::Contains("alike up to 5 right answers of 18: fewer than 3 in 10 of people may still be able to tell."));
  CHECK(sealPage(voice, f).promises.size() == 3);
  f.needed.reset();
  f.alikeInTurn = {std::nullopt};
  const std::string rule = joined(sealPage(voice, f).rule);
  CHECK_THAT(rule, Catch::Contains("This is practice."));
  CHECK_THAT(rule, Catch::Contains("cannot come out as alike"));
}

TEST_CASE("alone it is you") {
  const Voice voice;
  SealFacts f = facts();
  f.claim = Claim::me;
  f.panel = 1;
  f.rounds = 8;
  CHECK_THAT(sealPage(voice, f).question, Catch::StartsWith("Can you tell "));
  CHECK_THAT(joined(sealPage(voice, f).rule), Catch::Contains("You taste alone, 8 times."));
}

TEST_CASE("each method promises in its own words") {
  const Voice voice;
  SealFacts f = facts();
  f.method = Method::pair;
  f.attribute = "bitter";
  f.expected = Slot{2};
  f.needed = 13;  // 18 pairs, one-sided at 5 %: ISO 5495:2005
  CHECK(sealPage(voice, f).question == "Is a bought mead, vintage 2024 more bitter than Heather mead, bottled 14 March?");
  CHECK_THAT(joined(sealPage(voice, f).rule), Catch::Contains("It is shown to be more bitter from 13 of 18 times on.") && Catch::Contains("Only this direction"));
  CHECK_THAT(sealPage(voice, f).promises[0], Catch::StartsWith("If it is shown to be more so: "));

  f = facts();
  f.method = Method::preference;
  f.needed = 6;  // two-sided, 6 to 0: 2/64
  f.mayHaveNone = true;
  CHECK_THAT(sealPage(voice, f).question, Catch::StartsWith("Which do people prefer, "));
  CHECK_THAT(joined(sealPage(voice, f).rule), Catch::Contains("one vote a person") && Catch::Contains("from 6 votes of 6 for one of them on") && Catch::Contains("No preference"));
  f.needed.reset();
  CHECK_THAT(joined(sealPage(voice, f).rule), Catch::Contains("This is practice."));

  f = facts();
  f.drinks.push_back("a bought mead, vintage 2025");
  f.rounds = 1;
  f.needed = 6;
  f.neededInTurn = {6, 5, 5};  // Holm 1979: 1/729 at a third, 13/729 at a half of 5 %
  CHECK_THAT(sealPage(voice, f).question, Catch::Contains("pair by pair"));
  CHECK_THAT(joined(sealPage(voice, f).rule), Catch::Contains("needs 6 of 6 right answers, then each of the others 5 of 6"));

  f = facts();
  f.needed.reset();
  f.canShow = true;
  f.stopping = Stopping{500, 200};
  CHECK_THAT(joined(sealPage(voice, f).rule), Catch::Contains("after every round of 6 tastings") && Catch::Contains("what half can taste missed about 20 times in 100"));

  f = facts();
  f.method = Method::aNotA;
  f.marked = Slot{2};
  f.needed.reset();
  f.canShow = true;
  CHECK_THAT(joined(sealPage(voice, f).rule), Catch::Contains("always holds a bought mead, vintage 2024") && Catch::Contains("more often of the other drink"));
}

TEST_CASE("the facts of the seal follow from the draft: alone it is one person's tastings that count") {
  const Voice voice;
  Draft draft;
  draft.rounds = 8;
  planning::Setup setup;
  setup.makers = 1;
  setup.rounds = 8;
  setup.lots.assign(2, {500, 500, 9});
  const SealFacts f = sealFacts(draft, setup, planning::outlookFor(setup), {"a", "b"}, "");
  CHECK(f.panel == 1);
  CHECK(f.makers == 0);
  CHECK(f.needed == 6);  // 6 of 8 at 5 %: ISO 4120:2021
  CHECK_THAT(joined(sealPage(voice, f).rule), Catch::Contains("You taste alone, 8 times."));
}

TEST_CASE("the seal mark goes to other people, and nobody is sent to pour who should not") {
  const Voice voice;
  CHECK_THAT(sealMarkLine(voice, "kapo rilu 7"), Catch::Contains("kapo rilu 7") && Catch::Contains("everybody"));
  CHECK_THAT(afterSealLine(voice, ""), Catch::Contains("leave the room"));
  CHECK_THAT(afterSealLine(voice, "Ida"), Catch::Contains("Ida, who pours"));
  CHECK_THAT(sealLimits(voice), Catch::Contains("other tools"));
}

TEST_CASE("what cannot be undone is asked twice, in words") {
  const Voice voice;
  for (const AskTwice& ask : {breakSeal(voice), abandonSession(voice), eraseTaster(voice, "Ida", ErasureKind::words), eraseTaster(voice, "Ida", ErasureKind::everything)}) {
    CHECK(ask.first.size() > 40);
    CHECK(ask.second.back() == '?');
    CHECK_FALSE(ask.yes.empty());
    CHECK_FALSE(ask.no.empty());
    CHECK(ask.yes != ask.no);
  }
  CHECK_THAT(eraseTaster(voice, "Ida", ErasureKind::everything).first, Catch::Contains("Copies already printed or sent cannot be called back."));
}
