#include "cli/ran.h"

#include <charconv>
#include <cmath>
#include <set>

using oddglass::cli::Json;
using oddglass::testing::Ran;
using oddglass::testing::requireRefused;
using oddglass::testing::Terminal;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

std::set<std::string> keysOf(const Json& object) {
  std::set<std::string> keys;
  for (const auto& [key, value] : object.items()) keys.insert(key);
  return keys;
}

void requireKeys(const Json& object, const std::set<std::string>& wanted) {
  const auto keys = keysOf(object);
  for (const auto& key : wanted) {
    INFO(key << " in " << object);
    CHECK(keys.contains(key));
  }
}

}  // namespace

TEST_CASE("count has its keys, and null with a reason where there is no answer") {
  Terminal run;
  const std::set<std::string> keys{"p_value", "critical", "pc", "pd", "d_prime", "d_prime_se", "posterior", "similarity"};
  const Json some = run.json("count --method triangle --trials 18 --correct 12 --limit-pd 0.3");
  requireKeys(some, keys);
  requireKeys(some.at("pc"), {"estimate", "low", "high"});
  requireKeys(some.at("pd"), {"estimate", "low", "high"});
  requireKeys(some.at("d_prime"), {"estimate", "low", "high", "exact_low", "exact_high"});
  requireKeys(some.at("posterior"), {"median", "low", "high", "bayes_factor_difference"});
  requireKeys(some.at("similarity"), {"limit_pd", "p_value", "largest_correct"});
  CHECK_FALSE(some.contains("why"));

  const Json all = run.json("count --method triangle --trials 4 --correct 4");
  requireKeys(all, keys);
  CHECK(all.at("d_prime").at("estimate").is_null());
  CHECK(all.at("d_prime").at("high").is_null());
  CHECK(all.at("d_prime").at("low").get<double>() > 0.0);
  CHECK(all.at("d_prime_se").is_null());
  CHECK(all.at("d_prime").at("why").is_string());
  CHECK(all.at("why").is_string());

  // Beyond the range of numbers: null, and the reason points the right way.
  const Json far = run.json("count --method triangle --trials 1000000 --correct 900000").at("posterior");
  CHECK(far.at("bayes_factor_difference").is_null());
  CHECK(far.at("why").get<std::string>().find("above") != std::string::npos);

  const Json nothing = run.json("count --method triangle --trials 0 --correct 0");
  requireKeys(nothing, keys);
  CHECK(nothing.at("pc").is_null());
  CHECK(nothing.at("why").is_string());

  const Json preference = run.json("count --method preference --trials 6 --correct 0");
  requireKeys(preference, keys);
  // Two-sided sign test by hand: 2 / 2^6; the larger side must be 6 of 6.
  CHECK_THAT(preference.at("p_value").get<double>(), WithinRel(2.0 / 64.0, 1e-12));
  CHECK(preference.at("critical") == 6);
  for (const char* key : {"pd", "d_prime", "posterior"}) CHECK(preference.at(key).is_null());
  CHECK(preference.at("why").is_string());
}

TEST_CASE("every number has all its digits") {
  Terminal run;
  const Ran ran = run("--json critical --of triangle --trials 3");
  // 3 of 3 by guessing: (1/3)^3, which the text must give back to the last bit.
  const std::string key = "\"alpha_actual\":";
  const std::size_t from = ran.out.find(key) + key.size();
  double value = 0.0;
  std::from_chars(ran.out.data() + from, ran.out.data() + ran.out.size(), value);
  CHECK_THAT(value, WithinRel(1.0 / 27.0, 1e-15));
  CHECK(ran.out.find_first_of(",}", from) - from >= 16);
  CHECK(std::count(ran.out.begin(), ran.out.end(), '\n') == 1);
}

