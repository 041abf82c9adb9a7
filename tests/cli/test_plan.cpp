// The command `plan` for every method: what it takes, finds and needs, and what is refused by name.
#include "cli/night.h"

#include <cmath>

using namespace oddglass::testing;
using oddglass::cli::Json;
using Catch::Matchers::WithinAbs;

namespace {

Json planned(Night& run, const std::string& more) { return run.json("plan", {run.write("plan.json", Night::planWith(more))}); }

}  // namespace

TEST_CASE("a plan of every method is kept and told, by commands") {
  Night run;
  run.json("put", {run.write("shelf.json", Night::shelf())});

  // ISO 5495:2005, one-sided: 5 of 5 at 5 in 100 (1/32). Seven places of two cups.
  const Json pair = planned(run, R"("method":"pair","attribute":"bitter","expected":1,)");
  CHECK(pair.at("question") == "more");
  CHECK(pair.at("attribute") == "bitter");
  CHECK(pair.at("ready") == true);
  CHECK(pair.at("outlook").at("needed") == 5);
  CHECK(pair.at("amounts").at("cups") == 14);
  CHECK(pair.at("recommended")[0].at("method") == "pair");

  // Five votes cannot show a preference: 5 to 0 is 1/16.
  const Json liked = planned(run, R"("question":"prefer","may_have_none":true,)");
  CHECK(liked.at("method") == "preference");
  CHECK(liked.at("outlook").at("needed").is_null());
  CHECK(liked.at("outlook").at("why").is_string());
  CHECK(liked.at("outlook").at("share_of") == "preferring");

  const Json looks = planned(run, R"("method":"triangle","rounds":4,"evenings":2,"wave":3,"stopping":{"share_pm":500,"beta_pm":200},)");
  CHECK(looks.at("outlook").at("sequential").at("every") == 5);
  CHECK(looks.at("outlook").at("sequential").at("last") == 20);
  const Json& ends = looks.at("outlook").at("sequential").at("p1");
  CHECK_THAT(ends.at("difference").get<double>() + ends.at("none").get<double>() + ends.at("undecided").get<double>(), WithinAbs(1.0, 1e-9));
  CHECK(looks.at("amounts").at("cups_per_person") == 12);
  CHECK(looks.at("amounts").at("cups_an_evening") == 6);
  CHECK(looks.at("amounts").at("wave").at("waves") == 3);
  CHECK(looks.at("amounts").at("wave").at("cups") == 9);

  // A file that says nothing of give-aways is taken as before; what it says has to fit.
  CHECK(looks.at("give_aways").is_null());
  const Json fizzy = planned(run, R"("method":"triangle","give_aways":{"fizz":"any_means","colour":"mend"},)");
  CHECK(fizzy.at("give_aways") == Json{{"colour", "mend"}, {"fizz", "any_means"}});
  CHECK(fizzy.at("ready") == true);
  CHECK(fizzy.at("serving").at("vessel").is_null());
  const Json served = planned(run, R"("method":"triangle","serving":{"vessel":"dark cups","temperature_c":12,"mouthful":"spat_out"},)");
  CHECK(served.at("serving") == Json{{"vessel", "dark cups"}, {"temperature_c", 12}, {"mouthful", "spat_out"}});
  const Json unfit = planned(run, R"("method":"triangle","give_aways":{"had_before":"mend"},)");
  CHECK(unfit.at("ready") == false);
  CHECK(unfit.at("why").get<std::string>().find("Had before") != std::string::npos);

  const Json aNotA = planned(run, R"("method":"a-not-a","marked":2,"rounds":2,)");
  CHECK(aNotA.at("ready") == true);
  CHECK(aNotA.at("outlook").at("needed").is_null());
  CHECK(aNotA.at("outlook").at("can_show") == true);

  const Json tetrad = planned(run, R"("method":"tetrad","rounds":2,)");
  CHECK(tetrad.at("outlook").at("needed") == 7);  // 10 tetrads guess as triangles do: ISO 4120:2021
  CHECK(tetrad.at("amounts").at("cups_per_person") == 8);
  for (const Json& choice : tetrad.at("recommended")) CHECK_FALSE(choice.at("because").empty());
}

