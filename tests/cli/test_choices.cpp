#include "cli/ran.h"
#include "stats/cases.h"

#include <cmath>
#include <numeric>

using oddglass::testing::requireRefused;
using oddglass::testing::Terminal;
using checks::Json;
using Catch::Matchers::WithinAbs;

namespace {

const std::string columns = "choices --left l --right r --winner w --taster who";

std::string label(std::size_t i) { return std::string(1, static_cast<char>('A' + i)); }

}  // namespace

// Every case of tests/data/checks/bradley_terry.json through the program, each pair one way round. (Standard errors beside one sample are in tests/stats.)
TEST_CASE("worths, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("bradley_terry")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    if (in.contains("preference_matrix")) continue;
    INFO(each.at("id"));
    const Json& wins = in.at(in.contains("wins_row_over_col") ? "wins_row_over_col" : "cited_rows_citing_cols");
    std::string text = "l,r,w\n";
    for (std::size_t i = 0; i < wins.size(); ++i)
      for (std::size_t k = 0; k < wins.size(); ++k)
        for (int n = 0; i != k && n < wins[i][k].get<double>(); ++n) text += label(std::min(i, k)) + ',' + label(std::max(i, k)) + ',' + label(i) + '\n';
    const auto got = run.json("choices --left l --right r --winner w", {run.write("choices.csv", text)});
    const Json& beside = wanted.contains("log_ability_vs_first") ? wanted.at("log_ability_vs_first") : wanted.contains("log_ability_vs_Biometrika") ? wanted.at("log_ability_vs_Biometrika") : wanted.at("log_ability_vs_Baltimore");
    double sum = got.at("worth").at("A").get<double>();
    for (std::size_t i = 0; i < beside.size(); ++i) {
      CHECK_THAT(got.at("worth").at(label(i + 1)).get<double>() - got.at("worth").at("A").get<double>(), WithinAbs(beside[i].get<double>(), 1e-5));
      CHECK(got.at("se").at(label(i + 1)).get<double>() > 0.0);
      sum += got.at("worth").at(label(i + 1)).get<double>();
    }
    CHECK_THAT(sum, WithinAbs(0.0, 1e-10));
    CHECK(got.at("regularised") == false);
    CHECK(got.at("tie") == 0.0);
    CHECK(got.at("order").is_null());
    CHECK(got.at("why").is_string());
    CHECK(got.at("circular_triads").empty());
    if (wanted.contains("LR_equal_preference")) {
      CHECK_THAT(got.at("lr").at("statistic").get<double>(), WithinAbs(wanted.at("LR_equal_preference").get<double>(), 1e-5));
      CHECK(got.at("lr").at("df") == wanted.at("df").get<int>());
    }
    ++looked;
  }
  CHECK(looked == 5);
}

TEST_CASE("circular triads of each taster, through the program") {
  Terminal run;
  std::string text = "who,l,r,w\n";
  std::vector<Json> cases;
  for (const Json& each : checks::family("bradley_terry"))
    if (each.at("inputs").contains("preference_matrix")) {
      const Json& preferred = each.at("inputs").at("preference_matrix");
      for (std::size_t a = 0; a < preferred.size(); ++a)
        for (std::size_t b = a + 1; b < preferred.size(); ++b) text += 't' + std::to_string(cases.size()) + ',' + label(a) + ',' + label(b) + ',' + label(preferred[a][b] == 1 ? a : b) + '\n';
      cases.push_back(each);
    }
  REQUIRE(cases.size() == 3);
  const auto got = run.json(columns, {run.write("choices.csv", text)});
  for (std::size_t i = 0; i < cases.size(); ++i) {
    CHECK(got.at("circular_triads")[i].at("taster") == 't' + std::to_string(i));
    CHECK(got.at("circular_triads")[i].at("circular_triads") == cases[i].at("expected").at("circular_triads").get<int>());
    CHECK_THAT(got.at("circular_triads")[i].at("zeta").get<double>(), WithinAbs(cases[i].at("expected").at("zeta").get<double>(), 1e-12));
  }
}

TEST_CASE("ties, the place and one that always wins, through the program") {
  Terminal run;
  const auto both = run.json(columns, {run.write("both.csv", "who,l,r,w\na,X,Y,X\na,Y,X,Y\nb,X,Y,Y\nb,Y,X,tie\nc,X,Y,X\nc,Y,X,X\nd,X,Y,NA\n")});
  // Each stood left three times; the left one was taken three times and the right one twice, X three times and Y twice.
  CHECK(both.at("order").get<double>() > 0.0);
  CHECK(both.at("tie").get<double>() > 0.0);
  CHECK(both.at("worth").at("X").get<double>() > 0.0);
  CHECK(both.at("order_lr").at("df") == 1);
  const auto always = run.json(columns, {run.write("always.csv", "who,l,r,w\na,X,Y,X\nb,X,Y,X\nc,X,Y,X\n")});
  CHECK(always.at("regularised") == true);
  CHECK_THAT(always.at("worth").at("X").get<double>(), WithinAbs(std::log(7.0) / 2.0, 1e-9));
  const auto tied = run.json(columns, {run.write("tied.csv", "who,l,r,w\na,X,Y,tie\nb,Y,X,tie\n")});
  CHECK(tied.at("worth").at("X").is_null());
  CHECK(tied.at("why") == "nothing was told apart: ties everywhere");
  CHECK(tied.at("circular_triads")[0].at("zeta").is_null());
}

TEST_CASE("bad choices are refused by name") {
  Terminal run;
  requireRefused(run, columns, "line 2", {run.write("same.csv", "who,l,r,w\na,X,X,X\n")});
  requireRefused(run, columns, "line 3", {run.write("other.csv", "who,l,r,w\na,X,Y,X\na,X,Y,Z\n")});
  requireRefused(run, columns, "line 2", {run.write("tie.csv", "who,l,r,w\na,tie,Y,Y\n")});
  requireRefused(run, columns, "line 2", {run.write("gap.csv", "who,l,r,w\na,,Y,Y\n")});
  requireRefused(run, columns, "w", {run.write("none.csv", "who,l,r,w\na,X,Y,\n")});
  requireRefused(run, "choices --left l --right r", "--winner", {run.write("good.csv", "who,l,r,w\na,X,Y,X\n")});
  requireRefused(run, "choices --left nose --right r --winner w", "nose", {run.write("good.csv", "who,l,r,w\na,X,Y,X\n")});
}
