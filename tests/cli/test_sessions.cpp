#include "cli/demo_count.h"
#include "cli/night.h"

#include <filesystem>
#include <map>

using namespace oddglass::testing;
using oddglass::cli::Json;

TEST_CASE("an evening by commands, from an empty store to a verified reveal") {
  Night run;
  const Json put = run.json("put", {run.write("shelf.json", Night::shelf())});
  CHECK(put.at("beverages") == 2);
  CHECK(put.at("lots") == 2);
  CHECK(put.at("tasters") == 7);
  CHECK(run.json("put", {(run.folder / "shelf.json").string()}).at("already_there") == 11);

  const Json plan = run.json("plan", {run.write("plan.json", Night::planWith(R"("method":"triangle","rounds":2,)"))});
  run.id = plan.at("id").get<std::string>();
  CHECK(plan.at("panel") == 5);
  CHECK(plan.at("makers") == 1);
  CHECK(plan.at("places") == 7);
  CHECK(plan.at("ready") == true);
  // ISO 4120:2021: 7 of 10 are needed at 5 in 100.
  CHECK(plan.at("outlook").at("needed") == 7);
  // 7 places, 2 rounds, 3 cups.
  CHECK(plan.at("amounts").at("cups") == 42);

  const std::string sheet = (run.folder / "sheet.csv").string();
  const Json sealed = run.json("seal " + run.id.substr(0, 4) + " --worksheet", {sheet});
  CHECK(sealed.at("commitment").get<std::string>().size() == 64);
  CHECK(sealed.at("seal_mark").get<std::string>().size() == 11);
  std::ifstream lines(sheet);
  std::string line;
  std::getline(lines, line);
  CHECK(line == "place,round,position,spare,code,lot\r");
  std::map<std::string, int> cups;
  while (std::getline(lines, line)) ++cups[line.find("Heather mead") != std::string::npos ? "mine" : "bought"];
  // Each cup and its one spare code.
  CHECK(cups["mine"] + cups["bought"] == 84);
  CHECK(cups["mine"] > 0);
  CHECK(cups["bought"] > 0);

  CHECK(run.json("poured " + run.id).at("cups") == 0);
  run.sitAll();
  const Json table = run.json("table " + run.id);
  CHECK(table.at("state") == "sealed");
  CHECK(table.at("places").size() == 7);
  CHECK(table.at("places")[0].at("who") == "Ash");
  CHECK(table.at("places")[1].at("who") == "the owl");
  CHECK(table.at("places")[2].at("who") == "");
  CHECK(run.json("said " + run.id + " --heard-by 1,3 --text", {"the left one is sweet"}).at("heard_by") == Json::array({1, 3}));

  const std::string file = run.answers();
  const Json answered = run.json("answer " + run.id, {file});
  CHECK(answered.at("answered") == 6);
  CHECK(answered.at("receipts")[0].at("was_there") == false);
  CHECK(run.json("answer " + run.id, {file}).at("receipts")[0].at("was_there") == true);
  CHECK(run.json("list").at("sessions")[0].at("answered") == 6);
  CHECK(run.json("void " + run.id + " 2 2 --reason mixed_up").at("reason") == "mixed_up");
  const int lost = run.json("table " + run.id).at("places")[0].at("cups")[0].get<int>();
  const Json spilled = run.json("spilled " + run.id + ' ' + std::to_string(lost));
  CHECK(run.json("table " + run.id).at("places")[0].at("cups")[0] == spilled.at("by"));
  CHECK(run.json("answer " + run.id, {run.answers(2)}).at("answered") == 5);

  const Json closed = run.json("close " + run.id);
  CHECK(closed.at("answered") == 11);
  CHECK(closed.at("voided") == 1);
  CHECK(closed.at("missing") == 0);
  const Json revealed = run.json("reveal " + run.id);
  CHECK(revealed.at("commitment_holds") == true);
  CHECK(revealed.at("trials") == 9);
  CHECK(std::filesystem::exists(revealed.at("backup").get<std::string>()));
  CHECK(run.json("decide " + run.id + " --text", {"rack the next one later"}).at("decision") == "rack the next one later");

  const Json history = run.json("history " + run.id);
  CHECK(history.at("entries")[0].at("kind") == "sealed");
  CHECK(history.at("entries").back().at("kind") == "decided");
  CHECK(history.at("entries").back().at("text").get<std::string>().find("rack the next one later") != std::string::npos);
  const Json verified = run.json("verify " + run.id);
  CHECK(verified.at("holds") == true);
  CHECK(verified.at("pour_sheet_openings") == 1);
  CHECK(verified.at("erased") == 0);
  CHECK(verified.at("checks").size() >= 8);

  for (const char* name : {"report.html", "report.json"}) {
    run.json("report " + run.id + " --out", {(run.folder / name).string()});
    CHECK(std::filesystem::file_size(run.folder / name) > 1000);
  }
  std::ifstream report(run.folder / "report.json");
  CHECK(Json::parse(report).is_object());
}

