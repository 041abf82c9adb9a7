#include "words/seal.h"

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

std::string joined(const std::vector<std::string>& lines) {
  std::string all;
  for (const std::string& line : lines) all += line + '\n';
  return all;
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
  f.alikeAtMost = 5;  // 18 triangles, limit 3 in 10, 5 %: exact binomial, P(X <= 5 | 0.5333) = 0.026, P(X <= 6) = 0.071
  CHECK_THAT(joined(sealPage(voice, f).rule), Catch::Contains("alike up to 5 right answers of 18: fewer than 3 in 10 of people may still be able to tell."));
  CHECK(sealPage(voice, f).promises.size() == 3);
  f.needed.reset();
  f.alikeAtMost.reset();
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
