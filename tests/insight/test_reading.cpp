#include "insight/findings.h"

#include "table.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstdint>
#include <numeric>

using namespace oddglass;
using namespace oddglass::insight;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// Exact tails in whole numbers, nothing of `stats`: of b^n equally likely outcomes C(n, k) a^k (b - a)^(n-k) have k right.
double exactTail(int n, int a, int b, int from, int to) {
  long double sum = 0, choose = 1, all = std::pow(static_cast<long double>(b), n);
  for (int k = 0; k <= n; ++k) {
    if (k > 0) choose = choose * (n - k + 1) / k;
    if (k >= from && k <= to) sum += choose * std::pow(static_cast<long double>(a), k) * std::pow(static_cast<long double>(b - a), n - k);
  }
  return static_cast<double>(sum / all);
}

Findings findingsWith(int right18, Sought sought = Sought::difference, std::optional<int> limitPm = std::nullopt) {
  std::vector<int> right;
  for (int k = 0; k < 6; ++k) right.push_back(right18 / 6 + (k < right18 % 6 ? 1 : 0));
  auto session = table::panel(right, 3);
  session.plan.sought = sought;
  session.plan.limitPm = limitPm;
  return findingsOf(session);
}

}  // namespace

// Worked case of the planning text: 6 tasters x 3 rounds, 10 needed.
TEST_CASE("12 of 18: shown, at this table") {
  const Findings f = findingsWith(12);
  CHECK(f.verdict == Verdict::shown);
  CHECK(f.claim == Claim::table);
  CHECK(f.all.right == 12);
  CHECK(f.all.trials == 18);
  CHECK(f.all.people == 6);
  CHECK(f.all.needed == 10);
  CHECK_THAT(f.all.expected, WithinRel(6.0, 1e-12));
  CHECK_THAT(f.all.pValue.value(), WithinRel(exactTail(18, 1, 3, 12, 18), 1e-12));
  CHECK_THAT(f.all.pValue.value(), WithinAbs(0.004, 0.0005));  // "about 4 times in 1,000"
  CHECK(f.all.range->by == RangeBy::people);
  CHECK_THAT(f.all.range->level, WithinRel(0.90, 1e-12));
  CHECK(f.all.range->low > 0.0);
  CHECK_FALSE(f.why.has_value());
}

TEST_CASE("8 of 18: not shown; half would have come out 0.86, 3 in 10 0.52") {
  const Findings f = findingsWith(8);
  CHECK(f.verdict == Verdict::notShown);
  CHECK(f.all.needed == 10);
  REQUIRE(f.all.missed.size() == 2);
  CHECK(f.all.missed[0].sharePm == 300);
  CHECK_THAT(f.all.missed[0].chance, WithinAbs(0.52, 0.005));
  CHECK_THAT(f.all.missed[1].chance, WithinAbs(0.86, 0.005));
}

TEST_CASE("4 of 18, limit 3 in 10: alike; 5 or fewer needed, less than once in 20") {
  const Findings f = findingsWith(4, Sought::alike, 300);
  CHECK(f.verdict == Verdict::alike);
  CHECK(f.all.largest == 5);
  // With 3 in 10 able an answer is right 8 times in 15.
  CHECK_THAT(f.all.alikeP.value(), WithinRel(exactTail(18, 8, 15, 0, 4), 1e-12));
  CHECK(*f.all.alikeP < 0.05);
  CHECK(exactTail(18, 8, 15, 0, 5) <= 0.05);
  CHECK(exactTail(18, 8, 15, 0, 6) > 0.05);
  CHECK(findingsWith(5, Sought::alike, 300).verdict == Verdict::alike);
  CHECK(findingsWith(6, Sought::alike, 300).verdict == Verdict::notShown);
}

