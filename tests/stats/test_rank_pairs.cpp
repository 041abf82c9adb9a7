#include "cases.h"
#include "ranked.h"
#include "stats/error.h"
#include "stats/ranks/pairs.h"

#include <boost/math/distributions/students_t.hpp>

#include <cmath>

using namespace oddglass::stats;
using checks::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Conover's least significant difference from tests/data/checks/ranking.json: a difference of rank sums as large as that has p = 0.05 before Holm.
TEST_CASE("Conover's p of a difference follows from the published least difference") {
  int looked = 0;
  for (const Json& each : checks::family("ranking")) {
    if (!each.at("expected").contains("conover_t_mse_LSD_5pct")) continue;
    INFO(each.at("id"));
    const auto ranks = ranked(each.at("inputs").at("data_rows_are_assessors").get<std::vector<std::vector<double>>>());
    const int n = static_cast<int>(ranks.blocks.size()), df = (n - 1) * (ranks.samples - 1);
    const boost::math::students_t t(df);
    const double error = each.at("expected").at("conover_t_mse_LSD_5pct").get<double>() / boost::math::quantile(t, 0.975);
    const RankPairs got = rankPairs(ranks);
    // The largest difference is the first step of Holm: its p times the number of pairs.
    const auto largest = *std::max_element(got.pairs.begin(), got.pairs.end(), [](const RankPair& a, const RankPair& b) { return std::abs(a.difference) < std::abs(b.difference); });
    const double p = 2.0 * boost::math::cdf(boost::math::complement(t, std::abs(largest.difference) / error));
    CHECK_THAT(largest.pConoverHolm.value(), WithinRel(std::min(1.0, p * static_cast<double>(got.pairs.size())), 1e-7));
    for (const RankPair& pair : got.pairs) {
      CHECK(pair.a < pair.b);
      CHECK(pair.difference == (doubledRankSums(ranks)[static_cast<std::size_t>(pair.a)] - doubledRankSums(ranks)[static_cast<std::size_t>(pair.b)]) / 2.0);
    }
    ++looked;
  }
  CHECK(looked == 4);
}

// Two samples: the studentized range of two is sqrt(2) times a normal's absolute value, so that Nemenyi's p is 2 (1 - Phi(|R1 - R2| / sqrt(n))).
TEST_CASE("Nemenyi for two samples is the normal") {
  const RankPairs got = rankPairs(ranked({{1, 2}, {1, 2}, {1, 2}, {2, 1}, {1, 2}, {1, 2}, {1, 2}}));
  CHECK(got.pairs.at(0).difference == -5.0);
  CHECK_THAT(got.pairs[0].pNemenyi.value(), WithinRel(std::erfc(5.0 / std::sqrt(7.0) / std::sqrt(2.0)), 1e-9));
}

TEST_CASE("pairs from a balanced incomplete design, and pairs that cannot be judged") {
  // Conover 1999, 5.8, the ice-cream design: T1 = 12, so that the standard error is sqrt(2 r (A - C) (1 - T1 / (b (k - 1))) / df) with A - C = 14, r = 3, b = 7,
  // k = 3 and 8 df: sqrt(2 * 3 * 14 * (1 - 12 / 14) / 8) = sqrt(1.5).
  std::vector<double> values;
  Factor sample, taster;
  for (const Json& each : checks::family("ranking"))
    if (each.at("id") == "durbin_icecream") {
      values = each.at("inputs").at("rank").get<std::vector<double>>();
      for (int treatment : each.at("inputs").at("treatment").get<std::vector<int>>()) sample.of.push_back(treatment - 1);
      taster.of = each.at("inputs").at("block").get<std::vector<int>>();
    }
  REQUIRE(values.size() == 21);
  sample.levels = taster.levels = 7;
  const RankPairs got = rankPairs(rankBlocks(values, sample, taster));
  REQUIRE(got.pairs.size() == 21);
  const boost::math::students_t t(8);
  double largest = 0.0, p = 1.0;
  for (const RankPair& pair : got.pairs)
    if (std::abs(pair.difference) > largest) largest = std::abs(pair.difference), p = pair.pConoverHolm.value();
  CHECK(largest == 6.0);
  CHECK_THAT(p, WithinRel(21.0 * 2.0 * boost::math::cdf(boost::math::complement(t, 6.0 / std::sqrt(1.5))), 1e-9));
  CHECK(rankPairs(ranked({{1, 2, 3}})).whyNemenyi == Reason::oneTaster);
  CHECK(rankPairs(ranked({{1, 1}, {2, 2}})).whyConover == Reason::allTied);
  CHECK(rankPairs(ranked({{1, 2, 3}, {1, 2, 3}, {1, 2, 3}})).whyConover == Reason::noSpread);
  CHECK_FALSE(rankPairs(ranked({{1, 2, 3}, {1, 2, 3}, {1, 2, 3}})).whyNemenyi.has_value());
  const auto uneven = rankBlocks({1, 2, 3, 1, 2}, {{0, 1, 2, 0, 1}, 3}, {{0, 0, 0, 1, 1}, 2});
  CHECK(rankPairs(uneven).whyNemenyi == Reason::emptyCell);
  CHECK_FALSE(rankPairs(uneven).pairs[0].pNemenyi.has_value());
}
