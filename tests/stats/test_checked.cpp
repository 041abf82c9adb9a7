#include "cases.h"
#include "stats/checks/checked.h"
#include "stats/error.h"
#include "stats/multiple/adjust.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <random>

using namespace oddglass::stats;
using checks::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Every case of tests/data/checks/cata.json is looked at here. Left out: McNemar's mid-p, for the exact one is given; Stuart's and Bhapkar's tests of a
// scale with several categories, which is no check; chi-square of McNemar is Cochran's Q of two samples.

namespace {

CheckTable randomTable(std::mt19937& chance, int tasters, int samples) {
  CheckTable table(static_cast<std::size_t>(tasters), std::vector<int>(static_cast<std::size_t>(samples)));
  for (auto& row : table)
    for (int& cell : row) cell = static_cast<int>(chance() % 2);
  return table;
}

/// Share of all ways to deal each taster's checks, one by one, in which the checks of the samples lie at least as far apart.
double dealtOneByOne(CheckTable table) {
  const auto squares = [&] {
    long long total = 0;
    for (std::size_t i = 0; i < table.front().size(); ++i) {
      long long checks = 0;
      for (const auto& row : table) checks += row[i];
      total += checks * checks;
    }
    return total;
  };
  const long long seen = squares();
  double as = 0, all = 0;
  const std::function<void(std::size_t)> deal = [&](std::size_t at) {
    if (at == table.size()) {
      as += squares() >= seen;
      ++all;
      return;
    }
    std::ranges::sort(table[at]);
    do deal(at + 1);
    while (std::next_permutation(table[at].begin(), table[at].end()));
  };
  deal(0);
  return as / all;
}

/// Boxes in long form; -1 is not answered. tables[descriptor][taster][sample].
CheckRows longRows(const std::vector<CheckTable>& tables) {
  CheckRows rows;
  for (std::size_t d = 0; d < tables.size(); ++d)
    for (std::size_t t = 0; t < tables[d].size(); ++t)
      for (std::size_t s = 0; s < tables[d][t].size(); ++s) {
        rows.taster.levels = std::max(rows.taster.levels, static_cast<int>(t) + 1);
        rows.sample.levels = std::max(rows.sample.levels, static_cast<int>(s) + 1);
        if (tables[d][t][s] < 0) continue;
        rows.checked.push_back(tables[d][t][s]);
        rows.descriptor.of.push_back(static_cast<int>(d));
        rows.taster.of.push_back(static_cast<int>(t));
        rows.sample.of.push_back(static_cast<int>(s));
      }
  rows.descriptor.levels = static_cast<int>(tables.size());
  return rows;
}

}  // namespace

TEST_CASE("Cochran's Q and its exact p in the cases") {
  int looked = 0;
  for (const Json& each : checks::family("cata")) {
    if (!each.at("inputs").contains("data")) continue;
    const Json& wanted = each.at("expected");
    INFO(each.at("id"));
    const CochranQ got = cochranQ(each.at("inputs").at("data").get<CheckTable>());
    CHECK_THAT(got.statistic.value(), WithinAbs(wanted.at("Q").get<double>(), checks::toleranceOf(each)));
    CHECK_THAT(got.pValue.value(), WithinAbs(wanted.at("p_chi2").get<double>(), checks::toleranceOf(each)));
    if (wanted.contains("df")) CHECK(got.df == wanted.at("df").get<int>());
    if (wanted.contains("p_exact_permutation")) CHECK_THAT(got.arranged.exact.value(), WithinAbs(wanted.at("p_exact_permutation").get<double>(), checks::toleranceOf(each)));
    if (wanted.contains("mcnemar_chi2")) CHECK_THAT(*got.statistic, WithinAbs(wanted.at("mcnemar_chi2").get<double>(), checks::toleranceOf(each)));
    if (each.contains("published")) {
      CHECK_THAT(*got.statistic, WithinAbs(each.at("published").at("Q").get<double>(), 0.05));
      CHECK_THAT(*got.pValue, WithinAbs(each.at("published").at("p").get<double>(), 5e-5));
    }
    checks::requireAllSeen(wanted, {"Q", "df", "p_chi2", "p_exact_permutation", "mcnemar_chi2"});
    ++looked;
  }
  CHECK(looked == 4);
}

