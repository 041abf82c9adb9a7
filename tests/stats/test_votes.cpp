#include "stats/votes/no_preference.h"
#include "stats/votes/preference_plan.h"

#include "stats/binomial.h"
#include "stats/cases.h"
#include "stats/error.h"
#include "stats/preference.h"

#include <cmath>
#include <limits>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {
double choose(int n, int k) { return std::exp(std::lgamma(n + 1.0) - std::lgamma(k + 1.0) - std::lgamma(n - k + 1.0)); }

/// Two-sided p of the larger side from factorials.
double signTest(int first, int second) {
  const int n = first + second, larger = std::max(first, second);
  double tail = 0.0;
  for (int x = larger; x <= n; ++x) tail += choose(n, x) / std::pow(2.0, n);
  return std::min(1.0, 2 * tail);
}
}  // namespace

TEST_CASE("five people can never show a preference, six can only all together") {
  // By hand: 2 / 2^5 is above 0.05, 2 / 2^6 is not.
  CHECK_FALSE(preferencePower(5, 1.0, 0.05).critical.has_value());
  CHECK(preferencePower(5, 1.0, 0.05).power == 0.0);
  const PreferencePower six = preferencePower(6, 0.8, 0.05);
  CHECK(six.critical == 6);
  CHECK_THAT(six.alphaActual, WithinRel(2.0 / 64.0, 1e-12));
  CHECK_THAT(six.power, WithinRel(std::pow(0.8, 6) + std::pow(0.2, 6), 1e-12));
  CHECK_THAT(six.powerThisWay, WithinRel(std::pow(0.8, 6), 1e-12));
}

TEST_CASE("power of a preference, outcome by outcome, with some who have none") {
  for (const int people : {6, 9, 20})
    for (const double share : {0.3, 0.5, 0.75, 1.0})
      for (const double none : {0.0, 0.2, 0.5}) {
        double power = 0.0, thisWay = 0.0, risk = 0.0;
        for (int first = 0; first <= people; ++first)
          for (int second = 0; first + second <= people; ++second) {
            if (signTest(first, second) > 0.05 * (1 + 1e-9)) continue;
            const auto chance = [&](double of) {
              return choose(people, first + second) * choose(first + second, first) * std::pow((1 - none) * of, first) * std::pow((1 - none) * (1 - of), second) * std::pow(none, people - first - second);
            };
            power += chance(share);
            risk += chance(0.5);
            if ((share >= 0.5) == (first > second)) thisWay += chance(share);
          }
        INFO(people << ' ' << share << ' ' << none);
        const PreferencePower found = preferencePower(people, share, 0.05, none);
        CHECK_THAT(found.power, WithinAbs(power, 1e-10));
        CHECK_THAT(found.powerThisWay, WithinAbs(thisWay, 1e-10));
        CHECK_THAT(found.alphaActual, WithinAbs(risk, 1e-10));
        CHECK(found.alphaActual <= 0.05);
        // Which of the two is called the first makes no difference.
        CHECK_THAT(preferencePower(people, 1 - share, 0.05, none).power, WithinAbs(found.power, 1e-12));
      }
}

TEST_CASE("sizes of a preference") {
  const Sizes sizes = preferenceSizes(0.7, 0.8, 0.05);
  REQUIRE(sizes.first.has_value());
  REQUIRE(sizes.stable.has_value());
  for (int n = 1; n <= sizes.stable->trials + 60; ++n) {
    const PreferencePower here = preferencePower(n, 0.7, 0.05);
    if (n < sizes.first->trials) CHECK(here.power < 0.8);
    if (n == sizes.first->trials) CHECK(here.critical == sizes.first->critical);
    if (n == sizes.stable->trials - 1) CHECK((here.power < 0.8 || sizes.first->trials == sizes.stable->trials));
    if (n >= sizes.stable->trials) CHECK(here.power >= 0.8);
  }
  CHECK(preferenceSizes(0.3, 0.8, 0.05).stable->trials == sizes.stable->trials);
  CHECK(preferenceSizes(0.5001, 0.9, 0.05).why == Reason::beyondSearch);
}

