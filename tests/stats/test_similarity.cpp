#include "stats/similarity.h"

#include "stats/binomial.h"
#include "stats/cases.h"
#include "stats/error.h"
#include "stats/named.h"

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {
void requireLargest(const checks::Json& expected, const std::optional<int>& found) {
  REQUIRE(found.has_value() == !expected.is_null());
  if (found) CHECK(*found == expected.get<int>());
}
}  // namespace

// Sources beside each case in similarity.json. The printed table leaves out counts below half of the trials; ours does not.
TEST_CASE("largest count for alikeness") {
  for (const auto& c : checks::family("similarity")) {
    INFO(c["id"]);
    const auto& in = c["inputs"];
    const double guess = guessing(methodOfCase(in["test"]));
    const double beta = checks::share(in["beta"]);
    const int n = in["n"];
    const auto& out = c["expected"]["max_correct"];
    if (in.contains("pd")) {
      requireLargest(out, largestAlike(n, guess, in["pd"], beta));
      checks::requireAllSeen(c["expected"], {"max_correct"});
      continue;
    }
    REQUIRE(out.size() == in["pd_percent"].size());
    for (std::size_t k = 0; k < out.size(); ++k) {
      const auto found = largestAlike(n, guess, in["pd_percent"][k].get<double>() / 100.0, beta);
      requireLargest(out[k], found);
      const auto& printed = c["expected"]["printed_dash_when_below_n/2"][k];
      if (!printed.is_null()) CHECK(printed.get<int>() == *found);
    }
    checks::requireAllSeen(c["expected"], {"max_correct", "printed_dash_when_below_n/2"});
  }
}

TEST_CASE("the largest count is few enough and one more is not") {
  for (int n = 1; n <= 120; ++n)
    for (const double limit : {0.1, 0.3, 0.5}) {
      const auto largest = largestAlike(n, 1.0 / 3.0, limit, 0.05);
      CHECK_FALSE(atMost(alikePValue(largest ? *largest + 1 : 0, n, 1.0 / 3.0, limit), 0.05));
      if (largest) CHECK(atMost(alikePValue(*largest, n, 1.0 / 3.0, limit), 0.05));
    }
}

TEST_CASE("chance of alikeness when nobody can tell: 9 % with six triangles, 59 % with 24, limit 3 in 10") {
  // With the limit 3 in 10 an answer is right 8 times in 15. Six: 0 right has (7/15)^6 = .010, 1 right .081: so the largest is 0,
  // and by guessing it comes up (2/3)^6 = 64/729.
  CHECK(largestAlike(6, 1.0 / 3.0, 0.3, 0.05) == 0);
  CHECK_THAT(alikePower(6, 1.0 / 3.0, 0.3, 0.05, 0.0), WithinRel(64.0 / 729.0, 1e-12));
  // 24: no hand figure; adding up the masses is the second way.
  const auto largest = largestAlike(24, 1.0 / 3.0, 0.3, 0.05);
  REQUIRE(largest.has_value());
  double sum = 0.0;
  for (int x = 0; x <= *largest; ++x) sum += binomialMass(x, 24, 1.0 / 3.0);
  CHECK_THAT(alikePower(24, 1.0 / 3.0, 0.3, 0.05, 0.0), WithinRel(sum, 1e-12));
  CHECK_THAT(sum, WithinAbs(0.59, 0.005));
}

TEST_CASE("more who can tell make alikeness rarer") {
  double before = 1.0;
  for (double pd = 0.0; pd <= 1.0; pd += 0.1) {
    const double here = alikePower(24, 1.0 / 3.0, 0.3, 0.05, pd);
    CHECK(here < before);
    before = here;
  }
  // At the limit itself the chance is alpha at most.
  CHECK(atMost(alikePower(24, 1.0 / 3.0, 0.3, 0.05, 0.3), 0.05));
}

TEST_CASE("limits that mean nothing are refused") {
  CHECK_THROWS_AS(largestAlike(12, 1.0 / 3.0, 0.0, 0.05), BadInput);
  CHECK_THROWS_AS(largestAlike(12, 1.0 / 3.0, 1.0, 0.05), BadInput);
  CHECK_THROWS_AS(alikePValue(13, 12, 1.0 / 3.0, 0.3), BadInput);
  CHECK_FALSE(largestAlike(0, 1.0 / 3.0, 0.3, 0.05).has_value());
}