TEST_CASE("McNemar's exact p in the cases") {
  int looked = 0, left = 0;
  for (const Json& each : checks::family("cata")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    left += in.contains("table");
    if (!in.contains("b")) continue;
    INFO(each.at("id"));
    const int b = in.at("b"), c = in.at("c");
    CHECK_THAT(mcNemar(b, c), WithinAbs(wanted.at("p_exact").get<double>(), checks::toleranceOf(each)));
    CHECK(mcNemar(c, b) == mcNemar(b, c));
    CheckTable table(static_cast<std::size_t>(b), {1, 0});
    table.resize(static_cast<std::size_t>(b + c), {0, 1});
    table.push_back({1, 1});
    const CochranQ got = cochranQ(table);
    CHECK_THAT(got.statistic.value(), WithinAbs(wanted.at("chi2").get<double>(), checks::toleranceOf(each)));
    CHECK_THAT(got.arranged.exact.value(), WithinAbs(wanted.at("p_exact").get<double>(), checks::toleranceOf(each)));
    checks::requireAllSeen(wanted, {"p_exact", "chi2", "p_mid"});
    ++looked;
  }
  CHECK(looked == 7);
  CHECK(left == 2);
}

TEST_CASE("the exact p of Q is the share of all ways to deal the checks") {
  std::mt19937 chance(3);
  int looked = 0;
  for (const auto& [tasters, samples] : {std::pair{3, 3}, {5, 3}, {4, 4}, {7, 2}, {3, 5}, {6, 3}}) {
    const CheckTable table = randomTable(chance, tasters, samples);
    const CochranQ got = cochranQ(table);
    if (got.why) continue;
    INFO(tasters << " tasters, " << samples << " samples");
    REQUIRE(got.arranged.exact.has_value());
    CHECK_THAT(*got.arranged.exact, WithinRel(dealtOneByOne(table), 1e-10));
    // Counted or not at all, when nothing may be drawn.
    CHECK(cochranQ(table, false).arranged.exact == got.arranged.exact);
    ++looked;
  }
  CHECK(looked == 6);
}

TEST_CASE("Q stays the same when samples, tasters or checked and unchecked change places, or with tasters who told nothing apart") {
  std::mt19937 chance(17);
  for (int i = 0; i < 30; ++i) {
    CheckTable table = randomTable(chance, 7, 4);
    table.push_back({1, 0, 0, 1});
    const CochranQ first = cochranQ(table);
    std::shuffle(table.begin(), table.end(), chance);
    for (auto& row : table) {
      std::ranges::rotate(row, row.begin() + 1);
      for (int& cell : row) cell = 1 - cell;
    }
    table.push_back({1, 1, 1, 1});
    table.push_back({0, 0, 0, 0});
    const CochranQ second = cochranQ(table);
    CHECK_THAT(second.statistic.value(), WithinRel(first.statistic.value(), 1e-10));
    CHECK_THAT(second.arranged.exact.value(), WithinRel(first.arranged.exact.value(), 1e-10));
  }
}

TEST_CASE("too many ways are drawn with their error, or left when nothing may be drawn") {
  std::mt19937 chance(23);
  const CheckTable table = randomTable(chance, 90, 12);
  const CochranQ got = cochranQ(table);
  CHECK_FALSE(got.arranged.exact.has_value());
  REQUIRE(got.arranged.drawn.has_value());
  CHECK_THAT(got.arranged.drawn->error, WithinRel(std::sqrt(got.arranged.drawn->pValue * (1 - got.arranged.drawn->pValue) / 1e5), 1e-12));
  // With so many tasters chi-square is close.
  CHECK(std::abs(got.arranged.drawn->pValue - *got.pValue) < 0.02);
  const CochranQ none = cochranQ(table, false);
  CHECK_FALSE(none.arranged.exact.has_value());
  CHECK_FALSE(none.arranged.drawn.has_value());
  CHECK(none.pValue == got.pValue);
}

TEST_CASE("descriptors: shares, complete tasters, pairs with Holm, Holm over the descriptors") {
  const std::vector<CheckTable> tables{{{1, 0, 0}, {1, 0, 1}, {1, 1, 0}, {1, 0, 0}, {1, -1, 0}, {1, 0, 0}},
                                       {{0, 0, 1}, {0, 1, 1}, {0, 0, 1}, {0, 0, 0}, {1, 0, 1}, {0, 0, 1}},
                                       {{0, 0, 0}, {0, 0, 0}, {0, 0, 0}, {0, 0, 0}, {0, 0, 0}, {0, 0, 0}}};
  const auto got = checkedDescriptors(longRows(tables));
  REQUIRE(got.size() == 3);
  CHECK(got[0].tasters == 5);
  CHECK(got[0].leftOut == 1);
  CHECK(got[0].shares == std::vector<std::optional<double>>{1.0, 0.2, 1.0 / 6});
  CHECK(got[0].checks == std::vector<int>{5, 1, 1});
  CHECK(got[0].test.statistic == cochranQ({{1, 0, 0}, {1, 0, 1}, {1, 1, 0}, {1, 0, 0}, {1, 0, 0}}).statistic);
  // First against third: six tasters, five told them apart, all the same way.
  CHECK(got[0].pairs[1].onlyA == 5);
  CHECK(got[0].pairs[1].onlyB == 0);
  CHECK_THAT(got[0].pairs[1].pMcNemar.value(), WithinRel(2.0 / 32, 1e-12));
  CHECK_THAT(got[0].pairs[0].pMcNemar.value(), WithinRel(2.0 / 16, 1e-12));
  CHECK_THAT(got[0].pairs[1].pHolm.value(), WithinRel(6.0 / 32, 1e-12));
  CHECK_THAT(got[0].pairs[0].pHolm.value(), WithinRel(4.0 / 16, 1e-12));
  CHECK(got[0].pairs[2].pHolm == 1.0);
  // Nobody checked the third: no test, and it does not count among the descriptors that are adjusted for.
  CHECK(got[2].test.why == Reason::allTied);
  CHECK_FALSE(got[2].pHolm.has_value());
  CHECK(got[2].pairs[0].pMcNemar == 1.0);
  const auto holm = adjustHolm({got[0].test.arranged.exact.value(), got[1].test.arranged.exact.value()});
  CHECK(got[0].pHolm == holm[0]);
  CHECK(got[1].pHolm == holm[1]);
}

