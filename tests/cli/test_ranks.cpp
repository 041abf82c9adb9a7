#include "cli/ran.h"
#include "stats/cases.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

using oddglass::testing::number;
using oddglass::testing::requireRefused;
using oddglass::testing::Terminal;
using checks::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Cases of tests/data/checks/ranking.json through the program. Left to tests/stats, for no command shows them: Wilcoxon's test, the rank sum of a single
// sample, the exact range of rank sums.

namespace {

using Rows = std::vector<std::vector<double>>;

/// Samples A, B, C ... in the columns, one taster a row.
std::string csv(const Rows& rows) {
  std::string text = "who,what,rank\n";
  for (std::size_t row = 0; row < rows.size(); ++row)
    for (std::size_t column = 0; column < rows[row].size(); ++column) text += 't' + std::to_string(row) + ',' + static_cast<char>('A' + column) + ',' + number(rows[row][column]) + '\n';
  return text;
}

const std::string columns = "ranks --rank rank --sample what --taster who";

double at(const oddglass::cli::Json& json, const std::string& path) { return json.at(oddglass::cli::Json::json_pointer(path)).get<double>(); }

/// Untied ranks with these sums: ranks are swapped within tasters while the sums come no further from what is wanted.
Rows rowsWithSums(const std::vector<double>& sums, int tasters) {
  const std::size_t k = sums.size();
  Rows rows(static_cast<std::size_t>(tasters), std::vector<double>(k));
  for (auto& row : rows) std::iota(row.begin(), row.end(), 1.0);
  std::vector<double> over(k);
  for (std::size_t i = 0; i < k; ++i) over[i] = tasters * (static_cast<double>(i) + 1.0) - sums[i];
  std::mt19937 chance(1);
  for (int step = 0; step < 200'000 && std::ranges::any_of(over, [](double each) { return each != 0.0; }); ++step) {
    auto& row = rows[chance() % rows.size()];
    const std::size_t a = chance() % k, b = chance() % k;
    const double by = row[b] - row[a], before = over[a] * over[a] + over[b] * over[b], after = (over[a] + by) * (over[a] + by) + (over[b] - by) * (over[b] - by);
    if (after > before) continue;
    std::swap(row[a], row[b]);
    over[a] += by;
    over[b] -= by;
  }
  return rows;
}

}  // namespace

TEST_CASE("Friedman, Kendall's W and the least difference of rank sums, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("ranking")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    if (!in.contains("data_rows_are_assessors")) continue;
    INFO(each.at("id"));
    const auto got = run.json(columns, {run.write("ranks.csv", csv(in.at("data_rows_are_assessors").get<Rows>()))});
    CHECK_THAT(at(got, "/friedman/statistic"), WithinAbs(wanted.at("friedman_Q_tie_corrected").get<double>(), 1e-9));
    CHECK_THAT(at(got, "/friedman/p_value"), WithinRel(wanted.at("p_chi2").get<double>(), 1e-9));
    CHECK_THAT(at(got, "/friedman/iman_davenport/F"), WithinRel(wanted.at("iman_davenport_F").get<double>(), 1e-9));
    CHECK_THAT(at(got, "/kendall_w"), WithinAbs(wanted.at("W").get<double>(), 1e-9));
    CHECK_THAT(at(got, "/lsd"), WithinAbs(wanted.at("LSD_rank_sum_5pct").get<double>(), 1e-9));
    std::size_t i = 0;
    for (const auto& [sample, sum] : got.at("rank_sums").items()) CHECK(sum.get<double>() == wanted.at("rank_sums")[i++].get<double>());
    CHECK(got.at("friedman").at("p_exact").is_null() != got.at("friedman").at("p_permutation").is_null());
    ++looked;
  }
  CHECK(looked == 4);
}

