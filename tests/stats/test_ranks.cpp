#include "ranked.h"
#include "stats/binomial.h"
#include "cases.h"
#include "stats/ranks/critical.h"
#include "stats/ranks/durbin.h"
#include "stats/ranks/friedman.h"
#include "stats/ranks/page.h"
#include "stats/ranks/sign_flip.h"
#include "stats/ranks/weighted.h"

#include <cmath>
#include <numeric>

using namespace oddglass::stats;
using checks::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Every case of tests/data/checks/ranking.json is looked at here; the critical rank-sum differences of Newell and MacFarlane also with the pairs.

namespace {

int looked(const std::string& prefix, void (*look)(const Json&)) {
  int count = 0;
  for (const Json& each : checks::family("ranking"))
    if (each.at("id").get<std::string>().starts_with(prefix)) {
      INFO(each.at("id"));
      look(each);
      ++count;
    }
  return count;
}

void lookAtFriedman(const Json& each) {
  const Json& wanted = each.at("expected");
  const double near = checks::toleranceOf(each);
  const auto ranks = ranked(each.at("inputs").at("data_rows_are_assessors").get<std::vector<std::vector<double>>>());
  const Friedman got = friedman(ranks);
  checks::requireAllSeen(wanted, {"rank_sums", "friedman_Q_tie_corrected", "p_chi2", "Q_uncorrected", "W", "LSD_rank_sum_5pct", "iman_davenport_F", "conover_t_mse_LSD_5pct"});
  CHECK(got.rankSums == wanted.at("rank_sums").get<std::vector<double>>());
  CHECK_THAT(got.statistic.value(), WithinAbs(wanted.at("friedman_Q_tie_corrected").get<double>(), near));
  CHECK_THAT(got.pValue.value(), WithinAbs(wanted.at("p_chi2").get<double>(), near));
  CHECK_THAT(friedmanOfSums(got.rankSums, got.tasters), WithinAbs(wanted.at("Q_uncorrected").get<double>(), near));
  CHECK_THAT(got.kendallW.value(), WithinAbs(wanted.at("W").get<double>(), near));
  CHECK_THAT(leastSignificantDifference(ranks.samples, got.tasters, 0.05), WithinAbs(wanted.at("LSD_rank_sum_5pct").get<double>(), near));
  CHECK_THAT(got.imanDavenport.value().F, WithinRel(wanted.at("iman_davenport_F").get<double>(), 1e-9));
}

void lookAtSums(const Json& each) {
  const Json& wanted = each.at("expected");
  const auto sums = each.at("inputs").at("rank_sums").get<std::vector<double>>();
  const int n = each.at("inputs").at("n_assessors"), k = static_cast<int>(sums.size());
  CHECK_THAT(friedmanOfSums(sums, n), WithinAbs(wanted.at("Q").get<double>(), checks::toleranceOf(each)));
  CHECK_THAT(leastSignificantDifference(k, n, 0.05), WithinAbs(wanted.at("LSD_5pct").get<double>(), checks::toleranceOf(each)));
  CHECK_THAT(leastSignificantDifference(k, n, 0.01), WithinAbs(wanted.at("LSD_1pct").get<double>(), checks::toleranceOf(each)));
}

void lookAtExactFriedman(const Json& each) {
  const int k = each.at("inputs").at("k"), n = each.at("inputs").at("n");
  const double seen = each.at("inputs").at("Q");
  double p = 0.0;
  REQUIRE(eachRankSums(untiedBlocks(k, n), 1e7, [&](const std::vector<int>& doubled, double chance) {
    std::vector<double> sums;
    for (int sum : doubled) sums.push_back(sum / 2.0);
    if (friedmanOfSums(sums, n) >= seen - 1e-9) p += chance;
  }));
  CHECK_THAT(p, WithinAbs(each.at("expected").at("p_exact").get<double>(), checks::toleranceOf(each)));
}

void lookAtRange(const Json& each) {
  for (int k : {3, 4}) {
    const std::string name = "exact_k" + std::to_string(k) + "_range_5pct";
    if (!each.at("expected").contains(name)) continue;
    const int n = each.at("inputs").at("n_panelists");
    std::vector<double> byRange(static_cast<std::size_t>(n * k), 0.0);
    REQUIRE(eachRankSums(untiedBlocks(k, n), 1e7, [&](const std::vector<int>& doubled, double chance) { byRange[static_cast<std::size_t>((doubled.back() - doubled.front()) / 2)] += chance; }));
    double tail = 0.0;
    std::size_t range = byRange.size();
    while (tail + byRange[range - 1] <= 0.05) tail += byRange[--range];
    CHECK(static_cast<int>(range) == each.at("expected").at(name).get<int>());
    if (k == 3) CHECK_THAT(tail, WithinAbs(each.at("expected").at("exact_k3_tail_at_that").get<double>(), 1e-12));
  }
}

void lookAtSingle(const Json& each) {
  // The rank sum of one sample chosen beforehand: weight 1 for it, none for the others.
  const int k = each.at("inputs").at("k"), n = each.at("inputs").at("n");
  std::vector<int> one(static_cast<std::size_t>(k), 0);
  one[0] = 1;
  const auto sums = weightedSums(untiedBlocks(k, n), one);
  REQUIRE(sums.has_value());
  const int lower = each.at("expected").at("lower"), upper = each.at("expected").at("upper");
  CHECK(1.0 - sums->atLeast(2 * lower + 1) <= 0.025);
  CHECK(1.0 - sums->atLeast(2 * lower + 3) > 0.025);
  CHECK(sums->atLeast(2 * upper) <= 0.025);
  CHECK(sums->atLeast(2 * upper - 2) > 0.025);
}

void lookAtWilcoxon(const Json& each) {
  // Wilcoxon's test is the sign flip of signed midranks, zeros left out.
  const Json &in = each.at("inputs"), &wanted = each.at("expected");
  std::vector<double> differences;
  if (in.contains("x")) for (std::size_t i = 0; i < in.at("x").size(); ++i) differences.push_back(in.at("x")[i].get<double>() - in.at("y")[i].get<double>());
  else differences = in.at("differences").get<std::vector<double>>();
  std::erase(differences, 0.0);
  std::vector<double> sizes, signedRanks;
  for (double each2 : differences) sizes.push_back(std::abs(each2));
  const auto ranks = midranks(sizes);
  double positive = 0.0;
  for (std::size_t i = 0; i < ranks.size(); ++i) {
    signedRanks.push_back(differences[i] > 0 ? ranks[i] : -ranks[i]);
    if (differences[i] > 0) positive += ranks[i];
  }
  const SignFlip got = signFlip(signedRanks);
  CHECK(positive == wanted.at("V").get<double>());
  CHECK_THAT(got.pTwoSided, WithinAbs(wanted.at(wanted.contains("p_two_exact") ? "p_two_exact" : "p_exact_two").get<double>(), 1e-12));
  CHECK_THAT(got.pGreater, WithinAbs(wanted.at(wanted.contains("p_greater_exact") ? "p_greater_exact" : "p_exact_greater").get<double>(), 1e-12));
}

void lookAtSigns(const Json& each) {
  const Json& in = each.at("inputs");
  if (in.contains("plus")) {
    const int plus = in.at("plus"), minus = in.at("minus");
    CHECK_THAT(twoSidedHalf(plus, plus + minus), WithinAbs(each.at("expected").at("p_two").get<double>(), 1e-12));
    return;
  }
  const int n = in.at("n");
  for (std::size_t i = 0; i < in.at("one_tail_alpha").size(); ++i) {
    const auto needed = criticalNumber(n, 0.5, in.at("one_tail_alpha")[i].get<double>());
    CHECK((needed ? Json(n - *needed) : Json()) == each.at("expected").at("critical_less_frequent_sign")[i]);
  }
}

void lookAtPage(const Json& each) {
  const Json &in = each.at("inputs"), &wanted = each.at("expected");
  if (in.contains("rank_sums_in_predicted_order")) {
    double l = 0.0;
    const auto sums = in.at("rank_sums_in_predicted_order").get<std::vector<double>>();
    for (std::size_t i = 0; i < sums.size(); ++i) l += static_cast<double>(i + 1) * sums[i];
    CHECK(l == wanted.at("L").get<double>());
    CHECK_THAT(pageZ(l, static_cast<int>(sums.size()), in.at("n")), WithinAbs(wanted.at("z").get<double>(), 1e-6));
    CHECK(pageCritical(4, in.at("n"), 0.001).critical == wanted.at("critical_0.001_exact_untied").get<double>());
  } else if (in.contains("alphas")) {
    for (const auto& [alpha, list] : wanted.at("critical_L").items())
      for (std::size_t i = 0; i < list.size(); ++i) CHECK(pageCritical(in.at("k"), in.at("n")[i], std::stod(alpha)).critical == list[i].get<double>());
  } else {
    const Page got = page(ranked(in.at("data").get<std::vector<std::vector<double>>>()), {0, 1, 2, 3, 4, 5});
    CHECK(got.l == wanted.at("L").get<double>());
    CHECK_THAT(got.pExact.value(), WithinAbs(wanted.at("p_exact").get<double>(), 1e-9));
  }
}

void lookAtDurbin(const Json& each) {
  const Json &in = each.at("inputs"), &wanted = each.at("expected");
  Factor sample{in.at("treatment").get<std::vector<int>>(), 0}, taster{in.at("block").get<std::vector<int>>(), 0};
  const int least = *std::min_element(sample.of.begin(), sample.of.end());
  for (int& of : sample.of) of -= least;
  sample.levels = *std::max_element(sample.of.begin(), sample.of.end()) + 1;
  taster.levels = *std::max_element(taster.of.begin(), taster.of.end()) + 1;
  const Durbin got = durbin(rankBlocks(in.at("rank").get<std::vector<double>>(), sample, taster));
  CHECK(got.blocks.isBalanced);
  CHECK(got.rankSums == wanted.at("rank_sums").get<std::vector<double>>());
  CHECK_THAT(got.statistic.value(), WithinAbs(wanted.at("T1").get<double>(), checks::toleranceOf(each)));
  CHECK_THAT(got.pValue.value(), WithinAbs(wanted.at("p_chi2").get<double>(), checks::toleranceOf(each)));
  CHECK_THAT(got.f.value().F, WithinAbs(wanted.at("T2").get<double>(), checks::toleranceOf(each)));
  CHECK_THAT(got.f.value().pValue, WithinAbs(wanted.at("p_F").get<double>(), checks::toleranceOf(each)));
  if (wanted.contains("df_F")) {
    CHECK(got.f->df1 == wanted.at("df_F")[0].get<int>());
    CHECK(got.f->df2 == wanted.at("df_F")[1].get<int>());
  }
}

}  // namespace