TEST_CASE("the numbering of tasters, samples and descriptors does not matter") {
  std::mt19937 chance(31);
  const std::vector<CheckTable> tables{randomTable(chance, 8, 3), randomTable(chance, 8, 3)};
  const CheckRows rows = longRows(tables);
  CheckRows turned = rows;
  std::ranges::reverse(turned.checked);
  for (Factor* each : {&turned.sample, &turned.taster, &turned.descriptor}) {
    std::ranges::reverse(each->of);
    for (int& of : each->of) of = each->levels - 1 - of;
  }
  const auto first = checkedDescriptors(rows), second = checkedDescriptors(turned);
  for (std::size_t d = 0; d < 2; ++d) {
    const auto &a = first[d], &b = second[1 - d];
    CHECK_THAT(a.pHolm.value(), WithinRel(b.pHolm.value(), 1e-10));
    CHECK_THAT(a.test.statistic.value(), WithinRel(b.test.statistic.value(), 1e-12));
    CHECK(a.shares[0] == b.shares[2]);
    CHECK(a.pairs[0].pMcNemar == b.pairs[2].pMcNemar);
    CHECK(a.pairs[0].onlyA == b.pairs[2].onlyB);
  }
}

TEST_CASE("checks that allow no test say why") {
  CHECK(cochranQ({{1, 1}, {1, 1}}).why == Reason::allTied);
  CHECK(cochranQ({{0, 0, 0}}).why == Reason::allTied);
  CHECK(cochranQ({{1, 0, 0}}).why == Reason::oneTaster);
  CHECK(cochranQ({}).why == Reason::emptyCell);
  CHECK_FALSE(cochranQ({}).statistic.has_value());
  const auto got = checkedDescriptors(longRows({{{1, -1, -1}, {0, -1, 0}}, {{1, 0, 1}, {0, 1, 1}}}));
  CHECK(got[0].test.why == Reason::emptyCell);
  CHECK(got[0].leftOut == 2);
  CHECK(got[0].test.df == 2);
  CHECK_FALSE(got[0].shares[1].has_value());
  CHECK_FALSE(got[0].pairs[0].pMcNemar.has_value());
  CHECK_FALSE(got[0].pairs[0].pHolm.has_value());
  CHECK(got[0].pairs[1].pMcNemar == 1.0);
  CHECK(got[0].checks == std::vector<int>{0, 0, 0});
}

TEST_CASE("impossible checks are refused by name") {
  const CheckRows sound = longRows({{{1, 0}, {0, 1}}});
  const auto named = [](const CheckRows& rows) {
    try {
      checkedDescriptors(rows);
    } catch (const BadInput& bad) {
      return bad.argument();
    }
    return std::string();
  };
  CHECK(named(sound).empty());
  CHECK(named({}) == "checked");
  CheckRows rows = sound;
  rows.checked[1] = 2;
  CHECK(named(rows) == "checked");
  rows = sound;
  rows.taster.of[2] = rows.taster.of[0];
  CHECK(named(rows) == "taster");
  rows.taster.of[2] = 7;
  CHECK(named(rows) == "taster");
  rows = sound;
  rows.descriptor.of.pop_back();
  CHECK(named(rows) == "descriptor");
  CHECK(named(longRows({{{1}, {0}}})) == "sample");
  CHECK_THROWS_AS(cochranQ({{1, 0}, {1}}), BadInput);
  CHECK_THROWS_AS(cochranQ({{1, -1}}), BadInput);
  CHECK_THROWS_AS(mcNemar(-1, 2), BadInput);
}
