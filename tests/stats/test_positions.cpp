#include "stats/positions.h"

#include "stats/error.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

TEST_CASE("six choices all on one of three places") {
  // By hand: expected 2 each, statistic (16 + 4 + 4) / 2 = 12; only the 3 outcomes of 3^6 are as far: p = 3/729.
  const PositionCheck check = positionCheck({6, 0, 0});
  CHECK_THAT(check.statistic, WithinRel(12.0, 1e-12));
  CHECK(check.df == 2);
  CHECK_THAT(check.pExact.value(), WithinRel(3.0 / 729.0, 1e-9));
  CHECK_THAT(check.pValue, WithinRel(std::exp(-6.0), 1e-12));  // chi-square with 2 df is exponential: p = exp(-statistic / 2)
}

TEST_CASE("exact p by listing every outcome") {
  for (const auto& seen : {std::vector<int>{4, 1, 1}, {2, 2, 1}, {0, 3, 2}, {3, 0, 4}}) {
    const int n = seen[0] + seen[1] + seen[2];
    const auto score = [](int a, int b, int c) { return a * a + b * b + c * c; };  // grows with Pearson's statistic
    int as = 0, all = 0;
    const auto list = [&](auto&& self, int left, int a, int b, int c) -> void {
      if (left == 0) {
        ++all;
        as += score(a, b, c) >= score(seen[0], seen[1], seen[2]);
        return;
      }
      self(self, left - 1, a + 1, b, c);
      self(self, left - 1, a, b + 1, c);
      self(self, left - 1, a, b, c + 1);
    };
    list(list, n, 0, 0, 0);
    CHECK_THAT(positionCheck(seen).pExact.value(), WithinRel(static_cast<double>(as) / all, 1e-9));
  }
}

TEST_CASE("from 5 expected on the chi-square stands alone") {
  CHECK_FALSE(positionCheck({5, 6, 4}).pExact.has_value());
  CHECK(positionCheck({5, 5, 4}).pExact.has_value());
  CHECK(positionCheck({3, 3}).pExact.value() == 1.0);
}

TEST_CASE("wrong answers only: chance follows from where the odd cups stood") {
  // Two wrong, odd cup second both times: by chance first or third. Both on the first: 1/2 together with both on the third.
  const auto check = habitCheck({{0, 1}, {0, 1}});
  REQUIRE(check.has_value());
  CHECK(check->counts == std::vector<int>{2, 0, 0});
  CHECK(check->expected == std::vector<double>{1.0, 0.0, 1.0});
  CHECK_THAT(check->pExact, WithinRel(0.5, 1e-12));
}

TEST_CASE("wrong answers by listing every way to be wrong") {
  const std::vector<WrongChoice> wrong{{0, 1}, {0, 2}, {0, 1}, {1, 2}, {2, 0}, {0, 2}};
  const auto check = habitCheck(wrong);
  REQUIRE(check.has_value());
  int as = 0;
  for (int way = 0; way < 64; ++way) {
    std::vector<int> counts(3, 0);
    for (int k = 0; k < 6; ++k) {
      const int odd = wrong[k].odd, first = odd == 0 ? 1 : 0, second = odd == 2 ? 1 : 2;
      ++counts[(way >> k) & 1 ? second : first];
    }
    double statistic = 0.0;
    for (int place = 0; place < 3; ++place) statistic += std::pow(counts[place] - check->expected[place], 2) / check->expected[place];
    as += statistic >= check->statistic - 1e-9;
  }
  CHECK_THAT(check->pExact, WithinRel(as / 64.0, 1e-12));
}

TEST_CASE("nothing wrong, nothing to look at") {
  CHECK_FALSE(habitCheck({}).has_value());
  CHECK_THROWS_AS(habitCheck({{1, 1}}), BadInput);
  CHECK_THROWS_AS(habitCheck({{3, 1}}), BadInput);
  CHECK_THROWS_AS(positionCheck({4}), BadInput);
  CHECK_THROWS_AS(positionCheck({0, 0, 0}), BadInput);
  CHECK_THROWS_AS(positionCheck({1, -1, 0}), BadInput);
}