TEST_CASE("power with rounds counts people, and says what independent trials would give") {
  Terminal run;
  // Five people, three rounds, half can taste it: 0.77 with the person as the unit at gamma 0.3, 0.80 independent (exact sums, worked by hand with the
  // chance-corrected beta-binomial for the project's own planning figures).
  const Json rounds = run.json("power --method triangle --trials 15 --pd 0.5 --rounds 3");
  CHECK_THAT(rounds.at("power").get<double>(), WithinAbs(0.77, 0.005));
  CHECK_THAT(rounds.at("power_independent").get<double>(), WithinAbs(0.80, 0.005));
  CHECK(rounds.at("gamma") == 0.3);
  CHECK(rounds.at("critical") == run.json("critical --of triangle --trials 15").at("critical"));
  // With gamma 0 people are alike and the person is no other unit than the cup.
  const Json alike = run.json("power --method triangle --trials 15 --pd 0.5 --rounds 3 --gamma 0");
  CHECK_THAT(alike.at("power").get<double>(), WithinAbs(alike.at("power_independent").get<double>(), 1e-12));
  requireRefused(run, "power --method triangle --trials 16 --pd 0.5 --rounds 3", "--trials");
  // 18 trials, limit 3 in 10: 0.41 to end alike when nobody can tell.
  const Json similar = run.json("power --similarity --method triangle --trials 18 --limit-pd 0.3");
  CHECK_THAT(similar.at("power").get<double>(), WithinAbs(0.41, 0.005));
  CHECK(similar.at("critical") == 5);
  const Json table = run.json("power --similarity --method triangle --trials 18 --limit-pd 0.3 --rounds 3 --pd 0.1");
  requireKeys(table, {"critical", "alpha_actual", "power", "power_independent", "gamma"});
}

TEST_CASE("the three scales of a difference lead back to each other") {
  Terminal run;
  for (const char* method : {"triangle", "duo-trio", "tetrad", "two-out-of-five", "pair", "three-afc"}) {
    const Json there = run.json(std::string("link --method ") + method + " --d-prime 1.25");
    std::ostringstream pc;
    pc.precision(17);
    pc << there.at("pc").get<double>();
    const Json back = run.json(std::string("link --method ") + method + " --pc " + pc.str());
    INFO(method);
    CHECK_THAT(back.at("d_prime").get<double>(), WithinAbs(1.25, 1e-7));
    CHECK_THAT(back.at("pd").get<double>(), WithinRel(there.at("pd").get<double>(), 1e-12));
  }
  const Json sure = run.json("link --method triangle --pc 1");
  CHECK(sure.at("d_prime").is_null());
  CHECK(sure.at("why").is_string());
}

TEST_CASE("no count reaches the risk: null and why") {
  Terminal run;
  const Json critical = run.json("critical --of triangle --trials 2");
  CHECK(critical.at("critical").is_null());
  CHECK(critical.at("why").is_string());
  const Json power = run.json("power --method triangle --trials 2 --pd 0.5");
  CHECK(power.at("critical").is_null());
  CHECK(power.at("why").is_string());
  const Json size = run.json("size --method triangle --power 0.9 --pd 0.001");
  CHECK(size.at("stable").is_null());
  CHECK(size.at("why").is_string());
}

TEST_CASE("places: six of six on one, and from wrong answers only") {
  Terminal run;
  std::string table = "place,right\n";
  for (int i = 0; i < 6; ++i) table += "1,0\n";
  for (int i = 0; i < 4; ++i) table += "3,1\n";
  table += "NA,0\n";
  const std::string file = run.write("places.csv", table);
  const Json wrong = run.json("positions --method triangle --position place --correct right", {file});
  // By hand: expected 2 each, statistic 12; only 3 of 3^6 outcomes are as far.
  CHECK_THAT(wrong.at("statistic").get<double>(), WithinRel(12.0, 1e-12));
  CHECK_THAT(wrong.at("p_exact").get<double>(), WithinRel(3.0 / 729.0, 1e-9));
  CHECK_THAT(wrong.at("p_value").get<double>(), WithinRel(std::exp(-6.0), 1e-12));
  CHECK(wrong.at("df") == 2);
  CHECK(wrong.at("counts") == Json::array({6, 0, 0}));
  CHECK(run.json("positions --method triangle --position place", {file}).at("counts") == Json::array({6, 0, 4}));
  CHECK(run.json("positions --method triangle --position place --correct right", {run.write("none.csv", "place,right\n1,1\n")}).at("why").is_string());
  requireRefused(run, "positions --method pair --position place", "line 8", {file});
  requireRefused(run, "positions --method triangle --position chosen", "chosen", {file});
}

TEST_CASE("a drink where no standard drink is known has grams only; gravities in Plato are the same drink") {
  Terminal run;
  const Json grams = run.json("pour --volume 15 --abv 12 --cups 9 --country SE");
  CHECK_THAT(grams.at("grams").get<double>(), WithinRel(15 * 9 * 0.12 * 0.789, 1e-12));
  CHECK(grams.at("drinks").is_null());
  CHECK(grams.at("why").is_string());
  const Json sg = run.json("gravity --og 1.05 --fg 1.01");
  CHECK(sg.at("formula") == "Hall");
  std::ostringstream og, fg;
  og.precision(17);
  fg.precision(17);
  og << sg.at("plato_og").get<double>();
  fg << sg.at("plato_fg").get<double>();
  const Json plato = run.json("gravity --unit plato --og " + og.str() + " --fg " + fg.str());
  for (const char* key : {"abv", "abv_simple", "abw", "apparent_attenuation"}) CHECK_THAT(plato.at(key).get<double>(), WithinRel(sg.at(key).get<double>(), 1e-8));
}

