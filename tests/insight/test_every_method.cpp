#include "insight/findings.h"

#include "table.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace oddglass;
using namespace oddglass::insight;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using table::dealt;
using table::panelOf;

namespace {

Findings once(Method method, int people, int right) { return findingsOf(panelOf(method, dealt(people, right), 1)); }

}  // namespace

// Tails are written out as whole numbers: of 2^18, 3^18 or 10^6 equally likely ways of guessing so many hold this count or more.

TEST_CASE("duo-trio: one in two by guessing") {
  const Findings f = once(Method::duoTrio, 18, 14);
  CHECK_THAT(f.all.expected, WithinRel(9.0, 1e-12));
  CHECK_THAT(f.all.pValue.value(), WithinRel((3060.0 + 816 + 153 + 18 + 1) / 262144.0, 1e-12));
  CHECK(f.all.needed == 13);  // ISO 10399:2017, table A.1: 13 of 18 at 5 %
  CHECK(f.verdict == Verdict::shown);
  CHECK(once(Method::duoTrio, 18, 12).verdict == Verdict::notShown);
}

TEST_CASE("tetrad: one in three, like a triangle; the other group counts as right too") {
  auto session = panelOf(Method::tetrad, dealt(18, 10), 1);
  for (auto& flight : session.panel)
    if (*isRight(session.plan, flight) && flight.place.value % 2 == 0) {
      std::vector<Position> other;
      for (int cup = 1; cup <= 4; ++cup)
        if (std::ranges::find(flight.picks, Position{cup}) == flight.picks.end()) other.push_back({cup});
      flight.picks = other;
    }
  const Findings f = findingsOf(session);
  CHECK(f.all.right == 10);
  CHECK(f.all.needed == 10);  // as for 18 triangles, ISO 4120:2021, table A.1
  CHECK(f.verdict == Verdict::shown);
  CHECK_FALSE(f.habit.has_value());
}

TEST_CASE("two out of five: one in ten") {
  const Findings f = once(Method::twoOutOfFive, 6, 3);
  CHECK_THAT(f.all.pValue.value(), WithinRel((20.0 * 729 + 15 * 81 + 6 * 9 + 1) / 1e6, 1e-10));
  CHECK(f.all.needed == 3);  // two or more: (1e6 - 531441 - 6 x 59049) / 1e6 = 0.114
  CHECK(f.verdict == Verdict::shown);
  CHECK(once(Method::twoOutOfFive, 6, 2).verdict == Verdict::notShown);
}

TEST_CASE("alikeness of a duo-trio, not of a named thing") {
  auto session = panelOf(Method::duoTrio, dealt(60, 30), 1);
  session.plan.sought = Sought::both;
  session.plan.limitPm = 300;
  // Right with chance 0.65 when 3 in 10 can tell: 32 or fewer of 60 by exact binomial (ISO 10399:2017, similarity).
  double tail = 0;
  int largest = -1;
  for (int k = 0; k <= 60; ++k) {
    tail += std::exp(std::lgamma(61) - std::lgamma(k + 1.0) - std::lgamma(61.0 - k) + k * std::log(0.65) + (60 - k) * std::log(0.35));
    if (tail <= 0.05) largest = k;
  }
  const Findings f = findingsOf(session);
  CHECK(f.all.largest == largest);
  CHECK(f.verdict == Verdict::alike);
  auto pairs = panelOf(Method::pair, dealt(60, 30), 1);
  pairs.plan.sought = Sought::both;
  pairs.plan.limitPm = 300;
  CHECK_FALSE(findingsOf(pairs).all.largest.has_value());
  CHECK(findingsOf(pairs).verdict == Verdict::notShown);
  CHECK(findingsOf(pairs).all.needed.has_value());
}

TEST_CASE("directional pair: one direction; the other way has its own two-sided p") {
  CHECK(once(Method::pair, 18, 13).verdict == Verdict::shown);
  CHECK_FALSE(once(Method::pair, 18, 13).all.otherWayP.has_value());
  CHECK(once(Method::pair, 18, 11).verdict == Verdict::notShown);
  CHECK(once(Method::pair, 5, 5).verdict == Verdict::shown);  // exactly 1 in 32
  const Findings other = once(Method::pair, 18, 4);
  CHECK(other.verdict == Verdict::notShown);
  CHECK_THAT(other.all.otherWayP.value(), WithinRel(2 * 4048.0 / 262144.0, 1e-12));
  CHECK(once(Method::threeAfc, 18, 10).verdict == Verdict::shown);
  CHECK_THAT(once(Method::threeAfc, 6, 0).all.otherWayP.value(), WithinRel(2 * 64.0 / 729.0, 1e-12));
}

