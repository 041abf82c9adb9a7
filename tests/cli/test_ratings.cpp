#include "cli/ran.h"
#include "stats/cases.h"

#include <cmath>

using oddglass::cli::Json;
using oddglass::testing::requireRefused;
using oddglass::testing::Terminal;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

const std::string wine = std::string(TEST_DATA) + "/open/wine_bitterness.csv";

}  // namespace

TEST_CASE("ratings of wine, through the program") {
  // ordinal_mixed.json has temp and contact together; here contact stands in for a second factor of the table, as a position.
  Terminal run;
  const auto cases = checks::family("ordinal_mixed");
  const auto& c = cases.at(0);
  for (const auto& [key, more] : {std::pair("laplace", ""), std::pair("agq10", " --points 10")}) {
    const Json got = run.json(std::string("ratings --response rating --sample temp --taster judge --position contact") + more, {wine});
    const auto& wanted = c.at("expected").at(key);
    const double tolerance = c.at("tolerance").at("abs");
    CHECK_THAT(got.at("log_likelihood").get<double>(), WithinAbs(wanted.at("logLik").get<double>(), tolerance));
    CHECK_THAT(got.at("taster_sd").get<double>(), WithinAbs(wanted.at("taster_sd").get<double>(), tolerance));
    REQUIRE(got.at("samples").size() == 1);
    CHECK(got.at("samples")[0].at("sample") == "warm");
    CHECK_THAT(got.at("samples")[0].at("estimate").get<double>(), WithinAbs(wanted.at("temp").get<double>(), tolerance));
    CHECK(got.at("thresholds").size() == 4);
    CHECK(got.at("lr").at("df") == 1);
    CHECK(got.at("singular") == false);
  }
}

TEST_CASE("another reference turns the sign of a comparison, and nothing else") {
  Terminal run;
  const std::string words = "ratings --response rating --sample temp --taster judge";
  const Json cold = run.json(words, {wine}), warm = run.json(words + " --reference warm", {wine});
  CHECK(warm.at("samples")[0].at("sample") == "cold");
  CHECK_THAT(warm.at("samples")[0].at("estimate").get<double>(), WithinRel(-cold.at("samples")[0].at("estimate").get<double>(), 1e-6));
  for (const char* key : {"se", "p_value"}) CHECK_THAT(warm.at("samples")[0].at(key).get<double>(), WithinRel(cold.at("samples")[0].at(key).get<double>(), 1e-5));
  CHECK_THAT(warm.at("lr").at("statistic").get<double>(), WithinAbs(cold.at("lr").at("statistic").get<double>(), 1e-6));
  // The interval by hand: 1.959964 standard errors each way (tables of the normal distribution).
  const Json& one = cold.at("samples")[0];
  CHECK_THAT(one.at("high").get<double>(), WithinAbs(one.at("estimate").get<double>() + 1.959964 * one.at("se").get<double>(), 1e-5));
}

TEST_CASE("ratings without an answer are null, and say why") {
  Terminal run;
  const std::string words = "ratings --response r --sample s --taster t";
  for (const std::string table : {"s,t,r\na,1,3\nb,1,4\na,1,3\nb,1,5\n",              // one taster
                                  "s,t,r\na,1,3\nb,1,3\na,2,3\nb,2,3\n",              // one category
                                  "s,t,r\na,1,1\nb,1,4\na,2,2\nb,2,5\na,3,1\nb,3,4\n"}) {  // wholly apart
    INFO(table);
    const Json got = run.json(words, {run.write("few.csv", table)});
    for (const char* key : {"thresholds", "samples", "taster_sd", "log_likelihood"}) CHECK(got.at(key).is_null());
    CHECK(got.at("lr").at("p_value").is_null());
    CHECK_FALSE(got.at("why").get<std::string>().empty());
  }
}

TEST_CASE("ratings that are no categories are refused by line") {
  Terminal run;
  const std::string words = "ratings --response r --sample s --taster t";
  requireRefused(run, words, "line 3", {run.write("half.csv", "s,t,r\na,1,3\nb,1,3.5\na,2,3\nb,2,4\n")});
  requireRefused(run, words, "--points", {"--points", "0", run.write("good.csv", "s,t,r\na,1,3\nb,1,3\na,2,3\nb,2,4\n")});
  requireRefused(run, words, "--reference", {"--reference", "c", run.write("good.csv", "s,t,r\na,1,3\nb,1,3\na,2,3\nb,2,4\n")});
  requireRefused(run, words, "s", {run.write("one.csv", "s,t,r\na,1,3\na,2,4\n")});
}
