#include "ranked.h"
#include "stats/error.h"
#include "stats/ranks/critical.h"
#include "stats/ranks/durbin.h"
#include "stats/ranks/friedman.h"
#include "stats/ranks/page.h"
#include "stats/ranks/sign_flip.h"
#include "stats/ranks/weighted.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <random>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Exact distributions against plain enumeration of all arrangements; what must hold whatever the data; data that allow no answer.

namespace {

/// Share of all arrangements, dealt one by one, whose statistic is at least as large as the one seen.
double enumerated(const RankBlocks& ranks, const std::function<double(const std::vector<double>&)>& statistic) {
  const auto of = [&](const RankBlocks& some) {
    std::vector<double> sums(static_cast<std::size_t>(some.samples), 0.0);
    for (const RankBlock& block : some.blocks)
      for (std::size_t i = 0; i < block.samples.size(); ++i) sums[static_cast<std::size_t>(block.samples[i])] += block.doubled[i] / 2.0;
    return statistic(sums);
  };
  const double seen = of(ranks);
  RankBlocks dealt = ranks;
  double as = 0, all = 0;
  const std::function<void(std::size_t)> deal = [&](std::size_t at) {
    if (at == dealt.blocks.size()) {
      as += of(dealt) >= seen - 1e-7;
      ++all;
      return;
    }
    auto& doubled = dealt.blocks[at].doubled;
    std::ranges::sort(doubled);
    do deal(at + 1);
    while (std::next_permutation(doubled.begin(), doubled.end()));
  };
  deal(0);
  return as / all;
}

double squares(const std::vector<double>& sums) {
  double total = 0.0;
  for (double sum : sums) total += sum * sum;
  return total;
}

std::vector<std::vector<double>> table(std::mt19937& chance, int tasters, int samples, int marks) {
  std::vector<std::vector<double>> rows(static_cast<std::size_t>(tasters), std::vector<double>(static_cast<std::size_t>(samples)));
  for (auto& row : rows)
    for (double& cell : row) cell = static_cast<double>(chance() % static_cast<unsigned>(marks));
  return rows;
}

}  // namespace

TEST_CASE("Friedman's exact p is the share of all arrangements, with and without ties") {
  std::mt19937 chance(7);
  int looked = 0;
  for (const auto& [tasters, samples, marks] : {std::tuple{4, 3, 3}, {5, 3, 100}, {3, 4, 4}, {3, 4, 100}, {6, 2, 3}, {2, 5, 100}, {6, 3, 2}}) {
    const auto ranks = ranked(table(chance, tasters, samples, marks));
    const Friedman got = friedman(ranks);
    if (got.why) continue;
    INFO(tasters << " tasters, " << samples << " samples, " << marks << " marks");
    REQUIRE(got.arranged.exact.has_value());
    CHECK_FALSE(got.arranged.drawn.has_value());
    CHECK_THAT(*got.arranged.exact, WithinRel(enumerated(ranks, squares), 1e-10));
    ++looked;
  }
  CHECK(looked >= 6);
}

TEST_CASE("Page's exact p is the share of all arrangements, with and without ties") {
  std::mt19937 chance(11);
  for (const auto& [tasters, samples, marks] : {std::tuple{4, 3, 3}, {5, 3, 100}, {3, 4, 3}, {2, 5, 100}}) {
    const auto ranks = ranked(table(chance, tasters, samples, marks));
    std::vector<int> order(static_cast<std::size_t>(samples));
    for (int i = 0; i < samples; ++i) order[static_cast<std::size_t>(i)] = (i + 1) % samples;
    const auto l = [&](const std::vector<double>& sums) {
      double total = 0.0;
      for (std::size_t i = 0; i < order.size(); ++i) total += static_cast<double>(i + 1) * sums[static_cast<std::size_t>(order[i])];
      return total;
    };
    const Page got = page(ranks, order);
    REQUIRE(got.pExact.has_value());
    CHECK_THAT(*got.pExact, WithinRel(enumerated(ranks, l), 1e-10));
  }
}

