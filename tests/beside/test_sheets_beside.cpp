#include "beside/other.h"
#include "stats/right/just_right.h"
#include "stats/sheets.h"

using namespace oddglass::stats;
using beside::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Just-about-right answers beside R and SciPy in the same run: on open data that come with R, and on seeded random data.

namespace {

std::vector<double> numbers(const Json& list) { return list.get<std::vector<double>>(); }

/// Those who said right, and those on the lower side.
RightSample twoGroups(const std::vector<double>& right, const std::vector<double>& low, double level = 0.95) {
  std::vector<int> category(right.size(), 3);
  category.resize(right.size() + low.size(), 2);
  std::vector<double> liking = right;
  liking.insert(liking.end(), low.begin(), low.end());
  return justRight(rightRows(category, liking), level).at(0);
}

}  // namespace

// Student 1908, Biometrika 6:1 (hours of sleep); Dobson 1983 (plant growth): both as R has them.
TEST_CASE("drops on open data beside R's t test and its splits by combn") {
  if (!beside::hasR()) return;
  const Json theirs = beside::inR(R"R(
one <- function(r, s) {
  t <- t.test(r, s, var.equal = TRUE); all <- c(r, s); n <- length(s)
  sums <- combn(length(all), n, function(i) sum(all[i])); d <- abs((sum(all) - sums) / length(r) - sums / n)
  list(right = r, side = s, drop = unname(t$estimate[1] - t$estimate[2]), low = t$conf.int[1], high = t$conf.int[2], p = t$p.value, se = unname(t$stderr), exact = mean(d >= abs(mean(r) - mean(s)) - 1e-9))
}
g <- split(PlantGrowth$weight, PlantGrowth$group)
out(list(one(sleep$extra[11:20], sleep$extra[1:10]), one(g$ctrl, g$trt1), one(g$trt2, g$trt1))))R");
  REQUIRE(theirs.size() == 3);
  for (const Json& each : theirs) {
    const RightSample got = twoGroups(numbers(each.at("right")), numbers(each.at("side")));
    CHECK_THAT(got.low.drop.estimate.value(), WithinRel(each.at("drop").at(0).get<double>(), 1e-10));
    CHECK_THAT(got.low.drop.se.value(), WithinRel(each.at("se").at(0).get<double>(), 1e-10));
    CHECK_THAT(got.low.drop.low.value(), WithinAbs(each.at("low").at(0).get<double>(), 1e-8));
    CHECK_THAT(got.low.drop.high.value(), WithinAbs(each.at("high").at(0).get<double>(), 1e-8));
    CHECK_THAT(got.low.drop.pValue.value(), WithinRel(each.at("p").at(0).get<double>(), 1e-9));
    CHECK(got.low.permuted.value().isExact);
    CHECK_THAT(got.low.permuted->pValue, WithinRel(each.at("exact").at(0).get<double>(), 1e-10));
  }
}

TEST_CASE("drops on random data beside SciPy: pooled t, every split, the sign test between the sides") {
  if (!beside::hasPython()) return;
  beside::Seeded chance(201);
  for (const auto& [right, low, high, marks] : {std::tuple{6, 4, 3, 9}, {9, 5, 0, 9}, {5, 5, 4, 0}, {12, 9, 6, 5}}) {
    std::vector<int> category;
    std::vector<double> liking[3], all;
    for (const auto& [said, count] : {std::pair{3, right}, {1, low}, {5, high}})
      for (int i = 0; i < count; ++i) {
        const double value = (marks > 0 ? 1.0 + chance.below(marks) : chance.normal()) - (said == 3 ? 0.0 : 0.8);
        category.push_back(said);
        all.push_back(value);
        liking[said / 2].push_back(value);
      }
    const RightSample got = justRight(rightRows(category, all), 0.9).at(0);
    const Json theirs = beside::inPython("import json, numpy as np, scipy.stats as s\nr, l = np.array(" + beside::forPython(liking[1]) + "), np.array(" + beside::forPython(liking[0]) + ")\n" + R"(
t = s.ttest_ind(r, l)
n, m = len(r), len(l)
se = np.sqrt(((n - 1) * r.var(ddof=1) + (m - 1) * l.var(ddof=1)) / (n + m - 2) * (1 / n + 1 / m))
q = s.t.ppf(0.95, n + m - 2)
p = s.permutation_test((r, l), lambda a, b, axis: np.abs(a.mean(axis=axis) - b.mean(axis=axis)), vectorized=True, n_resamples=np.inf, alternative='greater').pvalue
print(json.dumps([t.pvalue, r.mean() - l.mean() - q * se, r.mean() - l.mean() + q * se, p, s.binomtest()" + std::to_string(low) + ", " + std::to_string(low + high) + ").pvalue]))");
    CHECK_THAT(got.low.drop.pValue.value(), WithinRel(theirs.at(0).get<double>(), 1e-9));
    CHECK_THAT(got.low.drop.low.value(), WithinAbs(theirs.at(1).get<double>(), 1e-9));
    CHECK_THAT(got.low.drop.high.value(), WithinAbs(theirs.at(2).get<double>(), 1e-9));
    CHECK(got.low.permuted.value().isExact);
    CHECK_THAT(got.low.permuted->pValue, WithinRel(theirs.at(3).get<double>(), 1e-9));
    CHECK_THAT(got.pSides.value(), WithinRel(theirs.at(4).get<double>(), 1e-12));
  }
}
