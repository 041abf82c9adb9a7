// The command `plan` for score sheets: the smallest gap that would show, from stated defaults or from the panel's own past tables.
#include "cli/night.h"

#include <cmath>
#include <fstream>

using namespace oddglass::testing;
using oddglass::cli::Json;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr const char* likingSheet = R"("method":"sheet","question":"lacks","sheet":{"items":[{"kind":"liking","main":true}]},)";

}  // namespace

// R 4.2.2: power.t.test(n = 5, sd = 2, type = "paired", power = 0.8, strict = TRUE); an interaction and a repeat of one point each give differences a spread of 2.
TEST_CASE("the plan of a sheet says the smallest gap, from stated defaults where the panel has no past") {
  Night run;
  run.json("put", {run.write("shelf.json", Night::shelf())});
  const Json plan = run.json("plan", {run.write("plan.json", Night::planWith(likingSheet))});
  CHECK(plan.at("ready") == true);
  const Json& outlook = plan.at("outlook");
  CHECK(outlook.at("people") == 5);
  CHECK(outlook.at("spread").at("from") == "default");
  CHECK(outlook.at("spread").at("tables") == 0);
  CHECK(outlook.at("gaps")[0].at("kind") == "liking");
  CHECK_THAT(outlook.at("gaps")[0].at("smallest").get<double>(), WithinRel(3.36399637164, 1e-6));
  CHECK(plan.at("amounts").at("cups") == 14);
  const Ran told = run("plan", {run.write("plan.json", Night::planWith(likingSheet))});
  CHECK_THAT(told.out, Contains("stated default"));
}

TEST_CASE("after tables of the same people their own spread is taken, and said") {
  Night run;
  const std::string demo = DEMO_SESSIONS;
  run.json("put", {demo + "/shelf.json"});
  run.json("import", {demo + "/evening_11.json", demo + "/evening_14.json"});
  std::ifstream in(demo + "/plan.json");
  Json file = Json::parse(in);
  Json& plan = file.at("plan");
  plan["method"] = "sheet";
  plan["question"] = "good";
  plan["rounds"] = 1;
  plan["sheet"] = {{"items", {{{"kind", "liking"}, {"main", true}}}}};
  plan.erase("seeks");
  const std::string name = run.write("sheet.json", file.dump());
  const Json outlook = run.json("plan", {name}).at("outlook");
  CHECK(outlook.at("people") == 7);   // eight sit, one of them made the mead
  CHECK(outlook.at("spread").at("from") == "past");
  CHECK(outlook.at("spread").at("tables") == 2);
  const double between = 8.0 * outlook.at("spread").at("interaction").get<double>(), within = 8.0 * outlook.at("spread").at("repeat").get<double>();
  CHECK(between + within > 0.0);
  // The same gap as the command for score sheets gives for this spread, on nine points.
  const Json power = run.json("power --scores --tasters 7 --samples 2 --rounds 1 --difference 1 --sd-interaction " + number(between) + " --sd-repeat " + number(within));
  CHECK_THAT(outlook.at("gaps")[0].at("smallest").get<double>(), WithinRel(power.at("smallest_difference").get<double>(), 1e-9));
  CHECK_THAT(run("plan", {name}).out, Contains("from your last 2 tables"));
}

TEST_CASE("an opened key says what came out of a score sheet, by its own findings") {
  Night run;
  run.plan(R"("method":"sheet","question":"lacks","rounds":1,"sheet":{"items":[{"kind":"line","word":"honey","limit":10,"main":true},{"kind":"liking"}]},)");
  run.seal();
  run.sitAll();
  std::string rows = "place,round,item,code,value\n";
  const Json seen = run.json("table " + run.id);
  for (const Json& place : seen.at("places"))
    for (const Json& code : place.at("cups")) {
      if (place.at("step") == "empty") continue;
      rows += place.at("place").dump() + ",1,1," + code.dump() + ",40\n" + place.at("place").dump() + ",1,2," + code.dump() + ",6\n";
    }
  run.json("answer " + run.id, {run.write("rows.csv", rows)});
  run.json("close " + run.id);
  const Json opened = run.json("reveal " + run.id);
  CHECK(opened.at("people") == 5);
  CHECK(opened.at("missing") == 0);
  CHECK_FALSE(opened.contains("right"));
  CHECK_THAT(opened.at("headline").get<std::string>(), !Contains("no answer that counts"));
}
