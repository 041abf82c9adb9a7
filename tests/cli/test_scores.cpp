#include "cli/ran.h"
#include "stats/cases.h"

#include <set>

using oddglass::testing::number;
using oddglass::testing::Ran;
using oddglass::testing::requireRefused;
using oddglass::testing::Terminal;
using checks::Json;
using Got = oddglass::cli::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// Scores [sample][taster][round] as a long table; samples p1, p2 ..., tasters t1 ...
std::string tableOf(const Json& scores) {
  std::string table = "who;what;round;score\n";
  for (std::size_t s = 0; s < scores.size(); ++s)
    for (std::size_t t = 0; t < scores[s].size(); ++t)
      for (std::size_t k = 0; k < scores[s][t].size(); ++k)
        table += 't' + std::to_string(t + 1) + ";p" + std::to_string(s + 1) + ';' + std::to_string(k + 1) + ';' + number(scores[s][t][k]) + '\n';
  return table;
}

const std::string columns = "scores --response score --sample what --taster who ";

double at(const Got& json, const std::string& path) { return json.at(Got::json_pointer(path)).get<double>(); }

void requireKeys(const Got& object, const std::vector<std::string>& wanted) {
  for (const auto& key : wanted) {
    INFO(key << " in " << object);
    CHECK(object.contains(key));
  }
}

/// No null without a reason in the same object or above it, and every key of the contract.
void requireWhole(const Got& json) {
  requireKeys(json, {"model", "samples", "means", "pairs", "reference"});
  requireKeys(json.at("model"), {"fit", "random", "variance", "reml_criterion", "singular"});
  requireKeys(json.at("model").at("variance"), {"taster", "taster:sample", "residual"});
  requireKeys(json.at("samples"), {"F", "df1", "df2", "p_value", "note"});
  for (const auto& each : json.at("means")) requireKeys(each, {"sample", "mean", "se", "df", "low", "high"});
  for (const auto& each : json.at("pairs")) requireKeys(each, {"a", "b", "difference", "se", "df", "low", "high", "p_tukey"});
  for (const auto& each : json.at("reference")) requireKeys(each, {"sample", "difference", "se", "df", "low", "high", "p_dunnett"});
  const auto check = [](const Got& object, const auto& self) -> void {
    if (object.is_array()) for (const auto& each : object) self(each, self);
    if (!object.is_object()) return;
    for (const auto& [key, value] : object.items()) {
      INFO(key << " in " << object);
      if (value.is_null() && key != "note") CHECK(object.contains("why"));
      self(value, self);
    }
  };
  check(json, check);
}

}  // namespace

TEST_CASE("scores of a full table, through the program") {
  Terminal run;
  for (const Json& each : checks::family("anova")) {
    INFO(each.at("id"));
    const Json& wanted = each.at("expected");
    const std::string file = run.write("scores.csv", tableOf(each.at("inputs").at("scores_product_x_assessor_x_rep")));
    const Got got = run.json(columns + "--round round --reference p1", {file});
    requireWhole(got);
    CHECK(got.at("model").at("fit") == "anova");
    CHECK_THAT(at(got, "/samples/F"), WithinAbs(wanted.at("F_product").get<double>(), 1e-6));
    CHECK_THAT(at(got, "/samples/p_value"), WithinAbs(wanted.at("p_product").get<double>(), 1e-6));
    CHECK(at(got, "/samples/df1") == wanted.at("df")[0].get<double>());
    CHECK(at(got, "/samples/df2") == wanted.at("df")[2].get<double>());
    CHECK_THAT(at(got, "/pairs/0/high") - at(got, "/pairs/0/difference"), WithinAbs(wanted.at("hsd_5pct").get<double>(), 1e-4));
    const std::size_t samples = wanted.at("df")[0].get<std::size_t>() + 1;
    CHECK(got.at("means").size() == samples);
    CHECK(got.at("pairs").size() == samples * (samples - 1) / 2);
    CHECK(got.at("reference").size() == samples - 1);
    CHECK(got.at("pairs")[0].at("a") == "p1");
    CHECK(got.at("pairs")[0].at("b") == "p2");
    // Sample minus reference is the other way round than the pair.
    CHECK_THAT(at(got, "/reference/0/difference"), WithinAbs(-at(got, "/pairs/0/difference"), 1e-12));
    // Rounds that were not named are the same answers.
    CHECK(run.json(columns + "--reference p1", {file}) == got);
  }
}

