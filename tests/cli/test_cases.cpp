#include "cli/ran.h"
#include "stats/cases.h"

#include <map>

using oddglass::testing::number;
using oddglass::testing::Terminal;
using checks::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// The cases of tests/data/checks through the program. Each carries its own source; those of functions that no command shows are left to tests/stats.

namespace {

/// The name on the command line of a method in the literature; empty for a variant that the program does not offer.
std::string named(const std::string& method) {
  static const std::map<std::string, std::string> names{{"triangle", "triangle"}, {"duo-trio", "duo-trio"}, {"tetrad", "tetrad"}, {"two-out-of-five", "two-out-of-five"},
                                                        {"2-AFC", "pair"}, {"paired_one_sided", "pair"}, {"paired_one_sided/duo-trio", "pair"}, {"3-AFC", "three-afc"},
                                                        {"paired_two_sided", "preference"}};
  const auto found = names.find(method);
  return found == names.end() ? "" : found->second;
}

std::string whole(const Json& value) { return std::to_string(value.get<int>()); }

double at(const oddglass::cli::Json& json, const std::string& path) { return json.at(oddglass::cli::Json::json_pointer(path)).get<double>(); }

}  // namespace

TEST_CASE("exact p of a count, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("exact_p")) {
    const Json& in = each.at("inputs");
    INFO(each.at("id"));
    const std::string method = named(in.at("test"));
    REQUIRE_FALSE(method.empty());
    const auto got = run.json("count --method " + method + " --trials " + whole(in.at("n")) + " --correct " + whole(in.at("correct")));
    CHECK_THAT(at(got, "/p_value"), WithinRel(each.at("expected").at("p").get<double>(), 1e-9));
    ++looked;
  }
  CHECK(looked == 33);
}

TEST_CASE("critical numbers, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("critical_numbers")) {
    const Json& in = each.at("inputs");
    const std::string method = named(in.at("test"));
    if (method.empty()) continue;  // a tetrad where the attribute is named: another test
    for (const Json& alpha : in.at("alphas")) {
      INFO(each.at("id") << " at " << alpha);
      const auto got = run.json("critical --of " + method + " --trials " + whole(in.at("n")) + " --alpha " + alpha.get<std::string>());
      CHECK(Json(got.at("critical")) == each.at("expected").at(alpha.get<std::string>()));
      CHECK(got.at("by") == "exact");
      ++looked;
    }
  }
  CHECK(looked > 300);
}

TEST_CASE("power of trials, through the program") {
  Terminal run;
  for (const Json& each : checks::family("power")) {
    const Json& in = each.at("inputs");
    INFO(each.at("id"));
    const std::string size = in.contains("pd") ? " --pd " + number(in.at("pd")) : " --d-prime " + number(in.at("d_prime"));
    const auto got = run.json("power --method " + named(in.at("method")) + " --trials " + whole(in.at("n")) + size + " --alpha " + number(in.at("alpha")));
    CHECK(got.at("critical") == each.at("expected").at("critical").get<int>());
    CHECK_THAT(at(got, "/power"), WithinAbs(each.at("expected").at("power").get<double>(), 1e-8));
  }
}

TEST_CASE("sizes, through the program") {
  Terminal run;
  for (const Json& each : checks::family("sample_size")) {
    const Json& in = each.at("inputs");
    INFO(each.at("id"));
    const std::string size = in.contains("pd") ? " --pd " + number(in.at("pd")) : " --d-prime " + number(in.at("d_prime"));
    const auto got = run.json("size --method " + named(in.at("method")) + size + " --alpha " + number(in.at("alpha")) + " --power " + number(1 - in.at("beta").get<double>()));
    CHECK(got.at("first").at("trials") == each.at("expected").at("n_first_reaching_power").get<int>());
    CHECK(got.at("stable").at("trials") == each.at("expected").at("n_stable").get<int>());
  }
}