TEST_CASE("Durbin's exact p is the share of all arrangements within the tasters, also where samples are missing at random") {
  std::mt19937 chance(5);
  // Three of four samples each, then the same with one answer missing and a taster who had two.
  const std::vector<std::vector<int>> even{{0, 1, 2}, {0, 1, 3}, {0, 2, 3}, {1, 2, 3}}, uneven{{0, 1, 2, 3}, {0, 1, 3}, {0, 2, 3}, {1, 2}};
  for (const auto& design : {even, uneven}) {
    std::vector<double> values;
    Factor sample{{}, 4}, taster{{}, 4};
    for (int who = 0; who < 4; ++who)
      for (int which : design[static_cast<std::size_t>(who)]) {
        values.push_back(static_cast<double>(chance() % 4));
        sample.of.push_back(which);
        taster.of.push_back(who);
      }
    const auto ranks = rankBlocks(values, sample, taster);
    const Durbin got = durbin(ranks);
    REQUIRE(got.arranged.exact.has_value());
    CHECK(got.blocks.isBalanced == (design == even));
    if (got.blocks.isBalanced) CHECK_THAT(*got.arranged.exact, WithinRel(enumerated(ranks, squares), 1e-10));
    else CHECK(*got.arranged.exact > 0.0);
  }
}

TEST_CASE("on complete blocks Durbin's statistic is Friedman's") {
  std::mt19937 chance(3);
  for (int i = 0; i < 20; ++i) {
    const auto ranks = ranked(table(chance, 5, 4, 5));
    const Friedman whole = friedman(ranks);
    const Durbin parts = durbin(ranks);
    REQUIRE_FALSE(whole.why.has_value());
    CHECK_THAT(parts.statistic.value(), WithinRel(*whole.statistic, 1e-10));
    CHECK_THAT(parts.pValue.value(), WithinRel(*whole.pValue, 1e-9));
    CHECK_THAT(leastSignificantDifference(parts.blocks, 0.05).value(), WithinRel(leastSignificantDifference(4, 5, 0.05), 1e-12));
  }
}

TEST_CASE("a balanced design by the general formula gives Durbin's statistic where nothing is tied") {
  // The same answers, and one more taster who ranked all alike: the design is no longer balanced, and nothing else changes.
  std::vector<double> values;
  Factor sample{{}, 4}, taster{{}, 5};
  const std::vector<std::vector<int>> blocks{{0, 1, 2}, {1, 0, 3}, {2, 0, 3}, {2, 3, 1}};
  for (int who = 0; who < 4; ++who)
    for (int rank = 0; rank < 3; ++rank) {
      values.push_back(rank);
      sample.of.push_back(blocks[static_cast<std::size_t>(who)][static_cast<std::size_t>(rank)]);
      taster.of.push_back(who);
    }
  const Durbin even = durbin(rankBlocks(values, sample, taster));
  for (int which : {0, 1}) {
    values.push_back(1.0);
    sample.of.push_back(which);
    taster.of.push_back(4);
  }
  const Durbin uneven = durbin(rankBlocks(values, sample, taster));
  REQUIRE(even.blocks.isBalanced);
  REQUIRE_FALSE(uneven.blocks.isBalanced);
  CHECK_THAT(uneven.statistic.value(), WithinRel(*even.statistic, 1e-9));
}

TEST_CASE("drawn p values lie within five of their errors of the counted ones") {
  std::mt19937 chance(19);
  const auto ranks = ranked(table(chance, 8, 3, 10));
  const auto spread = [](const std::vector<int>& doubled) {
    double total = 0.0;
    for (int sum : doubled) total += static_cast<double>(sum) * sum;
    return total;
  };
  const double exact = arrangedP(ranks, spread).exact.value();
  const DrawnP drawn = drawnRankP(ranks, spread).value();
  CHECK(std::abs(drawn.pValue - exact) < 5.0 * drawn.error);
  CHECK(drawnRankP(ranks, spread)->pValue == drawn.pValue);
}

TEST_CASE("too many arrangements are drawn, and the error is said") {
  std::mt19937 chance(23);
  const Friedman got = friedman(ranked(table(chance, 12, 8, 9)));
  CHECK_FALSE(got.arranged.exact.has_value());
  REQUIRE(got.arranged.drawn.has_value());
  CHECK_THAT(got.arranged.drawn->error, WithinRel(std::sqrt(got.arranged.drawn->pValue * (1 - got.arranged.drawn->pValue) / 1e5), 1e-12));
  CHECK(std::abs(got.arranged.drawn->pValue - got.imanDavenport->pValue) < 0.05);
}

TEST_CASE("the order of samples and tasters does not matter") {
  std::mt19937 chance(29);
  auto rows = table(chance, 6, 4, 6);
  const Friedman first = friedman(ranked(rows));
  std::shuffle(rows.begin(), rows.end(), chance);
  for (auto& row : rows) std::rotate(row.begin(), row.begin() + 1, row.end());
  const Friedman second = friedman(ranked(rows));
  CHECK_THAT(*second.statistic, WithinRel(*first.statistic, 1e-12));
  CHECK_THAT(*second.arranged.exact, WithinRel(*first.arranged.exact, 1e-10));
}