TEST_CASE("a variance below zero is said and changes no test, through the program") {
  Terminal run;
  const Json anova = checks::family("anova").at(0);
  REQUIRE(anova.at("id") == checks::family("scores").at(0).at("inputs").at("same_data_as"));
  const Json wanted = checks::family("scores").at(0).at("expected").at("samples");
  const Got got = run.json(columns, {run.write("scores.csv", tableOf(anova.at("inputs").at("scores_product_x_assessor_x_rep")))});
  for (const auto& [key, value] : wanted.items()) CHECK_THAT(at(got, "/samples/" + key), WithinAbs(value.get<double>(), 1e-6));
  CHECK(got.at("samples").at("note").get<std::string>().find("below zero") != std::string::npos);
  CHECK(at(got, "/model/variance/taster:sample") < 0.0);
  CHECK(got.at("model").at("singular") == true);
}

TEST_CASE("difference from a control, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("multiple_comparison")) {
    const std::string key = "difference_scores_assessor_x_[blind control,samples]";
    if (!each.at("inputs").contains(key)) continue;
    INFO(each.at("id"));
    std::string table = "who,what,score\n";
    int taster = 0;
    for (const Json& row : each.at("inputs").at(key)) {
      ++taster;
      for (std::size_t s = 0; s < row.size(); ++s) table += std::to_string(taster) + ',' + (s ? "s" + std::to_string(s) : "control") + ',' + number(row[s]) + '\n';
    }
    const Got got = run.json(columns + "--reference control", {run.write("dfc.csv", table)});
    requireWhole(got);
    for (std::size_t i = 0; i < each.at("expected").at("diff").size(); ++i) {
      const std::string row = "/reference/" + std::to_string(i);
      CHECK_THAT(at(got, row + "/difference"), WithinAbs(each.at("expected").at("diff")[i].get<double>(), 1e-9));
      CHECK_THAT(at(got, row + "/difference") / at(got, row + "/se"), WithinAbs(each.at("expected").at("t")[i].get<double>(), 1e-6));
      CHECK_THAT(at(got, row + "/p_dunnett"), WithinAbs(each.at("expected").at("p_dunnett")[i].get<double>(), 1e-8));
      CHECK_THAT(at(got, row + "/high") - at(got, row + "/difference"), WithinAbs(each.at("expected").at("dunnett_LSD").get<double>(), 1e-6));
    }
    ++looked;
  }
  CHECK(looked == 2);
}

TEST_CASE("scores with holes, positions and sessions take the mixed model") {
  Terminal run;
  std::string table = "who,what,place,day,score\n";
  // Invented: six people, three samples, two days; one answer is missing.
  const char* samples[]{"a", "b", "c"};
  for (int t = 0; t < 6; ++t)
    for (int s = 0; s < 3; ++s)
      for (int day = 0; day < 2; ++day)
        table += "t" + std::to_string(t) + ',' + samples[s] + ',' + std::to_string((s + t + day) % 3 + 1) + ",d" + std::to_string(day) + ',' +
                 (t == 5 && s == 2 && day == 1 ? "NA" : std::to_string(4 + s + (t * 7 + s * 5 + day * 3) % 4)) + '\n';
  const std::string file = run.write("holes.csv", table);
  for (const char* more : {"", "--position place ", "--session day ", "--position place --session day --reference b "}) {
    INFO(more);
    const Got got = run.json(columns + more, {file});
    requireWhole(got);
    CHECK(got.at("model").at("fit") == "reml");
    CHECK(got.at("means").size() == 3);
    CHECK(got.at("samples").at("F").is_number());
  }
}

TEST_CASE("scores that cannot be judged: null and why") {
  Terminal run;
  for (const char* rows : {"t1,a,5\nt1,b,6\n", "t1,a,5\nt1,b,6\nt1,b,7\n", "t1,a,5\nt1,b,5\nt2,a,5\nt2,b,5\n", "t1,a,5\nt1,b,6\nt2,a,4\nt2,b,5\n", "t1,a,5\nt2,b,6\n",
                           "t1,a,5\nt1,b,6\nt2,a,4\nt2,b,\n", "t1,a,5\nt2,a,6\nt3,b,5\nt4,b,5\n"}) {
    INFO(rows);
    const Got got = run.json(columns + "--reference a", {run.write("odd.csv", std::string("who,what,score\n") + rows)});
    requireWhole(got);
    if (got.at("samples").at("F").is_null()) CHECK(got.at("why").is_string());
  }
}

TEST_CASE("scores: bad input is named") {
  Terminal run;
  const std::string file = run.write("s.csv", "who,what,score\nt1,a,5\nt1,b,6\nt2,a,4\nt2,b,7\n");
  requireRefused(run, columns + "--reference z", "--reference", {file});
  requireRefused(run, columns + "--level 1", "--level", {file});
  requireRefused(run, columns + "--session day", "day", {file});
  requireRefused(run, "scores --sample what --taster who", "--response", {file});
  requireRefused(run, columns, "FILE");
  requireRefused(run, columns, "line 3", {run.write("t.csv", "who,what,score\nt1,a,5\nt1,b,x\n")});
  requireRefused(run, columns, "what", {run.write("one.csv", "who,what,score\nt1,a,5\nt2,a,6\n")});
}

