// What goes wrong at a table, by commands.
#include "cli/night.h"

using namespace oddglass::testing;
using oddglass::cli::Json;

TEST_CASE("mats swapped, the wrong person, a code misread and answers taken back, by commands") {
  Night run;
  run.plan();
  run.seal();
  run.sitAll();
  requireRefused(run, "swapped " + run.id + " 1 2 1", "sealed");  // nobody has begun
  CHECK(run.json("wrong-person " + run.id + " 1") == Json{{"id", run.id}, {"place", 1}, {"freed", true}, {"set_aside", 0}});
  run.json("sit " + run.id + " 1 Ash --as signed");
  run.json("answer " + run.id, {run.answers()});
  requireRefused(run, "swapped " + run.id + " 1 1 1", "twice");
  requireRefused(run, "swapped " + run.id + " 1 2 3", "round");
  const Json swapped = run.json("swapped " + run.id + " 2 1 1");
  CHECK(swapped.at("begin_again") == Json::array());
  CHECK(swapped.at("set_aside") == Json{1, 2});
  CHECK(run.json("swapped " + run.id + " 3 4 2").at("begin_again") == Json{3, 4});
  CHECK(run.json("wrong-person " + run.id + " 3").at("set_aside") == 1);
  requireRefused(run, "void " + run.id + " 4 1 --written 4?2 --reason mixed_up", "--written");
  CHECK(run.json("void " + run.id + " 4 1 --reason misread", {"--written", "4?2 or 47Z"}).at("reason") == "misread");
  requireRefused(run, "stops " + run.id + " 5 --take-back", "undone");
  CHECK(run.json("stops " + run.id + " 5 --take-back --yes-cannot-be-undone").at("taken_back") == true);
  run.json("stops " + run.id + " 6");
  run.json("answer " + run.id, {run.answers()});
  run.json("close " + run.id);
  requireRefused(run, "stops " + run.id + " 1 --take-back --yes-cannot-be-undone", "closed");
  run.json("reveal " + run.id);
  CHECK(run.json("verify " + run.id).at("checks").size() > 5);
  std::string told;
  const Json history = run.json("history " + run.id);
  for (const Json& entry : history.at("entries")) told += entry.at("text").get<std::string>() + '\n';
  for (const char* each : {"Places 1 and 2 had each other's cups before them in round 1.", "The wrong person sat at place 1", "a code was misread", "4?2 or 47Z"}) {
    INFO(told);
    CHECK(told.find(each) != std::string::npos);
  }
}