TEST_CASE("chances of rank sums add up to one") {
  double total = 0.0;
  REQUIRE(eachRankSums(untiedBlocks(5, 6), 1e7, [&](const std::vector<int>&, double chance) { total += chance; }));
  CHECK_THAT(total, WithinRel(1.0, 1e-12));
  CHECK_FALSE(eachRankSums(untiedBlocks(17, 2), 1e7, [](const std::vector<int>&, double) {}));
  CHECK_THAT(weightedSums(untiedBlocks(6, 5), {1, 2, 3, 4, 5, 6})->atLeast(0), WithinRel(1.0, 1e-12));
}

TEST_CASE("ranks that allow no answer say why") {
  CHECK(friedman(ranked({{1, 1, 1}, {2, 2, 2}})).why == Reason::allTied);
  CHECK(friedman(ranked({{1, 2, 3}})).why == Reason::oneTaster);
  CHECK(page(ranked({{1, 2, 3}}), {0, 1, 2}).why == Reason::oneTaster);
  CHECK(page(ranked({{1, 1}, {2, 2}}), {0, 1}).why == Reason::allTied);
  const auto missing = rankBlocks({1, 2, 3, 1, 2}, {{0, 1, 2, 0, 1}, 3}, {{0, 0, 0, 1, 1}, 2});
  CHECK(friedman(missing).why == Reason::emptyCell);
  CHECK(page(missing, {0, 1, 2}).why == Reason::emptyCell);
  // Two parts that nobody tasted side by side.
  const auto parted = rankBlocks({1, 2, 1, 2, 2, 1}, {{0, 1, 2, 3, 0, 1}, 4}, {{0, 0, 1, 1, 2, 2}, 3});
  CHECK(durbin(parted).why == Reason::notConnected);
  CHECK_FALSE(leastSignificantDifference(blockSizes(missing), 0.05).has_value());
  // All rank alike: the statistic stands, its F form has no value.
  const Friedman agreed = friedman(ranked({{1, 2, 3}, {1, 2, 3}, {1, 2, 3}}));
  CHECK_THAT(agreed.kendallW.value(), WithinRel(1.0, 1e-12));
  CHECK_FALSE(agreed.imanDavenport.has_value());
  CHECK_THAT(agreed.arranged.exact.value(), WithinRel(1.0 / 36.0, 1e-12));
}

TEST_CASE("impossible ranks are refused by name") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_WITH(rankBlocks({}, {{}, 2}, {{}, 1}), Catch::StartsWith("rank:"));
  CHECK_THROWS_WITH(rankBlocks({1, nan}, {{0, 1}, 2}, {{0, 0}, 1}), Catch::StartsWith("rank:"));
  CHECK_THROWS_WITH(rankBlocks({1, 2}, {{0, 0}, 1}, {{0, 1}, 2}), Catch::StartsWith("sample:"));
  CHECK_THROWS_WITH(rankBlocks({1, 2}, {{0, 2}, 2}, {{0, 1}, 2}), Catch::StartsWith("sample:"));
  CHECK_THROWS_WITH(rankBlocks({1, 2}, {{0, 1}, 2}, {{0}, 1}), Catch::StartsWith("taster:"));
  CHECK_THROWS_WITH(rankBlocks({1, 2, 3}, {{0, 1, 1}, 2}, {{0, 0, 0}, 1}), Catch::StartsWith("taster:"));
  CHECK_THROWS_AS(page(ranked({{1, 2}, {1, 2}}), {0}), BadInput);
  CHECK_THROWS_AS(page(ranked({{1, 2}, {1, 2}}), {0, 0}), BadInput);
  CHECK_THROWS_AS(page(ranked({{1, 2}, {1, 2}}), {0, 5}), BadInput);
  CHECK_THROWS_AS(untiedBlocks(1, 3), BadInput);
  CHECK_THROWS_AS(untiedBlocks(3, 0), BadInput);
  CHECK_THROWS_AS(friedmanOfSums({1, 2}, 5), BadInput);
  CHECK_THROWS_AS(friedmanOfSums({nan, 2}, 1), BadInput);
  CHECK_THROWS_AS(leastSignificantDifference(3, 5, 0.0), BadInput);
  CHECK_THROWS_AS(friedmanCritical(1, 5, 0.05), BadInput);
  CHECK_THROWS_AS(pageCritical(3, 0, 0.05), BadInput);
  CHECK_THROWS_AS(weightedSums(untiedBlocks(3, 2), {1, 2}), BadInput);
  CHECK_THROWS_AS(weightedSums(untiedBlocks(3, 2), {1, 2, -1}), BadInput);
}