TEST_CASE("tails, critical values and adjusted p values, through the program") {
  Terminal run;
  // R's ptukey gives 4.78e-6 here; the true figure is from the project's own plan, by two integrations.
  CHECK_THAT(at(run.json("tail --of studentized-range --groups 3 --df 6 --value 25"), "/p_value"), WithinRel(5.2195e-6, 1e-5));
  for (const Json& each : checks::family("multiple_comparison")) {
    const Json& in = each.at("inputs");
    INFO(each.at("id"));
    if (in.contains("k"))
      for (const char* alpha : {"05", "01"}) {
        const Got got = run.json("critical --of studentized-range --groups " + in.at("k").dump() + " --df " + in.at("df").dump() + " --alpha 0." + alpha);
        CHECK_THAT(at(got, "/critical"), WithinAbs(each.at("expected").at(std::string("q_") + alpha).get<double>(), 2e-5));
        CHECK_THAT(at(got, "/alpha_actual"), WithinRel(std::stod(std::string("0.") + alpha), 1e-9));
        CHECK(got.at("by") == "exact");
      }
    if (in.contains("treatments_vs_control"))
      for (const auto& [sides, key] : {std::pair{"1", "d_one_sided_05"}, {"2", "d_two_sided_05"}}) {
        const std::string plan = "--of dunnett --treatments " + in.at("treatments_vs_control").dump() + " --df " + in.at("df").dump() + " --sides " + sides;
        const Got got = run.json("critical " + plan);
        CHECK_THAT(at(got, "/critical"), WithinAbs(each.at("expected").at(key).get<double>(), 1e-8));
        CHECK_THAT(at(run.json("tail " + plan + " --value " + number(at(got, "/critical"))), "/p_value"), WithinRel(0.05, 1e-9));
      }
  }
  for (const Json& each : checks::family("p_adjust")) {
    std::string list;
    for (const Json& p : each.at("inputs").at("p")) list += (list.empty() ? "" : ",") + number(p);
    const Got got = run.json("adjust --p " + list);
    for (const char* key : {"holm", "benjamini_hochberg"})
      for (std::size_t i = 0; i < got.at(key).size(); ++i) CHECK_THAT(got.at(key)[i].get<double>(), WithinAbs(each.at("expected").at(key)[i].get<double>(), 1e-12));
  }
  requireRefused(run, "tail --of studentized-range --groups 1 --df 6 --value 2", "--groups");
  requireRefused(run, "tail --of studentized-range --groups 3 --df 0 --value 2", "--df");
  requireRefused(run, "tail --of studentized-range --groups 3 --df 6 --value -1", "--value");
  requireRefused(run, "tail --of dunnett --treatments 2 --df 6 --sides 3 --value 1", "--sides");
  requireRefused(run, "tail --of triangle --value 1", "--of");
  requireRefused(run, "critical --of dunnett --df 6", "--treatments");
  requireRefused(run, "adjust --p 0.1,,0.2", "--p");
  requireRefused(run, "adjust --p 0.1,1.2", "--p");
  requireRefused(run, "adjust --p 0.1,nan", "--p");
}

TEST_CASE("power of score sheets, through the program") {
  Terminal run;
  const std::string plan = "power --scores --tasters 8 --samples 2 --rounds 1 --sd-interaction 1 --sd-repeat 0 --difference ";
  const Got got = run.json(plan + "1");
  // Eight scorers show 1.2 spreads of people's own differences 8 times in 10 (the project's own simulation); the spread is sqrt(2) here.
  CHECK_THAT(at(got, "/smallest_difference") / std::sqrt(2.0), WithinAbs(1.2, 0.05));
  CHECK_THAT(at(run.json(plan + number(at(got, "/smallest_difference"))), "/power"), WithinRel(0.8, 1e-9));
  CHECK(run.json("power --scores --tasters 1 --samples 2 --rounds 2 --difference 1 --sd-interaction 1 --sd-repeat 1").at("why").is_string());
  CHECK(run.json("power --scores --tasters 4 --samples 2 --rounds 2 --difference 1 --sd-interaction 0 --sd-repeat 0").at("power").is_null());
  requireRefused(run, "power --scores --tasters 4 --samples 1 --difference 1", "--samples");
  requireRefused(run, "power --scores --tasters 4 --samples 2", "--difference");
  requireRefused(run, "power --scores --tasters 4 --samples 2 --difference 1 --sd-repeat -1", "--sd-repeat");
  requireRefused(run, "power --scores --method triangle --tasters 4 --samples 2 --difference 1", "--method");
  requireRefused(run, "power --method triangle --trials 6 --pd 0.5 --tasters 6", "--scores");
}
