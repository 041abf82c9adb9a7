#include "stats/lean/expectation.h"

#include "stats/cases.h"
#include "stats/error.h"

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Source beside the case in people_and_time.json.
TEST_CASE("expectations: published case") {
  int looked = 0;
  for (const auto& c : checks::family("people_and_time")) {
    if (c["id"] != "expectation_scores") continue;
    std::vector<bool> cameTrue;
    for (const auto& each : c["inputs"]["came_true"]) cameTrue.push_back(each == 1);
    const auto found = calibration(c["inputs"]["probability"].get<std::vector<double>>(), cameTrue, 0.95);
    const auto& out = c["expected"];
    CHECK_THAT(found.brier, WithinAbs(out["brier"].get<double>(), 1e-10));
    CHECK_THAT(found.logScore, WithinAbs(out["log_score"].get<double>(), 1e-10));
    CHECK_THAT(found.expectedHits, WithinAbs(out["expected_hits"].get<double>(), 1e-10));
    CHECK(found.hits == out["hits"].get<int>());
    CHECK_THAT(found.pValue.value(), WithinAbs(out["p_value"].get<double>(), 1e-10));
    CHECK(found.curve.empty());
    CHECK(found.why == Reason::fewSessions);
    checks::requireAllSeen(out, {"brier", "log_score", "expected_hits", "hits", "p_value", "brier_of_50"});  // the last is one half's by definition
    ++looked;
  }
  CHECK(looked == 1);
}

TEST_CASE("the Poisson-binomial is the sum over all outcomes") {
  const std::vector<double> p{0.1, 0.25, 0.5, 0.8, 0.99, 0.6};
  std::vector<double> brute(p.size() + 1);
  for (int outcome = 0; outcome < 64; ++outcome) {
    double chance = 1.0;
    int hits = 0;
    for (int i = 0; i < 6; ++i) {
      const bool is = outcome >> i & 1;
      chance *= is ? p[i] : 1.0 - p[i];
      hits += is;
    }
    brute[hits] += chance;
  }
  const auto mass = poissonBinomial(p);
  REQUIRE(mass.size() == brute.size());
  for (std::size_t k = 0; k < mass.size(); ++k) CHECK_THAT(mass[k], WithinRel(brute[k], 1e-12));
  CHECK(poissonBinomial({}) == std::vector{1.0});
  CHECK_THROWS_AS(poissonBinomial({1.5}), BadInput);
}

TEST_CASE("a curve from 20 expectations") {
  std::vector<double> p;
  std::vector<bool> cameTrue;
  for (int i = 0; i < 20; ++i) p.push_back(i < 10 ? 0.2 : 0.9), cameTrue.push_back(i % 4 == 0);
  const auto found = calibration(p, cameTrue, 0.95);
  REQUIRE(found.curve.size() == 2);
  CHECK(found.curve[0].low == 0.2);  // 0.2 belongs to the second fifth
  CHECK(found.curve[0].count == 10);
  CHECK_THAT(found.curve[0].meanProbability, WithinAbs(0.2, 1e-12));
  CHECK_THAT(found.curve[0].cameTrue.estimate.value(), WithinAbs(0.3, 1e-12));
  // Clopper-Pearson of 3 of 10 at 95 %: 0.0667 to 0.6525 (any table of exact limits).
  CHECK_THAT(found.curve[0].cameTrue.low.value(), WithinAbs(0.0667, 1e-4));
  CHECK_THAT(found.curve[0].cameTrue.high.value(), WithinAbs(0.6525, 1e-4));
  CHECK_FALSE(found.why);
}

TEST_CASE("impossible expectations are refused by name") {
  const auto refused = [](const std::vector<double>& p, const std::vector<bool>& cameTrue, const char* argument) {
    try {
      calibration(p, cameTrue, 0.95);
      FAIL("not refused");
    } catch (const BadInput& bad) {
      CHECK(bad.argument() == argument);
    }
  };
  refused({}, {}, "probability");
  refused({0.0}, {true}, "probability");
  refused({1.0}, {true}, "probability");
  refused({NAN}, {true}, "probability");
  refused({0.5}, {}, "cameTrue");
}
