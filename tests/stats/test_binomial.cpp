#include "stats/binomial.h"
#include "stats/choice.h"
#include "stats/error.h"
#include "stats/cases.h"
#include "stats/named.h"

#include <cmath>
#include <vector>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Sources (ISO tables, FAO, Lyon et al. 1992, exact fractions) stand beside each case in critical_numbers.json.
TEST_CASE("critical numbers are the printed ones, or where a print errs the exact ones") {
  int seen = 0;
  for (const auto& c : checks::family("critical_numbers")) {
    INFO(c["id"]);
    const auto& in = c["inputs"];
    const auto name = in["test"].get<std::string>();
    const bool twoSided = name == "paired_two_sided";
    // The tetrad with a named direction is no method of the program; its critical numbers are still those of its p0.
    const double guess = name == "tetrad_specified" ? checks::share(in["p0"]) : guessing(methodOfCase(name));
    if (in.contains("p0")) CHECK_THAT(guess, WithinRel(checks::share(in["p0"]), 1e-15));
    const int n = in["n"];
    std::set<std::string> levels;
    for (const auto& alpha : in["alphas"]) {
      const auto level = alpha.get<std::string>();
      levels.insert(level);
      const auto found = twoSided ? criticalLargerSide(n, std::stod(level)) : criticalNumber(n, guess, std::stod(level));
      INFO("alpha " << level);
      const auto& expected = c["expected"][level];
      REQUIRE(found.has_value() == !expected.is_null());
      if (found) CHECK(*found == expected.get<int>());
      ++seen;
    }
    checks::requireAllSeen(c["expected"], levels);
  }
  CHECK(seen > 400);
}

TEST_CASE("exact p of a count") {
  for (const auto& c : checks::family("exact_p")) {
    INFO(c["id"]);
    const auto& in = c["inputs"];
    const Method method = methodOfCase(in["test"]);
    REQUIRE((in["tail"] == "two") == (method == Method::preference));
    CHECK_THAT(pValue(method, in["correct"], in["n"]), WithinRel(c["expected"]["p"].get<double>(), c["tolerance"]["rel"].get<double>()));
    checks::requireAllSeen(c["expected"], {"p"});
  }
}

TEST_CASE("intervals of a share") {
  for (const auto& c : checks::family("binomial_ci")) {
    INFO(c["id"]);
    const auto& in = c["inputs"];
    const auto& out = c["expected"];
    const int x = in["x"], n = in["n"];
    const double level = in["conf"], tolerance = c["tolerance"]["abs"];
    const auto same = [&](const Interval& found, const char* key) {
      INFO(key);
      CHECK_THAT(found.low, WithinAbs(out[key][0].get<double>(), tolerance));
      CHECK_THAT(found.high, WithinAbs(out[key][1].get<double>(), tolerance));
    };
    if (in.contains("guess")) {
      const Method method = in["guess"].get<double>() == 0.5 ? Method::duoTrio : Method::triangle;
      const Estimate pd = shareInterval(method, x, n, level);
      CHECK_THAT(*pd.estimate, WithinAbs(out["pd_hat"].get<double>(), tolerance));
      same({*pd.low, *pd.high}, "pd_ci");
      checks::requireAllSeen(out, {"pd_hat", "pd_ci"});
      continue;
    }
    same(clopperPearson(x, n, level), "clopper_pearson");
    same(wilson(x, n, level), "wilson");
    // At no success and at all successes the Jeffreys interval is taken to the end (Brown, Cai and DasGupta 2001, p. 108).
    const Interval j = jeffreys(x, n, level);
    CHECK_THAT(j.low, WithinAbs(x == 0 ? 0.0 : out["jeffreys"][0].get<double>(), tolerance));
    CHECK_THAT(j.high, WithinAbs(x == n ? 1.0 : out["jeffreys"][1].get<double>(), tolerance));
    // Agresti and Coull's interval is not offered.
    checks::requireAllSeen(out, {"clopper_pearson", "wilson", "jeffreys", "agresti_coull"});
  }
}