TEST_CASE("published cases of ranks") {
  CHECK(looked("friedman_", lookAtFriedman) == 4);
  CHECK(looked("ranksums_", lookAtSums) == 2);
  CHECK(looked("fried_exact_", lookAtExactFriedman) == 3);
  CHECK(looked("newell_", lookAtRange) == 5);
  CHECK(looked("kramer_single_", lookAtSingle) == 5);
  CHECK(looked("wilcoxon_", lookAtWilcoxon) == 6);
  CHECK(looked("sign_", lookAtSigns) == 14);
  CHECK(looked("page_", lookAtPage) == 3);
  CHECK(looked("durbin_", lookAtDurbin) == 2);
  CHECK(checks::family("ranking").size() == 44);
}

// Korosteleva 2013, Table A.5: critical values 6.2 (5 %) and 9.6 (1 %) for 3 samples and 10 tasters.
TEST_CASE("critical values of Friedman's statistic") {
  CHECK_THAT(friedmanCritical(3, 10, 0.05).critical.value(), WithinAbs(6.2, 1e-9));
  CHECK_THAT(friedmanCritical(3, 10, 0.01).critical.value(), WithinAbs(9.6, 1e-9));
  CHECK(friedmanCritical(3, 10, 0.05).alphaActual <= 0.05);
  // Two tasters and three samples: even full agreement has p 1/6.
  CHECK_FALSE(friedmanCritical(3, 2, 0.05).critical.has_value());
  CHECK_THAT(friedmanCritical(3, 2, 0.05).alphaActual, WithinAbs(1.0 / 6.0, 1e-12));
  // Too many to count: chi-square with 19 df, 30.144 in every printed table.
  const auto large = friedmanCritical(20, 50, 0.05);
  CHECK_FALSE(large.isExact);
  CHECK_THAT(large.critical.value(), WithinAbs(30.144, 5e-4));
}
