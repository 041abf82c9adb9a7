#include "insight/findings.h"

#include "table.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::insight;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using table::dealt;
using table::panelOf;

namespace {

Findings votesOnce(Method method, int people, int right) { return findingsOf(panelOf(method, dealt(people, right), 1)); }

}  // namespace

TEST_CASE("a preference is one vote a person") {
  const Findings six = votesOnce(Method::preference, 6, 6);
  CHECK(six.verdict == Verdict::shown);
  CHECK_THAT(six.all.pValue.value(), WithinRel(2.0 / 64.0, 1e-12));
  CHECK(six.all.votes->first == 6);
  CHECK(votesOnce(Method::preference, 6, 0).verdict == Verdict::shown);  // either way
  const Findings four = votesOnce(Method::preference, 6, 4);
  CHECK(four.verdict == Verdict::notShown);
  CHECK(four.all.needed == 6);
  const Findings five = votesOnce(Method::preference, 5, 5);
  CHECK(five.verdict == Verdict::none);
  CHECK(five.why == NoVerdict::tooFew);
  CHECK_THAT(five.all.pValue.value(), WithinRel(2.0 / 32.0, 1e-12));
  CHECK_THAT(votesOnce(Method::preference, 10, 9).all.pValue.value(), WithinRel(22.0 / 1024.0, 1e-12));
  // If 8 in 10 prefer one, all six fall on it with 0.8^6, or all on the other with 0.2^6.
  CHECK_THAT(six.all.missed.at(0).chance, WithinRel(std::pow(0.8, 6) + std::pow(0.2, 6), 1e-12));
}

TEST_CASE("rounds show steadiness and add no votes") {
  // Three rounds: 3, 3, 3, 2, 1, 0 for the first lot are 4 votes for it and 2 for the other; four people never changed.
  const Findings f = findingsOf(panelOf(Method::preference, {3, 3, 3, 2, 1, 0}, 3));
  CHECK(f.all.trials == 6);
  CHECK(f.all.votes->first == 4);
  CHECK(f.all.votes->second == 2);
  CHECK(f.all.votes->repeated == 6);
  CHECK(f.all.votes->steady == 4);
  CHECK(f.verdict == Verdict::notShown);
  // Two rounds, one each: no vote.
  const Findings even = findingsOf(panelOf(Method::preference, {2, 2, 2, 2, 2, 2, 1}, 2));
  CHECK(even.all.votes->even == 1);
  CHECK(even.all.trials == 6);
  CHECK(even.verdict == Verdict::shown);
}

TEST_CASE("no preference is reported, tested without, and split beside") {
  auto session = panelOf(Method::preference, dealt(8, 8), 1);
  session.plan.mayHaveNone = true;
  session.panel[7].preferred.reset();
  session.panel[7].preferredNone = true;
  const Findings f = findingsOf(session);
  CHECK(f.all.trials == 7);
  CHECK(f.all.votes->none == 1);
  CHECK_THAT(f.all.pValue.value(), WithinRel(2.0 / 128.0, 1e-12));
  REQUIRE(f.all.votes->split.has_value());
  CHECK(f.all.votes->split->first == 7);
  CHECK(f.all.votes->split->second == 1);
  CHECK_THAT(f.all.votes->split->pValue, WithinRel(18.0 / 256.0, 1e-12));
  CHECK(f.all.votes->split->changes);
  for (auto& flight : session.panel) {
    flight.preferred.reset();
    flight.preferredNone = true;
  }
  CHECK(findingsOf(session).why == NoVerdict::noVotes);
}

TEST_CASE("a preference that turns round without what was said is not shown") {
  auto session = panelOf(Method::preference, std::vector<int>(26, 0), 1);
  for (std::size_t i = 0; i < 26; ++i) {
    session.panel[i].lockedAt = Seq{static_cast<int>(i) + 1};
    table::answer(session.panel[i], session.plan, i >= 6);
  }
  session.said.push_back({Seq{6}, 0, {}, {}});
  // Six alone are for lot 2 (2/64); with the rest it is 20 of 26 for lot 1.
  session.said[0].seq = Seq{7};
  session.panel[6].lockedAt = Seq{70};
  const Findings f = findingsOf(session);
  CHECK(f.all.verdict == Verdict::shown);
  REQUIRE(f.withoutSaid.has_value());
  CHECK(f.withoutSaid->verdict == Verdict::shown);
  CHECK(f.verdict == Verdict::notShown);
  CHECK(f.weakenedBy == WeakenedBy::said);
}

TEST_CASE("what those who were right liked better") {
  auto session = panelOf(Method::triangle, dealt(15, 10), 1);
  session.plan.alsoPrefer = true;
  int right = 0;
  for (auto& flight : session.panel) {
    const bool likesFirst = !*isRight(session.plan, flight) || right++ < 8;
    for (std::size_t i = 0; i < 3; ++i)
      if (flight.drawn[i] == Slot{likesFirst ? 1 : 2}) flight.preferred = Position{static_cast<int>(i) + 1};
  }
  const Findings f = findingsOf(session);
  REQUIRE(f.liking.has_value());
  CHECK(f.liking->votes.first == 8);
  CHECK(f.liking->votes.second == 2);
  CHECK(f.liking->wrong == 5);
  CHECK_THAT(f.liking->pValue, WithinRel(2 * (45.0 + 10 + 1) / 1024.0, 1e-12));
  CHECK_FALSE(f.liking->isShown);
  // pc = 2/3, pd = 1/2, so 1/2 + (0.8 - 0.5) (2/3) / (1/2) = 0.9, by hand.
  REQUIRE(f.liking->tellers.has_value());
  CHECK_THAT(f.liking->tellers->estimate, WithinAbs(0.9, 1e-6));
  CHECK(f.liking->tellers->low < 0.9);
  session.plan.alsoPrefer = false;
  CHECK_FALSE(findingsOf(session).liking.has_value());
}