TEST_CASE("the same answers laid by what was poured") {
  auto session = panelOf(Method::pair, dealt(6, 6), 1);
  session.panel[0].poured = {session.panel[0].drawn[1], session.panel[0].drawn[0]};  // the cups changed places
  session.panel[1].poured = {Slot{2}, Slot{2}};                                      // no pair at all
  session.panel[2].poured = {std::nullopt, Slot{1}};                                 // not sure
  const Findings f = findingsOf(session);
  CHECK(f.all.trials == 4);
  CHECK(f.all.right == 3);
  CHECK(f.voided == 2);
}

TEST_CASE("A-not-A: Fisher's exact p, d' and criterion") {
  // 32 people once: the orders take turns, so 16 taste the marked drink. 12 of 16 hits, 4 of 16 false alarms.
  auto session = panelOf(Method::aNotA, std::vector<int>(32, 1), 1);
  int hits = 0, alarms = 0;
  for (auto& flight : session.panel) table::answer(flight, session.plan, *isSame(session.plan, flight) ? hits++ < 12 : alarms++ >= 4);
  const Findings f = findingsOf(session);
  REQUIRE(f.all.signal.has_value());
  CHECK(f.all.signal->hits == 12);
  CHECK(f.all.signal->misses == 4);
  CHECK(f.all.signal->falseAlarms == 4);
  CHECK(f.all.signal->correctRejections == 12);
  // z(0.75) = 0.67449, the density there 0.31778 (table of the normal distribution).
  CHECK_THAT(f.all.signal->dPrime.value(), WithinAbs(2 * 0.67449, 1e-4));
  CHECK_THAT(f.all.signal->criterion.value(), WithinAbs(0.0, 1e-9));
  CHECK_THAT(f.all.signal->standardError.value(), WithinAbs(std::sqrt(2 * 0.1875 / 16) / 0.31778, 1e-4));
  CHECK_THAT(f.all.signal->high.value() - f.all.signal->dPrime.value(), WithinRel(1.644854 * f.all.signal->standardError.value(), 1e-6));
  // Hypergeometric: of C(32, 16) ways, C(16, k)^2 hold k hits among 16 answers "A".
  double choose = 1, all = 0, tail = 0;
  for (int k = 0; k <= 16; ++k) {
    if (k > 0) choose = choose * (17 - k) / k;
    all += choose * choose;
    if (k >= 12) tail += choose * choose;
  }
  CHECK_THAT(f.all.pValue.value(), WithinRel(tail / all, 1e-10));
  CHECK(f.verdict == Verdict::shown);
  CHECK_FALSE(f.all.range.has_value());
}

TEST_CASE("same-different: a hit is \"different\" said of two drinks; too few cannot show anything") {
  auto session = panelOf(Method::sameDifferent, std::vector<int>(32, 1), 1);
  int hits = 0, alarms = 0;
  for (auto& flight : session.panel) {
    table::answer(flight, session.plan, *isSame(session.plan, flight) ? alarms++ >= 4 : hits++ < 12);
    flight.sureness = *isRight(session.plan, flight) ? Sureness::sure : Sureness::guess;
  }
  const Findings f = findingsOf(session);
  CHECK(f.all.signal->hits == 12);
  CHECK(f.all.signal->falseAlarms == 4);
  // tau = sqrt 2 z(0.875), z(0.875) = 1.15035 (table of the normal distribution).
  CHECK_THAT(f.all.signal->criterion.value(), WithinAbs(std::sqrt(2.0) * 1.15035, 1e-4));
  // Sure where right, guessing where wrong: of 16 x 16 comparisons 12 x 12 are clear, and among the rest 12 x 4 signals sure against a guess
  // "different", 4 x 12 guesses "the same" against sure: all won by the signal; 4 x 4 lost.
  REQUIRE(f.surenessIndex.has_value());
  CHECK_THAT(f.surenessIndex->rIndex, WithinRel((144.0 + 48 + 48) / 256.0, 1e-12));
  const Findings small = once(Method::sameDifferent, 4, 4);  // at best one way in six
  CHECK(small.verdict == Verdict::none);
  CHECK(small.why == NoVerdict::tooFew);
}