TEST_CASE("right answers of a difference, through the program") {
  Terminal run;
  for (const Json& each : checks::family("thurstone_pc")) {
    const Json& in = each.at("inputs");
    const Json sizes = in.at("d_prime").is_array() ? in.at("d_prime") : Json::array({in.at("d_prime")});
    const Json wanted = in.at("d_prime").is_array() ? each.at("expected").at("pc") : Json::array({each.at("expected").at("pc")});
    for (std::size_t i = 0; i < sizes.size(); ++i) {
      INFO(each.at("id") << " at " << sizes[i]);
      const auto got = run.json("link --method " + named(in.at("method")) + " --d-prime " + number(sizes[i]));
      CHECK_THAT(at(got, "/pc"), WithinAbs(wanted[i].get<double>(), each.at("tolerance").at("abs").get<double>()));
    }
  }
}

TEST_CASE("d' of a count with its error and limits, through the program") {
  Terminal run;
  const std::map<std::string, std::pair<std::string, double>> keys{{"d_prime", {"/d_prime/estimate", 1e-6}}, {"se", {"/d_prime_se", 1e-5}}, {"lower", {"/d_prime/low", 1e-5}},
                                                                  {"upper", {"/d_prime/high", 1e-5}}, {"exact_low", {"/d_prime/exact_low", 1e-5}}, {"exact_high", {"/d_prime/exact_high", 1e-5}}};
  int looked = 0;
  for (const Json& each : checks::family("thurstone_dprime")) {
    const Json& in = each.at("inputs");
    if (!in.contains("correct")) continue;
    const auto got = run.json("count --method " + named(in.at("method")) + " --trials " + whole(in.at("n")) + " --correct " + whole(in.at("correct")));
    for (const auto& [key, value] : each.at("expected").items()) {
      const auto found = keys.find(key);
      if (found == keys.end() || !value.is_number()) continue;
      INFO(each.at("id") << ' ' << key);
      CHECK_THAT(at(got, found->second.first), WithinAbs(value.get<double>(), found->second.second));
      ++looked;
    }
  }
  CHECK(looked > 30);
}

TEST_CASE("intervals of a share, and of the share who tell, through the program") {
  Terminal run;
  for (const Json& each : checks::family("binomial_ci")) {
    const Json& in = each.at("inputs");
    INFO(each.at("id"));
    const std::string counts = " --trials " + whole(in.at("n")), level = " --level " + number(in.at("conf"));
    if (in.contains("guess")) {
      const auto got = run.json(std::string("count --method ") + (in.at("guess").get<double>() < 0.4 ? "triangle" : "duo-trio") + counts + " --correct " + whole(in.at("x")) + level);
      CHECK_THAT(at(got, "/pd/estimate"), WithinAbs(each.at("expected").at("pd_hat").get<double>(), 1e-8));
      CHECK_THAT(at(got, "/pd/low"), WithinAbs(each.at("expected").at("pd_ci")[0].get<double>(), 1e-8));
      CHECK_THAT(at(got, "/pd/high"), WithinAbs(each.at("expected").at("pd_ci")[1].get<double>(), 1e-8));
      continue;
    }
    const auto got = run.json("proportion" + counts + " --successes " + whole(in.at("x")) + level);
    for (const char* key : {"clopper_pearson", "wilson", "jeffreys"})
      for (int end : {0, 1}) CHECK_THAT(got.at(key).at(end).get<double>(), WithinAbs(each.at("expected").at(key)[end].get<double>(), 1e-7));
  }
}

TEST_CASE("the largest count for alikeness, through the program") {
  Terminal run;
  for (const Json& each : checks::family("similarity")) {
    const Json& in = each.at("inputs");
    const bool isList = in.contains("pd_percent");
    const Json limits = isList ? in.at("pd_percent") : Json::array({in.at("pd").get<double>() * 100});
    const Json wanted = isList ? each.at("expected").at("max_correct") : Json::array({each.at("expected").at("max_correct")});
    const std::string beta = in.at("beta").is_string() ? in.at("beta").get<std::string>() : number(in.at("beta"));
    for (std::size_t i = 0; i < limits.size(); ++i) {
      INFO(each.at("id") << " at " << limits[i]);
      const auto got = run.json("count --method " + named(in.at("test")) + " --correct 0 --trials " + whole(in.at("n")) + " --alpha " + beta + " --limit-pd " + number(limits[i].get<double>() / 100));
      CHECK(Json(got.at("similarity").at("largest_correct")) == wanted[i]);
      const auto plan = run.json("power --similarity --method " + named(in.at("test")) + " --trials " + whole(in.at("n")) + " --alpha " + beta + " --limit-pd " + number(limits[i].get<double>() / 100));
      CHECK(Json(plan.at("critical")) == wanted[i]);
    }
  }
}