TEST_CASE("rank sums of the standard, and exact chances, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("ranking")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    INFO(each.at("id"));
    if (in.contains("rank_sums")) {
      const auto sums = in.at("rank_sums").get<std::vector<double>>();
      const std::string file = run.write("ranks.csv", csv(rowsWithSums(sums, in.at("n_assessors"))));
      const auto got = run.json(columns, {file});
      std::size_t i = 0;
      for (const auto& [sample, sum] : got.at("rank_sums").items()) REQUIRE(sum.get<double>() == sums[i++]);
      CHECK_THAT(at(got, "/friedman/statistic"), WithinAbs(wanted.at("Q").get<double>(), 1e-8));
      CHECK_THAT(at(got, "/friedman/p_value"), WithinAbs(wanted.at("p_chi2").get<double>(), 1e-8));
      CHECK_THAT(at(got, "/lsd"), WithinAbs(wanted.at("LSD_5pct").get<double>(), 1e-8));
      CHECK_THAT(at(run.json(columns + " --alpha 0.01", {file}), "/lsd"), WithinAbs(wanted.at("LSD_1pct").get<double>(), 1e-8));
      ++looked;
    } else if (in.contains("Q")) {
      // Any untied table with this statistic has the exact chance of the case.
      const int n = in.at("n");
      bool isFound = false;
      for (int a = n; a <= 3 * n && !isFound; ++a)
        for (int b = a; b <= 3 * n && !isFound; ++b) {
          const int c = 6 * n - a - b;
          if (c < b || std::abs(12.0 * (a * a + b * b + c * c) / (12.0 * n) - 12.0 * n - in.at("Q").get<double>()) > 1e-9) continue;
          const auto got = run.json(columns, {run.write("ranks.csv", csv(rowsWithSums({double(a), double(b), double(c)}, n)))});
          if (at(got, "/rank_sums/A") != a || at(got, "/rank_sums/B") != b) continue;
          isFound = true;
          CHECK_THAT(at(got, "/friedman/p_exact"), WithinAbs(wanted.at("p_exact").get<double>(), 1e-10));
          CHECK_THAT(at(got, "/friedman/p_value"), WithinAbs(wanted.at("p_chi2").get<double>(), 1e-10));
        }
      CHECK(isFound);
      ++looked;
    }
  }
  CHECK(looked == 5);
}

TEST_CASE("Page's L, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("ranking")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    INFO(each.at("id"));
    if (in.contains("rank_sums_in_predicted_order")) {
      // Six tasters with these rank sums, one tie among them.
      const Rows rows{{1, 2, 3, 4}, {1, 2, 3, 4}, {1, 3, 2, 4}, {1, 3, 2, 4}, {2, 1, 3, 4}, {2.5, 1, 4, 2.5}};
      const auto got = run.json(columns + " --expected A,B,C,D", {run.write("ranks.csv", csv(rows))});
      CHECK(got.at("rank_sums") == oddglass::cli::Json{{"A", 8.5}, {"B", 12.0}, {"C", 17.0}, {"D", 22.5}});
      CHECK(at(got, "/page/l") == wanted.at("L").get<double>());
      CHECK_THAT(at(got, "/page/z"), WithinAbs(wanted.at("z").get<double>(), 1e-9));
      CHECK_THAT(at(got, "/page/p_value"), WithinRel(wanted.at("p_normal").get<double>(), 1e-9));
      CHECK(at(got, "/page/p_exact") < 0.001);
      CHECK(run.json("critical --of page --samples 4 --tasters 6 --alpha 0.001").at("critical") == 172.0);
      // The same answers with 1 for the most, and the same order from least to most.
      Rows turned = rows;
      for (auto& row : turned)
        for (double& rank : row) rank = 5 - rank;
      CHECK(run.json(columns + " --best-first --expected A,B,C,D", {run.write("turned.csv", csv(turned))}).at("page") == got.at("page"));
      ++looked;
    } else if (in.contains("data")) {
      const auto got = run.json(columns + " --expected A,B,C,D,E,F", {run.write("ranks.csv", csv(in.at("data").get<Rows>()))});
      CHECK(at(got, "/page/l") == wanted.at("L").get<double>());
      CHECK_THAT(at(got, "/page/p_exact"), WithinAbs(wanted.at("p_exact").get<double>(), 1e-9));
      ++looked;
    } else if (in.contains("alphas")) {
      for (const auto& [alpha, list] : wanted.at("critical_L").items())
        for (std::size_t i = 0; i < list.size(); ++i) {
          const auto got = run.json("critical --of page --samples 4 --tasters " + std::to_string(in.at("n")[i].get<int>()) + " --alpha " + alpha);
          CHECK(got.at("critical").get<double>() == list[i].get<double>());
          CHECK(got.at("alpha_actual").get<double>() <= std::stod(alpha));
          CHECK(got.at("by") == "exact");
        }
      ++looked;
    }
  }
  CHECK(looked == 3);
}