TEST_CASE("a sequential plan ends by its lines, without a p") {
  // Guessing 1/3 against 2/3: each right answer doubles the odds, each wrong one halves them. A difference from 0.8/0.05 = 16 = 2^4, none
  // at or below 0.2/0.95, which is between 2^-2 and 2^-3 (Wald 1947).
  const auto decided = [](int right) {
    auto session = panelOf(Method::triangle, dealt(6, right), 2);
    session.plan.rounds = 4;
    session.plan.stopping = Stopping{500, 200};
    session.log.push_back({Seq{400}, 0, Event::judged, std::nullopt, Round{2}, false});
    return findingsOf(session);
  };
  const Findings shown = decided(8);
  CHECK(shown.verdict == Verdict::shown);
  CHECK(shown.all.sequential->decision == Decision::difference);
  CHECK(shown.all.sequential->differenceFrom == 8);
  CHECK(shown.all.sequential->noneTo == 4);
  CHECK(shown.all.sequential->afterRound == 2);
  CHECK(shown.all.sequential->stoppedEarly);
  CHECK_FALSE(shown.all.pValue.has_value());
  CHECK(std::ranges::find(shown.cautions, Caution::fewerThanPlanned) == shown.cautions.end());
  CHECK(decided(7).all.sequential->decision == Decision::undecided);
  CHECK(decided(5).all.sequential->decision == Decision::undecided);
  CHECK(decided(4).all.sequential->decision == Decision::none);
  CHECK(decided(4).verdict == Verdict::notShown);
}

TEST_CASE("three lots: each pair by itself, Holm over the three") {
  // Six tetrads each: all right 1 in 729, five or more 13, two or more 473.
  const Findings f = findingsOf(table::threePairs(6, {6, 5, 2}));
  REQUIRE(f.pairs.size() == 3);
  CHECK(f.pairs[0].lots == std::pair{Slot{1}, Slot{2}});
  CHECK(f.pairs[2].lots == std::pair{Slot{2}, Slot{3}});
  CHECK_THAT(f.pairs[0].all.adjustedP.value(), WithinRel(3 / 729.0, 1e-10));
  CHECK_THAT(f.pairs[1].all.adjustedP.value(), WithinRel(26 / 729.0, 1e-10));
  CHECK_THAT(f.pairs[2].all.adjustedP.value(), WithinRel(473 / 729.0, 1e-10));
  CHECK(f.pairs[0].verdict == Verdict::shown);
  CHECK(f.pairs[1].verdict == Verdict::shown);
  CHECK(f.pairs[2].verdict == Verdict::notShown);
  CHECK(f.pairs[0].all.trials == 6);
  for (const Findings& pair : f.pairs) CHECK((pair.all.range->low > 0.0) == (pair.verdict == Verdict::shown));
  CHECK(f.verdict == Verdict::shown);
  CHECK(f.all.right == 13);
  // The strongest needs all six; then five suffice for the next.
  const Findings fives = findingsOf(table::threePairs(6, {5, 5, 5}));
  CHECK(fives.verdict == Verdict::notShown);
  CHECK(fives.pairs[1].all.needed == 6);
}

TEST_CASE("three lots: alike by Holm's steps, and each range agrees with its verdict") {
  // Eighteen tetrads each, 3 in 10 able: binom.cdf(4, 18, 8/15) = .0073 and binom.cdf(5, 18, 8/15) = .0257 in SciPy, held against .05/3, .05/2 and .05.
  const auto of = [](const std::vector<int>& right) {
    auto session = table::threePairs(18, right);
    session.plan.sought = Sought::alike;
    session.plan.limitPm = 300;
    return findingsOf(session);
  };
  const auto verdicts = [](const Findings& findings) {
    std::vector<Verdict> each;
    for (const Findings& pair : findings.pairs) {
      each.push_back(pair.verdict);
      CHECK((pair.all.range->high < 0.3) == (pair.verdict == Verdict::alike));
    }
    return each;
  };
  using enum Verdict;
  const Findings all = of({4, 5, 4});
  CHECK(verdicts(all) == std::vector{alike, alike, alike});
  CHECK(all.verdict == alike);
  CHECK(all.pairs[1].all.largest == 5);
  CHECK_THAT(all.pairs[1].all.alikeAdjustedP.value(), WithinAbs(0.0257440451, 1e-9));
  CHECK_THAT(all.pairs[0].all.alikeAdjustedP.value(), WithinAbs(3 * 0.0073379674, 1e-9));
  const Findings one = of({5, 4, 5});
  CHECK(verdicts(one) == std::vector{notShown, alike, notShown});
  CHECK(one.verdict == notShown);
  CHECK(verdicts(of({5, 5, 5})) == std::vector{notShown, notShown, notShown});
}