TEST_CASE("the same evening in plain words ends in the same record") {
  Night run;
  run.plan();
  for (const std::string& words : {"seal " + run.id, "table " + run.id, "poured " + run.id}) {
    const Ran ran = run(words);
    CHECK(ran.status == 0);
    CHECK(ran.err.empty());
    CHECK_FALSE(ran.out.empty());
    CHECK_FALSE(Json::accept(ran.out));
  }
  const char* names[]{"Ash", "Birch", "Cedar", "Dogwood", "Elder", "Wenna"};
  for (int place = 1; place <= 6; ++place) CHECK(run("sit " + run.id + ' ' + std::to_string(place) + ' ' + names[place - 1]).status == 0);
  for (int round = 1; round <= 2; ++round) {
    const Ran ran = run("answer " + run.id, {run.answers()});
    CHECK(ran.status == 0);
    CHECK(std::count(ran.out.begin(), ran.out.end(), '\n') == 6);
    CHECK(ran.out.find("Place 3 locked round " + std::to_string(round) + '.') != std::string::npos);
  }
  CHECK(run("close " + run.id).status == 0);
  const Ran revealed = run("reveal " + run.id);
  CHECK(revealed.status == 0);
  CHECK(revealed.out.find("of 10 tastings were right") != std::string::npos);
  CHECK(run("decide " + run.id + " --text", {"pour pairs"}).status == 0);
  CHECK(run("history " + run.id).out.find("2026-03-14 20:15") != std::string::npos);
  CHECK(run("verify " + run.id).out.find("This record checks.") != std::string::npos);
  CHECK(run("list").out.find("revealed") != std::string::npos);
  CHECK(run("report " + run.id + " --for room --out", {(run.folder / "room.html").string()}).status == 0);
}

TEST_CASE("a plan that cannot be sealed is kept, and says why") {
  Night run;
  run.json("put", {run.write("shelf.json", Night::shelf())});
  const Json plan = run.json("plan", {run.write("plan.json", Night::planWith(R"("method":"triangle","rounds":20,)"))});
  CHECK(plan.at("ready") == false);
  CHECK(plan.at("why").get<std::string>().find("ceiling") != std::string::npos);
  requireRefused(run, "seal " + plan.at("id").get<std::string>(), "ceiling");
  CHECK(run.json("list").at("sessions")[0].at("state") == "draft");
}

TEST_CASE("seal takes no seed, and with a worksheet that cannot be written nothing is sealed") {
  Night run;
  run.plan();
  requireRefused(run, "seal " + run.id + " --seed 7", "--seed");
  requireRefused(run, "seal " + run.id + " --worksheet", "--worksheet", {(run.folder / "shelf.json" / "sheet.txt").string()});
  CHECK(run.json("list").at("sessions")[0].at("state") == "draft");
  run.seal();
  const std::string sheet = (run.folder / "sheet.txt").string();
  run.json("worksheet " + run.id + " --out", {sheet});
  CHECK(std::filesystem::file_size(sheet) > 500);
  CHECK(run.json("verify " + run.id).at("pour_sheet_openings") == 1);
}

TEST_CASE("breaking, giving up and forgetting") {
  Night run;
  run.plan();
  run.seal();
  requireRefused(run, "break " + run.id + " --reason curious", "--yes-break-the-seal");
  requireRefused(run, "break " + run.id + " --yes-break-the-seal", "--reason");
  CHECK(run.json("list").at("sessions")[0].at("state") == "sealed");
  CHECK(run.json("break " + run.id + " --reason curious --yes-break-the-seal").at("state") == "broken");
  requireRefused(run, "reveal " + run.id, "SESSION");

  Night other;
  other.plan();
  requireRefused(other, "abandon " + other.id + " --reason rain", "SESSION");
  other.seal();
  requireRefused(other, "abandon " + other.id, "--reason");
  CHECK(other.json("abandon " + other.id + " --reason rain").at("state") == "abandoned");
  requireRefused(other, "report " + other.id + " --out", "sealed", {(other.folder / "r.html").string()});

  Night third;
  third.plan();
  third.toTheClose();
  const Json revealed = third.json("reveal " + third.id);
  requireRefused(third, "erase Ash --words", "--yes-cannot-be-undone");
  requireRefused(third, "erase Ash --yes-cannot-be-undone", "--words");
  requireRefused(third, "erase Ash --words --everything --yes-cannot-be-undone", "--words");
  requireRefused(third, "erase Nobody --words --yes-cannot-be-undone", "Nobody");
  const Json erased = third.json("erase Ash --everything --yes-cannot-be-undone");
  CHECK(erased.at("sessions") == 1);
  CHECK(erased.at("copies") == Json::array({revealed.at("backup")}));
  const Json verified = third.json("verify " + third.id);
  CHECK(verified.at("holds") == true);
  CHECK(verified.at("erased") == 1);
  CHECK(third.json("erase Dogwood --words --yes-cannot-be-undone").at("sessions") == 1);
}