TEST_CASE("sign flips are counted one by one") {
  std::mt19937 chance(31);
  for (int n = 1; n <= 10; ++n) {
    std::vector<double> differences;
    double seen = 0.0;
    for (int i = 0; i < n; ++i) {
      differences.push_back(static_cast<double>(chance() % 9) / 2.0 - 2.0);
      seen += differences.back();
    }
    int as = 0, large = 0;
    for (int pattern = 0; pattern < 1 << n; ++pattern) {
      double sum = 0.0;
      for (int i = 0; i < n; ++i) sum += pattern >> i & 1 ? differences[static_cast<std::size_t>(i)] : -differences[static_cast<std::size_t>(i)];
      as += std::abs(sum) >= std::abs(seen) - 1e-9;
      large += sum >= seen - 1e-9;
    }
    const SignFlip got = signFlip(differences);
    CHECK(got.isExact);
    CHECK_THAT(got.pTwoSided, WithinRel(as / std::exp2(n), 1e-12));
    CHECK_THAT(got.pGreater, WithinRel(large / std::exp2(n), 1e-12));
  }
}

TEST_CASE("sign flips: five tasters cannot reach 5 %, six can; many are drawn; nothing overflows") {
  CHECK(signFlip({1, 2, 1, 2, 1}).smallestTwoSided == 1.0 / 16.0);
  CHECK(signFlip({1, 2, 1, 2, 1}).pTwoSided == 1.0 / 16.0);
  CHECK(signFlip({1, 2, 1, 2, 1, 3}).pTwoSided == 1.0 / 32.0);
  CHECK(signFlip({0, 0, 0}).pTwoSided == 1.0);
  CHECK(signFlip({1e308, 1e308, 1e308}).pTwoSided == 0.25);
  CHECK_THAT(signFlip({1e308, 1e308, 1e308}).mean, WithinRel(1e308, 1e-12));
  std::vector<double> many(40);
  for (std::size_t i = 0; i < many.size(); ++i) many[i] = i % 3 == 0 ? -1.0 : 1.0;
  const SignFlip drawn = signFlip(many);
  CHECK_FALSE(drawn.isExact);
  // Signs of equal size: the two-sided binomial, 26 of 40 to one side: 2 P(X >= 26) = 0.0807 (exact).
  double binomial = 0.0;
  for (int x = 26; x <= 40; ++x) binomial += 2.0 * std::exp(std::lgamma(41.0) - std::lgamma(x + 1.0) - std::lgamma(41.0 - x) - 40 * std::log(2.0));
  CHECK_THAT(drawn.pTwoSided, WithinAbs(binomial, 5.0 * drawn.monteCarloError.value()));
  CHECK_THROWS_AS(signFlip({}), BadInput);
  CHECK_THROWS_AS(signFlip({1.0, std::numeric_limits<double>::infinity()}), BadInput);
}

TEST_CASE("random ranks give numbers or a reason, and never anything else") {
  std::mt19937 chance(37);
  for (int i = 0; i < 200; ++i) {
    const int samples = 2 + static_cast<int>(chance() % 3), tasters = 1 + static_cast<int>(chance() % 5), marks = 1 + static_cast<int>(chance() % 4);
    std::vector<double> values;
    Factor sample{{}, samples}, taster{{}, tasters};
    for (int who = 0; who < tasters; ++who)
      for (int which = 0; which < samples; ++which)
        if (chance() % 5) {
          values.push_back(static_cast<double>(chance() % static_cast<unsigned>(marks)));
          sample.of.push_back(which);
          taster.of.push_back(who);
        }
    if (values.empty()) continue;
    const auto ranks = rankBlocks(values, sample, taster);
    const Friedman whole = friedman(ranks);
    const Durbin parts = durbin(ranks);
    CHECK(whole.why.has_value() != whole.statistic.has_value());
    CHECK(parts.why.has_value() != parts.statistic.has_value());
    for (const auto& p : {whole.pValue, whole.arranged.exact, parts.pValue, parts.arranged.exact})
      if (p) CHECK((*p >= 0.0 && *p <= 1.0));
    if (parts.statistic) CHECK(std::isfinite(*parts.statistic));
    if (parts.f) CHECK(std::isfinite(parts.f->F));
  }
}
