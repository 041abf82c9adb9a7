#include "stats/posterior.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/named.h"

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Sources beside each case in bayes.json.
TEST_CASE("what a count says about a share") {
  for (const auto& c : checks::family("bayes")) {
    INFO(c["id"]);
    const auto& in = c["inputs"];
    const auto& out = c["expected"];
    if (in.contains("method")) {
      const auto factor = bayesFactorDifference(in["correct"], in["trials"], guessing(methodOfCase(in["method"])));
      CHECK_THAT(factor.value(), WithinRel(out["bayes_factor_difference"].get<double>(), c["tolerance"]["rel"].get<double>()));
      checks::requireAllSeen(out, {"bayes_factor_difference"});
      continue;
    }
    const double tolerance = c["tolerance"]["abs"];
    if (in.contains("guess")) {
      const auto pd = SharePosterior::of(in["x"], in["n"], in["guess"]).value();
      CHECK_THAT(pd.mean(), WithinAbs(out["posterior_mean_pd"].get<double>(), tolerance));
      CHECK_THAT(pd.above(0.3), WithinAbs(out["P_pd_gt_0.3"].get<double>(), tolerance));
      CHECK_THAT(pd.quantile(0.05), WithinAbs(out["q05"].get<double>(), tolerance));
      CHECK_THAT(pd.quantile(0.95), WithinAbs(out["q95"].get<double>(), tolerance));
      checks::requireAllSeen(out, {"posterior_mean_pd", "P_pd_gt_0.3", "q05", "q95"});
      continue;
    }
    // A Beta(a, b) beforehand is a uniform one after a - 1 right answers of a + b - 2.
    const int a = in["prior"][0], b = in["prior"][1];
    const auto p = SharePosterior::of(in["x"].get<int>() + a - 1, in["n"].get<int>() + a + b - 2, 0.0).value();
    CHECK_THAT(p.mean(), WithinAbs(out["mean"].get<double>(), tolerance));
    CHECK_THAT(p.quantile(0.025), WithinAbs(out["ci95_equal_tail"][0].get<double>(), tolerance));
    CHECK_THAT(p.quantile(0.975), WithinAbs(out["ci95_equal_tail"][1].get<double>(), tolerance));
    CHECK_THAT(p.above(0.5), WithinAbs(out["P_p_gt_half"].get<double>(), tolerance));
    CHECK_THAT(p.above(1.0 / 3.0), WithinAbs(out["P_p_gt_third"].get<double>(), tolerance));
    // The mode and the two parameters are not offered; the parameters are checked through everything above.
    checks::requireAllSeen(out, {"posterior", "mean", "mode", "ci95_equal_tail", "P_p_gt_half", "P_p_gt_third"});
  }
}

TEST_CASE("six of twelve pairs speak 2.9 to 1 for nobody, two of six triangles 2.7 to 1") {
  // By hand for pairs: the uniform share gives (1 - 1/2) x 2 / 13 = 1/13, guessing gives C(12, 6) / 4096 = 924/4096.
  CHECK_THAT(*bayesFactorDifference(6, 12, 0.5), WithinRel((1.0 / 13.0) / (924.0 / 4096.0), 1e-12));
  // Triangles: uniform pd from 1/3 upwards; 1 / .37142857 = 2.69 (closed form in whole numbers: 13/35 for the factor).
  CHECK_THAT(*bayesFactorDifference(2, 6, 1.0 / 3.0), WithinRel(13.0 / 35.0, 1e-9));
}

TEST_CASE("the posterior's quantiles and tails are each other's way back") {
  for (const double guess : {0.0, 0.1, 1.0 / 3.0, 0.5})
    for (const int n : {1, 6, 18, 200})
      for (int x = 0; x <= n; x += n > 50 ? 33 : 1) {
        const auto p = SharePosterior::of(x, n, guess);
        REQUIRE(p.has_value());
        for (const double q : {0.025, 0.5, 0.95}) CHECK_THAT(p->above(p->quantile(q)), WithinAbs(1.0 - q, 1e-9));
        CHECK(p->above(0.0) == 1.0);
        CHECK(p->above(1.0) == 0.0);
        CHECK(p->mean() > 0.0);
        CHECK(p->mean() < 1.0);
      }
}

TEST_CASE("without trials nothing was learnt") {
  const auto p = SharePosterior::of(0, 0, 1.0 / 3.0).value();
  CHECK_THAT(p.quantile(0.5), WithinAbs(0.5, 1e-12));
  CHECK_THAT(*bayesFactorDifference(0, 0, 1.0 / 3.0), WithinRel(1.0, 1e-12));
}

TEST_CASE("figures beyond the range of numbers are left empty, never infinite") {
  CHECK_FALSE(SharePosterior::of(0, 5000, 0.5).has_value());
  CHECK_FALSE(bayesFactorDifference(9000, 9000, 0.1).has_value());
  CHECK_THROWS_AS(SharePosterior::of(2, 1, 0.5), BadInput);
  CHECK_THROWS_AS(bayesFactorDifference(1, 2, 0.0), BadInput);
}