TEST_CASE("Durbin, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("ranking")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    if (!in.contains("block")) continue;
    INFO(each.at("id"));
    std::string text = "what,rank,who\n";
    for (std::size_t i = 0; i < in.at("block").size(); ++i) text += 's' + in.at("treatment")[i].dump() + ',' + in.at("rank")[i].dump() + ",t" + in.at("block")[i].dump() + '\n';
    const auto got = run.json(columns, {run.write("blocks.csv", text)});
    CHECK_THAT(at(got, "/durbin/statistic"), WithinAbs(wanted.at("T1").get<double>(), 1e-9));
    CHECK_THAT(at(got, "/durbin/p_value"), WithinAbs(wanted.at("p_chi2").get<double>(), 1e-9));
    CHECK_THAT(at(got, "/durbin/f/F"), WithinAbs(wanted.at("T2").get<double>(), 1e-9));
    CHECK_THAT(at(got, "/durbin/f/p_value"), WithinAbs(wanted.at("p_F").get<double>(), 1e-9));
    CHECK(got.at("friedman").at("statistic").is_null());
    CHECK(got.at("friedman").at("why").is_string());
    CHECK(got.at("lsd").is_number());
    CHECK(got.at("pairs")[0].at("p_nemenyi").is_number());
    ++looked;
  }
  CHECK(looked == 2);
}

TEST_CASE("signs, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("ranking")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    INFO(each.at("id"));
    if (in.contains("plus")) {
      const int plus = in.at("plus"), minus = in.at("minus");
      const auto got = run.json("count --method preference --trials " + std::to_string(plus + minus) + " --correct " + std::to_string(plus));
      CHECK_THAT(at(got, "/p_value"), WithinAbs(wanted.at("p_two").get<double>(), 1e-12));
      ++looked;
    } else if (in.contains("one_tail_alpha")) {
      for (std::size_t i = 0; i < in.at("one_tail_alpha").size(); ++i) {
        const auto got = run.json("critical --of pair --trials " + in.at("n").dump() + " --alpha " + in.at("one_tail_alpha")[i].dump());
        const Json most = got.at("critical").is_null() ? Json() : Json(in.at("n").get<int>() - got.at("critical").get<int>());
        CHECK(most == wanted.at("critical_less_frequent_sign")[i]);
      }
      ++looked;
    }
  }
  CHECK(looked == 14);
}

TEST_CASE("critical differences of rank sums by the studentized range, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("ranking")) {
    if (!each.at("inputs").contains("n_panelists")) continue;
    INFO(each.at("id"));
    const double n = each.at("inputs").at("n_panelists");
    const Json& wanted = each.at("expected").at("k_from_3_to_12_normal_approx");
    for (int k = 3; k <= 12; ++k) {
      const auto got = run.json("critical --of studentized-range --groups " + std::to_string(k) + " --df inf");
      CHECK_THAT(got.at("critical").get<double>() * std::sqrt(n * k * (k + 1) / 12.0), WithinAbs(wanted[static_cast<std::size_t>(k - 3)].get<double>(), 0.002));
      ++looked;
    }
  }
  CHECK(looked == 50);
}

