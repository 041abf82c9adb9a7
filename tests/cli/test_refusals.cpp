#include "cli/night.h"

#include "store/store.h"

using namespace oddglass;
using namespace oddglass::testing;
using oddglass::cli::Json;

namespace {

/// All bytes of a file.
std::string bytes(const std::string& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

}  // namespace

TEST_CASE("commands about sessions: what is wrong is named, and nothing is written") {
  Night run;
  requireRefused(run, "list", "cellar.oddglass");
  requireRefused(run, "close abcd", "cellar.oddglass");
  requireRefused(run, "put", "FILE");
  requireRefused(run, "put", "absent.json", {(run.folder / "absent.json").string()});
  requireRefused(run, "put", "line 1", {run.write("bad.json", "{\"format\":\"oddglass\",\"version\":1,\"lots\":[1.5]}")});
  requireRefused(run, "plan", "plan", {run.write("bad.json", "{\"format\":\"oddglass\",\"version\":1}")});
  CHECK_FALSE(std::filesystem::exists(run.store));

  run.plan();
  requireRefused(run, "plan", "Heather wine", {run.write("bad.json", R"({"format":"oddglass","version":1,"plan":{"title":"x","lots":["Heather wine","Bought mead"],"tasters":["Ash"]}})")});
  for (const char* command : {"seal", "close", "reveal", "history", "verify", "table", "said"}) {
    requireRefused(run, command, "SESSION");
    requireRefused(run, std::string(command) + " 012", "012");
    requireRefused(run, std::string(command) + " 0123456789", "0123456789");
  }
  for (const std::string& each : {"history " + run.id, "verify " + run.id, "table " + run.id, "poured " + run.id, "sit " + run.id + " 1 Ash", "worksheet " + run.id + " --out x.txt"})
    requireRefused(run, each, "sealed");
  requireRefused(run, "close " + run.id, "SESSION");
  run.seal();
  requireRefused(run, "seal " + run.id, "sealed");
  requireRefused(run, "sit " + run.id + " 99 Ash", "99");
  requireRefused(run, "sit " + run.id + " one Ash", "PLACE");
  requireRefused(run, "sit " + run.id + " 1 Nobody", "Nobody");
  requireRefused(run, "sit " + run.id + " 1 Odo", "pourer");
  requireRefused(run, "sit " + run.id + " 1 Ash --as hidden", "--as");
  run.sitAll();
  requireRefused(run, "sit " + run.id + " 7 Ash", "Ash");
  requireRefused(run, "spilled " + run.id + " 99", "CODE");
  requireRefused(run, "void " + run.id + " 1 9 --reason rain", "round");
  requireRefused(run, "void " + run.id + " 1 1", "--reason");
  requireRefused(run, "said " + run.id + " --heard-by 1,x", "--heard-by");
  requireRefused(run, "decide " + run.id + " --text early", "SESSION");
  requireRefused(run, "reveal " + run.id, "SESSION");
  requireRefused(run, "export --as json --out out", "SESSION");
  requireRefused(run, "export " + run.id + " --as xml --out out", "--as");
  requireRefused(run, "export " + run.id + " --as json", "--out");
  requireRefused(run, "report " + run.id + " --out r.pdf", "sealed");
  requireRefused(run, "paper " + run.id + " --what labels --out r.pdf", "program with windows");
  requireRefused(run, "paper " + run.id + " --what labels", "--out");
  requireRefused(run, "paper " + run.id + " --out r.pdf", "--what");
  requireRefused(run, "report " + run.id + " --out r.txt", "r.txt");
  requireRefused(run, "report " + run.id, "--out");
  requireRefused(run, "report " + run.id + " --out", "sealed", {(run.folder / "r.html").string()});
  CHECK_FALSE(std::filesystem::exists(run.folder / "r.html"));
  CHECK_FALSE(std::filesystem::exists("r.pdf"));
}

TEST_CASE("answers from a table: all rows or none, and what is wrong is named by line") {
  Night run;
  run.plan();
  run.seal();
  run.sitAll();
  const Json places = run.json("table " + run.id).at("places");
  const std::string mine = places[0].at("cups")[0].dump(), other = places[1].at("cups")[0].dump();
  const auto refused = [&](const std::string& rows, const std::string& named) {
    requireRefused(run, "answer " + run.id, named, {run.write("rows.csv", "place,round,item,code,value\n" + rows)});
    CHECK(run.json("list").at("sessions")[0].at("answered") == 0);
  };
  const std::string whole = "1,1,choose,," + mine + "\n1,1,sureness,,sure\n1,1,clue,,smell\n";
  refused(whole + "2,1,choose,," + mine + "\n2,1,sureness,,sure\n2,1,clue,,smell\n", mine);
  refused(whole + "2,1,choose,," + other + "\n", "Question");
  refused("1,1,choose,,abc\n", "line 2");
  refused("1,1,taste,," + mine + '\n', "line 2");
  refused("99,1,choose,," + mine + '\n', "line 2");
  refused("1,1,choose,," + mine + "\n1,1,sureness,,9\n", "line 3");
  requireRefused(run, "answer " + run.id, "place", {run.write("rows.csv", "seat,round,item,code,value\n1,1,choose,,111\n")});
  requireRefused(run, "answer " + run.id, "absent.csv", {(run.folder / "absent.csv").string()});
  CHECK(run.json("answer " + run.id, {run.write("rows.csv", "place,round,item,code,value\n" + whole)}).at("answered") == 1);
  run.json("close " + run.id);
  const Ran late = run("answer " + run.id, {run.write("late.csv", "place,round,item,code,value\n2,1,choose,," + other + "\n2,1,sureness,,1\n2,1,clue,,1\n")});
  CHECK(late.status == 2);
  CHECK(late.err.find("closed table") != std::string::npos);
}

TEST_CASE("what really went into the cups, from a table") {
  Night run;
  run.plan();
  run.seal();
  run.sitAll();
  const Json places = run.json("table " + run.id).at("places");
  const auto cup = [&](std::size_t place, std::size_t position) { return places[place].at("cups")[position].dump(); };
  const auto poured = [&](const std::string& rows) { return run.write("poured.csv", "code,lot\n" + rows); };
  requireRefused(run, "poured " + run.id, "line 2", {poured("100,Heather mead\n")});
  requireRefused(run, "poured " + run.id, "line 2", {poured(cup(0, 0) + ",Porter\n")});
  const Json said = run.json("poured " + run.id, {poured(cup(0, 0) + ",Heather mead\n" + cup(1, 2) + ",not sure\n")});
  CHECK(said.at("cups") == 2);
  const Json table = run.json("table " + run.id);
  CHECK(table.at("places")[1].at("void") == 1);
  CHECK(table.at("places")[1].at("round") == 2);
}

TEST_CASE("while a window is open reading works and writing is refused in one sentence") {
  Night run;
  run.plan();
  run.seal();
  {
    const auto window = store::Store::open(run.store, store::Access::write, run.clock, run.chance);
    CHECK(run.json("list").at("sessions").size() == 1);
    CHECK(run.json("verify " + run.id).at("holds") == true);
    const std::string before = bytes(run.store);
    for (const std::string& each : {"sit " + run.id + " 1 Ash", "close " + run.id, std::string("demo")}) {
      run.demoFolders = {DEMO_SESSIONS};
      requireRefused(run, each, "in use by another program");
    }
    CHECK(bytes(run.store) == before);
  }
  CHECK(run("sit " + run.id + " 1 Ash").status == 0);
}