TEST_CASE("a limit counts only where alike was sought") {
  CHECK(findingsWith(4, Sought::difference, 300).verdict == Verdict::notShown);
  CHECK_FALSE(findingsWith(4, Sought::difference, 300).all.largest.has_value());
  CHECK(findingsWith(12, Sought::alike, 300).verdict == Verdict::notShown);  // a difference was not asked for
  CHECK(findingsWith(12, Sought::both, 300).verdict == Verdict::shown);
  CHECK(findingsWith(4, Sought::both, 300).verdict == Verdict::alike);
}

TEST_CASE("a large panel can be told apart, but by fewer than the limit") {
  // 150 people once, limit 3 in 10: needed and largest both recomputed in whole numbers.
  std::vector<int> right(150, 0);
  int needed = 0, largest = 0;
  while (exactTail(150, 1, 3, needed, 150) > 0.05) ++needed;
  while (exactTail(150, 8, 15, 0, largest + 1) <= 0.05) ++largest;
  REQUIRE(needed <= largest);
  for (int k = 0; k < needed; ++k) right[k] = 1;
  auto session = table::panel(right, 1);
  session.plan.sought = Sought::both;
  session.plan.limitPm = 300;
  const Findings f = findingsOf(session);
  CHECK(f.verdict == Verdict::both);
  CHECK(f.all.needed == needed);
  CHECK(f.all.largest == largest);
  CHECK(f.claim == Claim::people);
  CHECK(f.all.range->by == RangeBy::exact);
  CHECK(f.all.range->low > 0.0);
  CHECK(f.all.range->high < 0.3);
}

TEST_CASE("5 of 7 people once: shown, and the 90 % range leaves nobody behind") {
  const Findings f = findingsOf(table::panel({1, 1, 1, 1, 1, 0, 0}, 1));
  CHECK(f.verdict == Verdict::shown);
  CHECK_THAT(f.all.pValue.value(), WithinRel(99.0 / 2187.0, 1e-12));  // (21 x 4 + 7 x 2 + 1) / 3^7
  CHECK(f.all.range->low > 0.0);
  CHECK(f.claim == Claim::people);
}

TEST_CASE("verdict, needed number and range agree at every count") {
  for (int n = 3; n <= 20; ++n)
    for (int x = 0; x <= n; ++x) {
      std::vector<int> right(n, 0);
      for (int k = 0; k < x; ++k) right[k] = 1;
      const Findings f = findingsOf(table::panel(right, 1));
      const bool reaches = exactTail(n, 1, 3, x, n) <= 0.05 * (1 + 1e-12);
      CHECK((f.verdict == Verdict::shown) == reaches);
      CHECK((f.all.range->low > 1e-12) == reaches);
      CHECK_THAT(f.all.pValue.value(), WithinRel(exactTail(n, 1, 3, x, n), 1e-10));
    }
}

TEST_CASE("two people once: even all right would prove nothing") {
  const Findings f = findingsOf(table::panel({1, 1}, 1));
  CHECK(f.verdict == Verdict::none);
  CHECK(f.why == NoVerdict::tooFew);
  CHECK(f.all.missed.empty());
  CHECK(f.all.range.has_value());
}

TEST_CASE("nobody answered: no verdict, no range, no number") {
  const Findings f = findingsOf(table::panel({}, 1));
  CHECK(f.verdict == Verdict::none);
  CHECK(f.why == NoVerdict::nobodyAnswered);
  CHECK_FALSE(f.all.range.has_value());
  CHECK(f.all.pValue == 1.0);
  CHECK(f.sureness.empty());
  CHECK_FALSE(f.habit.has_value());
}

TEST_CASE("the weaker of two verdicts") {
  using enum Verdict;
  CHECK(weaker(shown, notShown) == notShown);
  CHECK(weaker(none, shown) == none);
  CHECK(weaker(both, alike) == alike);
  CHECK(weaker(shown, both) == shown);
  CHECK(weaker(shown, alike) == notShown);
  for (const Verdict a : {shown, notShown, alike, both, none}) {
    CHECK(weaker(a, a) == a);
    for (const Verdict b : {shown, notShown, alike, both, none}) CHECK(weaker(a, b) == weaker(b, a));
  }
}