TEST_CASE("bad input: status 2, one line that names the argument, the same as JSON") {
  Terminal run;
  requireRefused(run, "", "COMMAND");
  requireRefused(run, "brew", "brew");
  requireRefused(run, "count --trials 3 --correct 2", "--method");
  requireRefused(run, "count --method cube --trials 3 --correct 2", "--method");
  requireRefused(run, "count --method triangle --trials 3 --correct 4", "--correct");
  requireRefused(run, "count --method triangle --trials 3 --correct -1", "--correct");
  requireRefused(run, "count --method triangle --trials 3.5 --correct 1", "--trials");
  requireRefused(run, "count --method triangle --trials many --correct 1", "--trials");
  requireRefused(run, "count --method triangle --trials 99999999999999999999 --correct 1", "--trials");
  requireRefused(run, "count --method triangle --trials 3", "--correct");
  requireRefused(run, "count --method triangle --trials 3 --correct 1 --alpha 1", "--alpha");
  requireRefused(run, "count --method triangle --trials 3 --correct 1 --level nan", "--level");
  requireRefused(run, "count --method triangle --trials 3 --correct 1 --limit-pd 0", "--limit-pd");
  requireRefused(run, "count --method triangle --trials 3 --correct 1 --rounds 3", "--rounds");
  requireRefused(run, "count --method triangle --trials 3 --trials 4 --correct 1", "--trials");
  requireRefused(run, "count --method triangle --trials", "--trials");
  requireRefused(run, "count --method triangle --trials 3 --correct ok --taster who", "FILE");
  requireRefused(run, "power --method preference --trials 6 --pd 0.5", "--pd");
  requireRefused(run, "power --method preference --trials 6", "--share");
  requireRefused(run, "power --method preference --similarity --trials 6 --limit-pd 0.3", "--method");
  requireRefused(run, "power --method a-not-a --trials 6", "--d-prime");
  requireRefused(run, "power --method a-not-a --trials 6 --d-prime 1 --tau 1", "--tau");
  requireRefused(run, "power --method triangle --trials 6 --pd 0.5 --share 0.7", "--share");
  requireRefused(run, "size --method preference --power 0.8 --share 0.5", "--share");
  requireRefused(run, "size --method a-not-a --power 0.8 --d-prime 0", "--d-prime");
  requireRefused(run, "count --method triangle --trials 6 --correct 3 --no-preference 2", "--no-preference");
  requireRefused(run, "power --method triangle --trials 6", "--pd");
  requireRefused(run, "power --method triangle --trials 6 --pd 0.5 --d-prime 1", "--d-prime");
  requireRefused(run, "power --method triangle --trials 6 --pd inf", "--pd");
  requireRefused(run, "power --method triangle --similarity --trials 6", "--limit-pd");
  requireRefused(run, "size --method triangle --power 1 --pd 0.5", "--power");
  requireRefused(run, "size --method triangle --power 0.8 --pd 0", "--pd");
  requireRefused(run, "link --method triangle --pc 1.5", "--pc");
  requireRefused(run, "link --method preference --d-prime 1", "--method");
  requireRefused(run, "critical --of dunno --trials 6", "--of");
  requireRefused(run, "proportion --trials 5 --successes 6", "--successes");
  requireRefused(run, "pour --volume 15 --abv 120 --cups 1 --country GB", "--abv");
  requireRefused(run, "pour --volume 15 --abv 12 --cups 1 --country Britain", "--country");
  requireRefused(run, "gravity --og 1.01 --fg 1.05", "--fg");
  requireRefused(run, "gravity --og 1.05 --fg 1.01 --unit brix", "--unit");
}

TEST_CASE("a readable table without --json, help on request") {
  Terminal run;
  const Ran table = run("count --method triangle --trials 30 --correct 15");
  CHECK(table.status == 0);
  CHECK(table.err.empty());
  CHECK_FALSE(Json::accept(table.out));
  CHECK(table.out.find("p value") != std::string::npos);
  CHECK(table.out.find("critical    15") != std::string::npos);
  CHECK(run("--help").status == 0);
  CHECK(run("--help").out.find("count") != std::string::npos);
  CHECK(run("count --help").out.find("--trials") != std::string::npos);
}