TEST_CASE("tails agree with adding up whole-number chances") {
  // Brute force in whole numbers: with guessing 1/3 each of 3^n outcomes counts once; C(n, k) 2^(n-k) have k right.
  for (int n = 1; n <= 20; ++n) {
    std::vector<long long> ways(n + 1, 0);
    for (int k = 0; k <= n; ++k) {
      long long choose = 1;
      for (int i = 1; i <= k; ++i) choose = choose * (n - k + i) / i;
      ways[k] = choose << (n - k);
    }
    long long all = 1;
    for (int i = 0; i < n; ++i) all *= 3;
    long long above = 0;
    for (int x = n; x >= 0; --x) {
      above += ways[x];
      CHECK_THAT(upperTail(x, n, 1.0 / 3.0), WithinRel(static_cast<double>(above) / static_cast<double>(all), 1e-12));
      CHECK_THAT(binomialMass(x, n, 1.0 / 3.0), WithinRel(static_cast<double>(ways[x]) / static_cast<double>(all), 1e-12));
    }
    CHECK(above == all);
  }
}

TEST_CASE("tails are complements and monotone") {
  for (const double p : {0.01, 1.0 / 3.0, 0.5, 0.97})
    for (const int n : {1, 7, 40, 1000}) {
      double before = 1.0;
      for (int x = 0; x <= n + 1; ++x) {
        const double upper = upperTail(x, n, p);
        CHECK_THAT(upper + lowerTail(x - 1, n, p), WithinAbs(1.0, 1e-13));
        CHECK(upper <= before);
        before = upper;
      }
    }
}

TEST_CASE("five right of five pairs is exactly 1 in 32 and counts as reached") {
  CHECK(criticalNumber(5, 0.5, 1.0 / 32.0) == 5);
  CHECK_FALSE(criticalNumber(5, 0.5, 1.0 / 32.0 - 1e-9).has_value());
  CHECK_FALSE(criticalLargerSide(5, 0.05).has_value());  // 5 to 0: p .0625
  CHECK(criticalLargerSide(6, 0.05) == 6);
}

TEST_CASE("the critical number never falls when trials or strictness grow") {
  for (const double guess : {0.1, 1.0 / 3.0, 0.5}) {
    int before = 0;
    for (int n = 1; n <= 300; ++n) {
      const auto critical = criticalNumber(n, guess, 0.05);
      if (!critical) continue;
      CHECK(*critical >= before);
      CHECK(atMost(upperTail(*critical, n, guess), 0.05));
      CHECK_FALSE(atMost(upperTail(*critical - 1, n, guess), 0.05));
      const auto strict = criticalNumber(n, guess, 0.01);
      if (strict) CHECK(*strict >= *critical);
      before = *critical;
    }
  }
}

TEST_CASE("Clopper-Pearson covers at least what it says") {
  // Coverage added up over all counts; Clopper and Pearson 1934 promise at least the level at every share.
  for (const int n : {3, 10, 18})
    for (double p = 0.01; p < 1.0; p += 0.01) {
      double covered = 0.0;
      for (int x = 0; x <= n; ++x) {
        const Interval ends = clopperPearson(x, n, 0.95);
        if (ends.low <= p && p <= ends.high) covered += binomialMass(x, n, p);
      }
      CHECK(covered >= 0.95);
    }
}

TEST_CASE("impossible counts are refused by name") {
  const auto argumentOf = [](auto&& call) {
    try {
      call();
    } catch (const BadInput& error) {
      return error.argument();
    }
    return std::string("nothing was refused");
  };
  CHECK(argumentOf([] { pValue(Method::triangle, 7, 6); }) == "correct");
  CHECK(argumentOf([] { pValue(Method::triangle, -1, 6); }) == "correct");
  CHECK(argumentOf([] { pValue(Method::triangle, 0, -1); }) == "trials");
  CHECK(argumentOf([] { criticalNumber(6, 0.5, 0.0); }) == "alpha");
  CHECK(argumentOf([] { criticalNumber(6, 0.5, std::nan("")); }) == "alpha");
  CHECK(argumentOf([] { clopperPearson(0, 0, 0.95); }) == "trials");
  CHECK(argumentOf([] { wilson(1, 4, 1.0); }) == "level");
  CHECK(argumentOf([] { upperTail(1, 4, 1.5); }) == "p");
}