TEST_CASE("three lots: what was seen weakens its own pair, and the others keep their verdict only if it holds beside") {
  auto session = table::threePairs(6, {6, 5, 2});
  for (auto& flight : session.panel)
    if (flight.round == Round{1} && flight.place.value <= 3) flight.clue = Clue::look;
  const Findings f = findingsOf(session);
  CHECK(f.pairs[0].verdict == Verdict::none);  // three left: 1/27, times what three pairs ask
  CHECK(f.pairs[0].weakenedBy == WeakenedBy::lookOrFizz);
  CHECK_FALSE(f.pairs[1].withoutLookOrFizz.has_value());
  CHECK_THAT(f.pairs[1].all.adjustedP.value(), WithinRel(39 / 729.0, 1e-10));  // 13/729 is now the smallest of the three: times 3
  CHECK(f.pairs[1].verdict == Verdict::notShown);
}

TEST_CASE("three lots: a flight poured as another pair counts there") {
  auto session = table::threePairs(6, {6, 6, 6});
  auto& flight = session.panel[0];  // drawn with lots 1 and 2
  for (const Slot lot : flight.drawn) flight.poured.push_back(lot == Slot{2} ? Slot{3} : lot);
  const Findings f = findingsOf(session);
  CHECK(f.pairs[0].all.trials == 5);
  CHECK(f.pairs[1].all.trials == 7);
}

TEST_CASE("place habits where two cups can be chosen") {
  // Everybody who was wrong took the first cup they could: eight wrong, by chance on one side 2 in 256.
  auto session = panelOf(Method::duoTrio, std::vector<int>(16, 0), 1);
  for (auto& flight : session.panel) flight.picks = {Position{2}};
  const Findings f = findingsOf(session);
  REQUIRE(f.habit.has_value());
  CHECK(f.habit->counts == std::vector<int>{8, 0});
  CHECK_THAT(f.habit->pValue, WithinRel(2.0 / 256.0, 1e-12));
  auto liked = panelOf(Method::preference, std::vector<int>(8, 1), 1);
  for (auto& flight : liked.panel) flight.preferred = Position{1};
  CHECK(findingsOf(liked).habit->counts == std::vector<int>{8, 0});
  CHECK_FALSE(once(Method::sameDifferent, 8, 4).habit.has_value());
}

TEST_CASE("makers stand beside the panel by every method") {
  for (const Method method : {Method::triangle, Method::duoTrio, Method::tetrad, Method::twoOutOfFive, Method::pair, Method::threeAfc, Method::sameDifferent, Method::aNotA, Method::preference}) {
    auto session = panelOf(method, dealt(8, 8), 1);
    ShownPerson maker;
    maker.place = Place{8};
    maker.isMaker = true;
    session.people.back() = maker;
    session.makers.emplace_back(static_cast<const RevealedFlight&>(session.panel.back()));
    session.panel.pop_back();
    const Findings f = findingsOf(session);
    CHECK(f.all.trials == 7);
    REQUIRE(f.makers.size() == 1);
    CHECK(f.makers[0].trials == 1);
    CHECK((method == Method::preference ? f.makers[0].first : f.makers[0].right) == 1);
  }
}

TEST_CASE("Holm's adjustment") {
  // 0.01, 0.02, 0.04: 0.03, 0.04, 0.04 (Holm 1979, by hand).
  CHECK_THAT(holm(0.01, {0.02, 0.04}), WithinRel(0.03, 1e-12));
  CHECK_THAT(holm(0.02, {0.01, 0.04}), WithinRel(0.04, 1e-12));
  CHECK_THAT(holm(0.04, {0.02, 0.01}), WithinRel(0.04, 1e-12));
  CHECK_THAT(holm(0.5, {0.5, 0.5}), WithinRel(1.0, 1e-12));
  CHECK(holm(0.3, {}) == 0.3);
}