TEST_CASE("out, checked, changed, checked again, in elsewhere") {
  Night run;
  run.plan();
  run.toTheClose();
  run.json("reveal " + run.id);
  const std::string out = (run.folder / "out").string();
  const std::string file = run.json("export " + run.id + " --as json --out", {out}).at("files")[0].get<std::string>();
  CHECK(run.json("export " + run.id + " --as csv --out", {out}).at("files").size() == 4);
  CHECK(run.json("export --all --as json --out", {out}).at("files").size() == 1);
  CHECK(run.json("export --all --as csv --out", {out}).at("files").size() == 4);
  const Json checked = run.json("verify", {file});
  CHECK(checked.at("holds") == true);
  CHECK(checked.at("sessions")[0].at("id") == run.id);

  std::ifstream in(file);
  Json changed = Json::parse(in);
  Json& entry = changed.at("sessions")[0].at("log")[3];
  entry.at("at") = entry.at("at").get<std::int64_t>() + 1;
  const std::string bad = run.write("changed.json", changed.dump(1));
  for (const char* form : {"verify", "--json verify"}) {
    const Ran ran = run(form, {bad});
    CHECK(ran.status == 1);
    CHECK(ran.err.empty());
    CHECK(ran.out.find("entry") != std::string::npos);
  }
  CHECK(run("--json verify", {bad}).json().at("holds") == false);

  Terminal other;
  requireRefused(other, "import", "changed.json", {bad});
  CHECK_FALSE(std::filesystem::exists(other.store));
  const Json brought = other.json("import", {file});
  CHECK(brought.at("sessions") == Json::array({run.id}));
  CHECK(other.json("list").at("sessions")[0].at("came_from") == "import");
  CHECK(other.json("verify " + run.id).at("holds") == true);
  requireRefused(other, "import", "here already", {file});
}

TEST_CASE("backup and restore") {
  Night run;
  run.plan();
  const std::string copy = (run.folder / "copy.oddglass").string();
  CHECK(run.json("backup --out", {copy}).at("file") == copy);
  requireRefused(run, "backup --out", "--out", {copy});
  run.seal();
  const Json restored = run.json("restore", {copy});
  CHECK(std::filesystem::exists(restored.at("former").get<std::string>()));
  CHECK(run.json("list").at("sessions")[0].at("state") == "draft");
  requireRefused(run, "restore", "shelf.json", {(run.folder / "shelf.json").string()});
  requireRefused(run, "restore", "absent", {(run.folder / "absent.oddglass").string()});
}

TEST_CASE("the demo on an empty store, and only once") {
  Night run;
  requireRefused(run, "demo", "demo_sessions");
  CHECK_FALSE(std::filesystem::exists(run.store));
  run.demoFolders = {run.folder / "not-here", DEMO_SESSIONS};
  const Json demo = run.json("demo");
  const std::size_t evenings = demoEvenings();
  CHECK(demo.at("sessions").size() == evenings);
  requireRefused(run, "demo", "here already");
  const Json list = run.json("list").at("sessions");
  REQUIRE(list.size() == evenings + 1);  // and the one that waits
  for (const Json& each : list) {
    CHECK(each.at("came_from") == "demo");
    CHECK(each.at("state") == (each.at("id") == demo.at("waiting") ? "sealed" : "revealed"));
    CHECK(run.json("verify " + each.at("id").get<std::string>()).at("holds") == true);
  }
  // The one that waits can be tasted at once.
  run.id = demo.at("waiting").get<std::string>();
  int place = 0;
  const Json table = run.json("table " + run.id);
  for (const Json& each : table.at("invited")) run.json("sit " + run.id + ' ' + std::to_string(++place) + ' ' + each.at("taster").get<std::string>());
  CHECK(run.json("answer " + run.id, {run.answers()}).at("answered") == place);
}

TEST_CASE("fewer than four friends are told in the plan and at the place that they will be guessed, on a score sheet too") {
  for (const char* method : {R"("method":"triangle",)", R"("question":"good","method":"sheet","sheet":{"items":[{"kind":"liking"},{"kind":"worst"}],"duplicate":true},)"}) {
    INFO(method);
    Night run;
    run.json("put", {run.write("shelf.json", Night::shelf())});
    const auto planned = [&](const std::string& tasters) {
      std::string plan = Night::planWith(method);
      const std::string all = R"("Wenna","Ash","Birch","Cedar","Dogwood","Elder")";
      plan.replace(plan.find(all), all.size(), tasters);
      const Ran ran = run("plan", {run.write("plan.json", plan)});
      run.id = ran.out.substr(0, ran.out.find(' '));
      return ran.out;
    };
    CHECK_THAT(planned(R"("Wenna","Ash","Birch","Cedar","Dogwood")"), !Catch::Contains("guess who"));
    run.seal();
    CHECK(run.json("sit " + run.id + " 1 Ash").at("told").is_null());
    CHECK_THAT(planned(R"("Wenna","Ash","Birch","Cedar")"), Catch::Contains("people you will guess who wrote what. Signed sheets are more honest."));
    run.seal();
    CHECK(run.json("sit " + run.id + " 1 Ash").at("told") == "With 3 people it will be guessed who answered what. Signed sheets are more honest.");
    CHECK_THAT(run("sit " + run.id + " 2 Birch --as loose").out, Catch::Contains("it will be guessed who answered what"));
  }
}