TEST_CASE("what is known of the share afterwards, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("bayes")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    INFO(each.at("id"));
    if (wanted.contains("bayes_factor_difference")) {
      const auto got = run.json("count --method triangle --trials " + whole(in.at("trials")) + " --correct " + whole(in.at("correct")));
      CHECK_THAT(at(got, "/posterior/bayes_factor_difference"), WithinRel(wanted.at("bayes_factor_difference").get<double>(), 1e-9));
      ++looked;
    } else if (wanted.contains("q05")) {
      const auto got = run.json("count --method triangle --level 0.9 --trials " + whole(in.at("n")) + " --correct " + whole(in.at("x")));
      CHECK_THAT(at(got, "/posterior/low"), WithinAbs(wanted.at("q05").get<double>(), 1e-8));
      CHECK_THAT(at(got, "/posterior/high"), WithinAbs(wanted.at("q95").get<double>(), 1e-8));
      ++looked;
    }
  }
  CHECK(looked >= 2);
}

TEST_CASE("strength, attenuation and grams, through the program") {
  Terminal run;
  int gravities = 0, pours = 0;
  for (const Json& each : checks::family("alcohol")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    INFO(each.at("id"));
    if (in.contains("OG")) {
      const auto got = run.json("gravity --og " + number(in.at("OG")) + " --fg " + number(in.at("FG")));
      const std::map<std::string, std::string> keys{{"abv_simple_131.25", "/abv_simple"}, {"abv_hall", "/abv"}, {"apparent_attenuation", "/apparent_attenuation"},
                                                    {"plato_OG", "/plato_og"}, {"plato_FG", "/plato_fg"}};
      for (const auto& [key, path] : keys) CHECK_THAT(at(got, path), WithinAbs(wanted.at(key).get<double>(), 1e-9));
      ++gravities;
    } else if (in.contains("volume_ml") && wanted.contains("grams")) {
      const std::string drink = "pour --volume " + number(in.at("volume_ml")) + " --abv " + number(in.at("abv_percent")) + " --cups 1 --country ";
      const std::map<std::string, std::string> countries{{"AU", "au_drinks_10g"}, {"US", "us_drinks_14g"}, {"CA", "ca_drinks_13.45g"}, {"JP", "jp_drinks_20g"}};
      for (const auto& [country, key] : countries) {
        const auto got = run.json(drink + country);
        CHECK_THAT(at(got, "/grams"), WithinRel(wanted.at("grams").get<double>(), 1e-12));
        CHECK_THAT(at(got, "/drinks"), WithinRel(wanted.at(key).get<double>(), 1e-12));
      }
      ++pours;
    }
  }
  CHECK(gravities == 5);
  CHECK(pours == 3);
}

TEST_CASE("people who tasted several rounds, from a table") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("replicated")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    if (!in.contains("x") || !wanted.contains("gamma") || !wanted.contains("lr")) continue;
    INFO(each.at("id"));
    std::string table = "who,right\n";
    int taster = 0;
    for (const Json& count : in.at("x")) {
      ++taster;
      for (int round = 0; round < in.at("n_rep").get<int>(); ++round) table += 't' + std::to_string(taster) + ',' + (round < count.get<int>() ? '1' : '0') + '\n';
    }
    const auto got = run.json("count --method triangle --taster who --correct right", {run.write("rounds.csv", table)});
    CHECK_THAT(at(got, "/replicated/gamma"), WithinAbs(wanted.at("gamma").get<double>(), 1e-4));
    CHECK_THAT(at(got, "/replicated/lr"), WithinAbs(wanted.at("lr").get<double>(), 1e-5));
    CHECK_THAT(at(got, "/replicated/p_value"), WithinAbs(wanted.at("p_value").get<double>(), 1e-6));
    ++looked;
  }
  CHECK(looked == 2);
}