TEST_CASE("two lots of the reference: three comparisons with their needed numbers, beside one target") {
  Night run;
  Json shelf = Json::parse(Night::shelf());
  Json vintage = shelf.at("lots")[1];
  vintage["id"] = "d1000000000000000000000000000003";
  vintage["name"] = "vintage 1";
  shelf.at("lots").push_back(vintage);
  run.json("put", {run.write("shelf.json", shelf.dump())});
  Json file = Json::parse(Night::planWith(""));
  file.at("plan")["lots"] = {"Heather mead", "Bought mead, vintage 1", "Bought mead, vintage 2"};
  file.at("plan")["cup_ml"] = 15;
  file.at("plan")["method"] = "triangle";
  const Json plan = run.json("plan", {run.write("three.json", file.dump())});
  CHECK(plan.at("ready") == true);
  CHECK(plan.at("outlook").at("comparisons") == 3);
  // Five triangles: 5 of 5 is 1/243 (at most 1/60), 4 of 5 is 11/243 = .045 (at most 1/20, not 1/40): exact binomial, Holm 1979.
  CHECK(plan.at("outlook").at("needed_in_turn") == Json::array({5, 5, 4}));
  CHECK(plan.at("three_comparisons").at("cups_per_person").get<int>() == 3 * plan.at("one_target").at("cups_per_person").get<int>());
  CHECK(plan.at("three_comparisons").at("grams").get<double>() > plan.at("one_target").at("grams").get<double>());
}

TEST_CASE("what does not go with a method is said, and the plan is kept unready") {
  Night run;
  run.json("put", {run.write("shelf.json", Night::shelf())});
  for (const char* more : {R"("method":"pair",)", R"("attribute":"bitter",)", R"("method":"a-not-a",)", R"("method":"triangle","marked":1,)", R"("method":"same-different","rounds":2,"stopping":{},)",
                           R"("method":"preference","also_prefer":true,)", R"("evenings":2,)", R"("seeks":"alike",)", R"("rounds":2,"stopping":{},"seeks":"both","limit_pm":300,)"}) {
    INFO(more);
    const Json plan = planned(run, more);
    CHECK(plan.at("ready") == false);
    CHECK(plan.at("why").get<std::string>().find('{') == std::string::npos);
  }
}

TEST_CASE("a plan without a method takes the recommended one and says why") {
  Night run;
  run.json("put", {run.write("shelf.json", Night::shelf())});
  const Json free = planned(run, "");
  CHECK(free.at("method") == "tetrad");
  CHECK(free.at("method_chosen") == false);
  CHECK(free.at("recommended")[0].at("method") == "tetrad");
  CHECK_THAT(run("plan", {run.write("plan.json", Night::planWith(""))}).out, Catch::Contains("The program picked this way") && Catch::Contains("Four cups find a difference more often than three"));
  CHECK(planned(run, R"("lingers":true,)").at("method") == "triangle");
  CHECK(planned(run, R"("question":"more",)").at("method") == "pair");
  CHECK(planned(run, R"("question":"prefer",)").at("method") == "preference");
  CHECK(planned(run, R"("attribute":"bitter","expected":1,)").at("method") == "pair");
  const Json own = planned(run, R"("method":"triangle",)");
  CHECK(own.at("method_chosen") == true);
  CHECK_THAT(run("plan", {run.write("plan.json", Night::planWith(R"("method":"triangle",)"))}).out, Catch::Contains("You chose this way: triangle. Better here: tetrad."));
  // What the file says beside the method that it leaves out is not thrown away, but does not go with it.
  CHECK(planned(run, R"("marked":1,)").at("ready") == false);
}

TEST_CASE("a question that its method does not answer is refused by name, and nothing is kept") {
  Night run;
  run.json("put", {run.write("shelf.json", Night::shelf())});
  for (const char* more : {R"("question":"prefer","method":"triangle",)", R"("question":"more","method":"tetrad",)", R"("question":"differ","method":"preference",)"}) {
    INFO(more);
    const auto refused = run("plan", {run.write("plan.json", Night::planWith(more))});
    CHECK(refused.status == 2);
    CHECK_THAT(refused.err, Catch::Contains("method") && Catch::Contains("is not answered by this way of asking"));
  }
  CHECK(run.json("list").at("sessions").empty());
}
