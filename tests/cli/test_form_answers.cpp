// Answers that a form's table holds, by command.
#include "cli/night.h"

using namespace oddglass::testing;
using oddglass::cli::Json;

TEST_CASE("a form's table is taken whole, says who typed it in, and what was left out") {
  Night run;
  run.plan();
  run.seal();
  run.sitAll();
  const std::string file = run.write("form.csv", "When,Your name,Which one?,How sure?,clue\n18:01,Ash,2,sure,taste\n18:02,the owl,1,1,smell\n");
  const std::vector<std::string> maps{"--map", "Your name=name", "--map", "Which one?=choose#1", "--map", "How sure?=sureness#1", "--map", "clue=clue#1"};
  const auto with = [&](std::vector<std::string> more) {
    more.insert(more.begin(), file);
    more.insert(more.end(), maps.begin(), maps.end());
    return more;
  };
  requireRefused(run, "answer " + run.id + " --wide", "--typed-by", with({}));
  requireRefused(run, "answer " + run.id + " --wide", "--typed-by", with({"--typed-by", "Wenna"}));    // made one of the drinks
  requireRefused(run, "answer " + run.id + " --wide", "--typed-by", with({"--typed-by", "Dogwood"}));  // has cups of their own
  requireRefused(run, "answer " + run.id + " --wide", "--map", {file, "--typed-by", "nobody-here", "--map", "Your name"});
  requireRefused(run, "answer " + run.id, "--map", with({"--typed-by", "nobody-here"}));
  requireRefused(run, "answer " + run.id + " --wide", "How sure?", {file, "--typed-by", "nobody-here", "--map", "Your name=name", "--map", "Which one?=choose#1", "--map", "How sure?=sureness#3"});
  CHECK(run.json("table " + run.id).at("places")[0].at("locked") == 0);
  const Json taken = run.json("answer " + run.id + " --wide", with({"--typed-by", "nobody-here"}));
  CHECK(taken.at("answered") == 2);
  CHECK(taken.at("left_out") == Json::array({"When"}));
  CHECK(run.json("table " + run.id).at("places")[1].at("locked") == 1);
  CHECK_THAT(run("history " + run.id).out, Catch::Contains("Place 1 locked round 1: typed in by somebody not at the table."));
  CHECK(run.json("answer " + run.id + " --wide", with({"--typed-by", "nobody-here"})).at("receipts")[0].at("was_there") == true);
}