TEST_CASE("those without a preference are left out; what splitting them would do stands beside it") {
  // By hand: 9 to 1 is p 22/1024; with six more split evenly 12 to 4.
  const NoPreference found = noPreference(9, 1, 6, 0.05);
  CHECK_THAT(found.shareOfNone, WithinRel(6.0 / 16.0, 1e-12));
  CHECK_THAT(found.without.pValue, WithinRel(22.0 / 1024.0, 1e-12));
  CHECK(found.without.isShown);
  CHECK(found.splitEvenly.first == 12);
  CHECK(found.splitEvenly.second == 4);
  CHECK_THAT(found.splitEvenly.pValue, WithinRel(signTest(12, 4), 1e-10));
  CHECK(found.changes);  // 12 to 4 is p 0.077
  CHECK(found.splitAsVoted.first == 14);  // 6 x 9 / 10 = 5.4
  CHECK(found.splitAsVoted.second == 2);
  const NoPreference other = noPreference(1, 9, 6, 0.05);
  CHECK(other.splitEvenly.second == 12);
  CHECK(other.splitAsVoted.second == 14);
  // An odd one goes to the side that is behind, and so does an exact half.
  CHECK(noPreference(3, 1, 1, 0.05).splitEvenly.second == 2);
  CHECK(noPreference(3, 1, 2, 0.05).splitAsVoted.first == 4);
  CHECK(noPreference(3, 1, 2, 0.05).splitAsVoted.second == 2);
  const NoPreference nobody = noPreference(0, 0, 0, 0.05);
  CHECK(nobody.shareOfNone == 0.0);
  CHECK(nobody.without.pValue == 1.0);
  CHECK_FALSE(nobody.changes);
  CHECK(noPreference(0, 0, 7, 0.05).splitAsVoted.first + noPreference(0, 0, 7, 0.05).splitAsVoted.second == 7);
}

TEST_CASE("no vote is lost or made by splitting") {
  for (int first = 0; first <= 12; ++first)
    for (int second = 0; second <= 12; ++second)
      for (int none = 0; none <= 9; ++none) {
        const NoPreference found = noPreference(first, second, none, 0.05);
        for (const VoteTest& test : {found.splitEvenly, found.splitAsVoted}) {
          CHECK(test.first + test.second == first + second + none);
          CHECK(test.first >= first);
          CHECK(test.second >= second);
        }
      }
}

// Source beside the case in preference.json.
TEST_CASE("preference among those who tell") {
  const auto all = checks::family("preference");
  REQUIRE(all.size() == 1);
  for (const auto& c : all) {
    const auto &in = c["inputs"], &out = c["expected"];
    const int first = in["correct_prefer_first"], second = in["correct_prefer_second"], wrong = in["trials"].get<int>() - in["correct"].get<int>();
    const auto found = preferenceOfTellers(first, second, wrong, 1.0 / 3.0, 0.95);
    REQUIRE(found.has_value());
    const auto& share = out["share_first"];
    CHECK_THAT(found->estimate.value(), WithinAbs(share["estimate"].get<double>(), 1e-5));
    CHECK_THAT(found->low.value(), WithinAbs(share["low"].get<double>(), 1e-5));
    CHECK_THAT(found->high.value(), WithinAbs(share["high"].get<double>(), 1e-5));
    CHECK_THAT(twoSidedHalf(first, first + second), WithinRel(out["p_value"].get<double>(), 1e-9));
  }
}

TEST_CASE("impossible votes are refused by name") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_AS(preferencePower(-1, 0.5, 0.05), BadInput);
  CHECK_THROWS_AS(preferencePower(6, nan, 0.05), BadInput);
  CHECK_THROWS_AS(preferencePower(6, 0.5, 0.0), BadInput);
  CHECK_THROWS_AS(preferencePower(6, 0.5, 0.05, 1.0), BadInput);
  CHECK_THROWS_AS(preferencePower(6, 0.5, 0.05, nan), BadInput);
  CHECK_THROWS_AS(preferencePower(200'000, 0.5, 0.05, 0.1), BadInput);
  CHECK_THROWS_AS(preferenceSizes(0.5, 0.8, 0.05), BadInput);
  CHECK_THROWS_AS(preferenceSizes(0.7, nan, 0.05), BadInput);
  CHECK_THROWS_AS(noPreference(-1, 2, 3, 0.05), BadInput);
  CHECK_THROWS_AS(noPreference(10'000'000, 1, 0, 0.05), BadInput);
  CHECK_THROWS_AS(noPreference(1, 2, 3, nan), BadInput);
}