// Korosteleva 2013, Table A.5.
TEST_CASE("critical values of Friedman's statistic, through the program") {
  Terminal run;
  const auto got = run.json("critical --of friedman --samples 3 --tasters 10");
  CHECK_THAT(got.at("critical").get<double>(), WithinAbs(6.2, 1e-9));
  CHECK(got.at("by") == "exact");
  CHECK_THAT(run.json("critical --of friedman --samples 3 --tasters 10 --alpha 0.01").at("critical").get<double>(), WithinAbs(9.6, 1e-9));
  const auto none = run.json("critical --of friedman --samples 3 --tasters 2");
  CHECK(none.at("critical").is_null());
  CHECK(none.at("why").is_string());
  CHECK(run.json("critical --of friedman --samples 30 --tasters 30").at("by") == "chi-square");
  CHECK(run.json("critical --of page --samples 30 --tasters 30").at("by") == "normal");
  requireRefused(run, "critical --of friedman --samples 3", "--tasters");
  requireRefused(run, "critical --of page --samples 1 --tasters 4", "--samples");
}

TEST_CASE("ranks that allow no answer, through the program") {
  Terminal run;
  const auto alone = run.json(columns + " --expected A,B,C", {run.write("alone.csv", csv({{1, 2, 3}}))});
  for (const char* path : {"/friedman/statistic", "/friedman/p_exact", "/kendall_w", "/page/p_exact", "/pairs/0/p_nemenyi", "/lsd"}) CHECK(alone.at(oddglass::cli::Json::json_pointer(path)).is_null());
  for (const char* path : {"/friedman/why", "/why", "/page/why", "/pairs/0/why"}) CHECK(alone.at(oddglass::cli::Json::json_pointer(path)).is_string());
  const auto tied = run.json(columns, {run.write("tied.csv", csv({{1, 1, 1}, {2, 2, 2}, {1, 1, 1}}))});
  CHECK(tied.at("friedman").at("p_value").is_null());
  CHECK(tied.at("friedman").at("why") == "nothing was told apart: ties everywhere");
  // One answer missing: no Friedman, but every other answer still counts.
  const auto missing = run.json(columns, {run.write("missing.csv", csv({{1, 2, 3}, {1, 3, 2}, {1, 2, 3}}) + "t9,A,1\nt9,B,2\nt9,C,NA\n")});
  CHECK(missing.at("friedman").at("statistic").is_null());
  CHECK(missing.at("durbin").at("statistic").is_number());
  CHECK(missing.at("durbin").at("balanced") == false);
  CHECK(missing.at("tasters") == 4);
  CHECK(missing.at("pairs")[0].at("why").is_string());
  // Two samples, all rank alike: no residual for Conover.
  const auto agreed = run.json(columns, {run.write("two.csv", csv({{1, 2}, {1, 2}, {1, 2}, {1, 2}}))});
  CHECK_THAT(at(agreed, "/friedman/p_exact"), WithinAbs(0.125, 1e-12));
  CHECK(agreed.at("pairs")[0].at("p_conover_holm").is_null());
  CHECK(agreed.at("pairs")[0].at("p_nemenyi").is_number());
}

TEST_CASE("bad ranks are refused by name") {
  Terminal run;
  const std::string good = run.write("good.csv", csv({{1, 2, 3}, {3, 2, 1}}));
  requireRefused(run, columns + " --expected A,B", "--expected", {good});
  requireRefused(run, columns + " --expected A,B,B", "--expected", {good});
  requireRefused(run, columns + " --expected A,B,X", "--expected", {good});
  requireRefused(run, columns + " --alpha 2", "--alpha", {good});
  requireRefused(run, "ranks --rank rank --sample what", "--taster", {good});
  requireRefused(run, "ranks --rank rank --sample nose --taster who", "nose", {good});
  requireRefused(run, columns, "line 8", {run.write("twice.csv", csv({{1, 2, 3}, {3, 2, 1}}) + "t1,C,2\n")});
  requireRefused(run, columns, "line 2", {run.write("words.csv", "who,what,rank\nt1,A,first\nt1,B,2\n")});
  requireRefused(run, columns, "what", {run.write("one.csv", "who,what,rank\nt1,A,1\nt2,A,2\n")});
  requireRefused(run, columns, "rank", {run.write("none.csv", "who,what,rank\nt1,A,NA\nt1,B,.\n")});
}
