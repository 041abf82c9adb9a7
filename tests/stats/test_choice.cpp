#include "stats/choice.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/named.h"
#include "stats/psychometric.h"

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Sources beside each case in thurstone_dprime.json.
TEST_CASE("d' from a count, its standard error and its intervals") {
  for (const auto& c : checks::family("thurstone_dprime")) {
    INFO(c["id"]);
    const auto& in = c["inputs"];
    const auto& out = c["expected"];
    const auto& tolerance = c["tolerance"];
    const int n = in["n"];
    const double level = in.contains("level") ? in["level"].get<double>() : 0.95;
    const auto found = dPrimeInterval(methodOfCase(in["method"]), in["correct"], n, level);
    REQUIRE(found.estimate.has_value());
    const auto same = [&](const std::optional<double>& value, const char* key) {
      if (!out.contains(key)) return;
      REQUIRE(value.has_value());
      CHECK_THAT(*value, WithinAbs(out[key].get<double>(), (tolerance.contains("abs") ? tolerance["abs"] : tolerance["d_prime"]).get<double>()));
    };
    same(found.estimate, "d_prime");
    same(found.low, "lower");
    same(found.high, "upper");
    same(found.exactLow, "exact_low");
    same(found.exactHigh, "exact_high");
    if (out.contains("se")) {
      REQUIRE(found.standardError.has_value());
      CHECK_THAT(*found.standardError, WithinRel(out["se"].get<double>(), tolerance["se_rel"].get<double>()));
      CHECK_THAT(*found.standardError * *found.standardError * n, WithinRel(out["B"].get<double>(), tolerance["B_rel"].get<double>() * 2.0));
    }
    checks::requireAllSeen(out, {"d_prime", "lower", "upper", "exact_low", "exact_high", "se", "B"});
  }
}

TEST_CASE("all right: no finite d', but a lower limit") {
  const Counted all = count(Method::triangle, 6, 6, 0.05, 0.95);
  CHECK_FALSE(all.dPrime.estimate.has_value());
  CHECK(all.dPrime.why == Reason::allRight);
  CHECK(*all.dPrime.low > 0.0);
  CHECK(*all.dPrime.exactLow > 0.0);
  CHECK_FALSE(all.dPrime.high.has_value());
  CHECK_FALSE(all.dPrime.exactHigh.has_value());
  CHECK_FALSE(all.dPrime.standardError.has_value());
  CHECK(all.pd.estimate == 1.0);
  // All right of n: the likelihood limit is where n log pc = -chi-square / 2, whatever the method (3.841459 from any table).
  CHECK_THAT(rightAnswers(Method::triangle, *all.dPrime.low), WithinAbs(std::exp(-3.841458820694124 / 12.0), 1e-9));
}

TEST_CASE("at or below chance d' and the share are 0 from 0") {
  for (const int right : {0, 1, 2}) {
    const Counted few = count(Method::triangle, right, 6, 0.05, 0.95);
    CHECK(few.dPrime.estimate == 0.0);
    CHECK(few.dPrime.low == 0.0);
    CHECK(few.dPrime.exactLow == 0.0);
    CHECK(*few.dPrime.high > 0.0);
    CHECK(few.pd.estimate == 0.0);
    CHECK(few.pd.low == 0.0);
    CHECK_FALSE(few.dPrime.standardError.has_value());
  }
}

TEST_CASE("test and interval agree at level 1 - 2 alpha") {
  // Both ask P(X >= x | guess) against alpha: the lower end leaves 0 exactly when the count is shown.
  for (const Method method : {Method::triangle, Method::pair, Method::twoOutOfFive})
    for (int n = 3; n <= 30; ++n)
      for (int x = 0; x <= n; ++x) {
        const bool shown = atMost(pValue(method, x, n), 0.05);
        CHECK((*shareInterval(method, x, n, 0.90).low > 1e-12) == shown);
      }
}

TEST_CASE("5 of 7 triangles: shown at .045, but the 95 % interval starts at 0") {
  // By hand: (21 x 4 + 7 x 2 + 1) / 3^7 = 99 / 2187 = .0453.
  const Counted c = count(Method::triangle, 5, 7, 0.05, 0.95);
  CHECK_THAT(c.pValue, WithinRel(99.0 / 2187.0, 1e-12));
  CHECK(c.critical == 5);
  CHECK(c.pd.low == 0.0);
}

TEST_CASE("a preference is two-sided and has no share who tell") {
  const Counted c = count(Method::preference, 5, 5, 0.05, 0.95);
  CHECK_THAT(c.pValue, WithinRel(0.0625, 1e-12));
  CHECK_FALSE(c.critical.has_value());
  CHECK_FALSE(c.pd.estimate.has_value());
  CHECK_FALSE(c.dPrime.estimate.has_value());
  CHECK(c.why == Reason::noGuessing);
  CHECK(pValue(Method::preference, 2, 9) == pValue(Method::preference, 7, 9));
  CHECK(pValue(Method::preference, 4, 8) == 1.0);
}

TEST_CASE("no trials: no number, and the reason") {
  const Counted c = count(Method::triangle, 0, 0, 0.05, 0.95);
  CHECK(c.pValue == 1.0);
  CHECK_FALSE(c.critical.has_value());
  CHECK_FALSE(c.pc.estimate.has_value());
  CHECK(c.why == Reason::noTrials);
  CHECK_THROWS_AS(dPrimeInterval(Method::triangle, 0, 0, 0.95), BadInput);
}

TEST_CASE("nothing that is not a number leaves, for every count") {
  const auto finite = [](const std::optional<double>& value) { return !value || std::isfinite(*value); };
  for (const Method method : {Method::triangle, Method::duoTrio, Method::tetrad, Method::pair, Method::threeAfc})
    for (const int n : {1, 2, 5, 18, 400})
      for (int x = 0; x <= n; x += n > 100 ? 80 : 1) {
        const Counted c = count(method, x, n, 0.05, 0.95);
        for (const auto& value : {c.pc.estimate, c.pc.low, c.pc.high, c.pd.estimate, c.pd.low, c.pd.high, c.dPrime.estimate, c.dPrime.low,
                                  c.dPrime.high, c.dPrime.exactLow, c.dPrime.exactHigh, c.dPrime.standardError})
          CHECK(finite(value));
        if (c.dPrime.estimate) CHECK(*c.dPrime.low <= *c.dPrime.estimate);
        if (c.dPrime.estimate && c.dPrime.high) CHECK(*c.dPrime.high >= *c.dPrime.estimate);
        CHECK(*c.dPrime.exactLow <= *c.dPrime.low + 1e-9);
      }
}
