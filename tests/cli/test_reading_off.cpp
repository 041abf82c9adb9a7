#include "cli/night.h"

#include <algorithm>
#include <vector>

using namespace oddglass::testing;
using oddglass::cli::Json;

namespace {

/// An evening on which hands hide the key; which cup holds what follows from the order of the codes.
struct HandNight : Night {
  /// A plan of the routine, sealed, with these people at their places.
  void begin(const std::string& routine, const std::string& method, const std::vector<std::string>& names, const std::string& more = {}) {
    json("put", {write("shelf.json", shelf())});
    std::string tasters;
    for (const std::string& name : names) tasters += (tasters.empty() ? "\"" : ",\"") + name + '"';
    id = json("plan", {write("plan.json", R"({"format":"oddglass","version":1,"plan":{"title":"By hand","guest_title":"An evening","lots":["Heather mead","Bought mead"],"cup_ml":15,"care_settled":true,"routine":")" +
                                              routine + R"(","method":")" + method + R"(",)" + more + R"("tasters":[)" + tasters + "]}}")}).at("id").get<std::string>();
    seal();
    for (std::size_t place = 1; place <= names.size(); ++place) json("sit " + id + ' ' + std::to_string(place) + ' ' + names[place - 1]);
  }

  std::vector<int> cups(int place) { return json("table " + id).at("places")[static_cast<std::size_t>(place) - 1].at("cups").get<std::vector<int>>(); }

  std::string sheet(const std::string& name, const std::string& head, const std::vector<std::string>& rows) {
    std::string text = head + '\n';
    for (const std::string& row : rows) text += row + '\n';
    return write(name, text);
  }
};

}  // namespace

TEST_CASE("alone by commands: taste, turn over, reveal; every finding says who read the cups") {
  HandNight run;
  run.begin("alone", "triangle", {"Wenna"}, R"("rounds":2,)");
  requireRefused(run, "worksheet " + run.id + " --out " + (run.folder / "sheet.txt").string(), "Hands hide the key");
  const auto first = run.cups(1);
  REQUIRE(first.size() == 3);
  run.json("answer " + run.id, {run.answers(0)});
  const auto rows = [&](const std::vector<int>& codes, int round, const std::vector<std::string>& lots, const std::string& aside) {
    const std::string flight = "1," + std::to_string(round) + ',';
    std::vector<std::string> all;
    for (std::size_t i = 0; i < codes.size(); ++i) all.push_back(flight + std::to_string(codes[i]) + ',' + lots[i]);
    all.push_back(flight + "aside," + aside);
    return run.sheet("found.csv", "place,round,code,lot", all);
  };
  // The first cup was chosen, and is the odd one.
  const Json read = run.json("key " + run.id, {rows(first, 1, {"Heather mead", "Bought mead", "Bought mead"}, "Heather mead")});
  CHECK(read.at("by") == "taster");
  CHECK(read.at("read")[0].at("set_aside").is_null());
  const auto second = run.cups(1);
  run.json("answer " + run.id, {run.answers(0)});
  const std::string third = rows(second, 2, {"Heather mead", "Bought mead", "Bought mead"}, "Bought mead");
  CHECK(run.json("key " + run.id, {third}).at("read")[0].at("set_aside") == "does_not_add_up");
  requireRefused(run, "key " + run.id, "read off already", {third});
  run.json("close " + run.id);
  const Json revealed = run.json("reveal " + run.id);
  CHECK(revealed.at("trials") == 1);
  CHECK(revealed.at("right") == 1);
  const std::string report = (run.folder / "report.json").string();
  run.json("report " + run.id + " --out", {report});
  std::ifstream in(report);
  const Json written = Json::parse(in);
  CHECK(written.at("record").at("custody") == "alone");
  CHECK(written.at("record").at("key_read_by") == Json::array({"taster"}));
  CHECK(written.at("plan").at("routine") == "alone");
  CHECK(run.json("verify " + run.id).at("pour_sheet_openings") == 0);
  CHECK(run("reveal " + run.id).status == 2);
  const Ran history = run("history " + run.id);
  CHECK(history.out.find("by whoever tasted") != std::string::npos);
}

TEST_CASE("a couple's two sheets by commands, with their errors named by line and column") {
  HandNight run;
  run.begin("couple", "pair", {"Ash", "Wenna"}, R"("attribute":"sweet","expected":1,)");
  const auto one = run.cups(1), two = run.cups(2);
  run.json("answer " + run.id, {run.answers(0)});
  const std::string lots = run.sheet("first.csv", "place,round,mark,lot", {"1,1,A,Heather mead", "1,1,B,Bought mead", "2,1,A,Heather mead", "2,1,B,Bought mead"});
  const auto codes = [&](const std::string& mark) {
    return run.sheet("second.csv", "place,round,mark,code", {"1,1,A," + std::to_string(one[0]), "1,1,B," + std::to_string(one[1]), "2,1,A," + std::to_string(two[0]), "2,1," + mark + ',' + std::to_string(two[1])});
  };
  requireRefused(run, "key " + run.id, "still open", {lots, codes("B")});
  run.json("close " + run.id);
  requireRefused(run, "reveal " + run.id, "has not been read off");
  requireRefused(run, "key " + run.id, "line 5, column mark", {lots, codes("C")});
  requireRefused(run, "key " + run.id, "line 2, column code", {run.sheet("wrong.csv", "place,round,code,lot", {"1,1," + std::to_string(two[0]) + ",Heather mead"})});
  requireRefused(run, "key " + run.id, "line 3, column lot", {run.sheet("lot.csv", "place,round,code,lot", {"1,1," + std::to_string(one[0]) + ",Heather mead", "1,1," + std::to_string(one[1]) + ",Water"})});
  CHECK(run.json("key " + run.id, {lots, codes("B")}).at("by") == "two_sheets");
  CHECK(run.json("reveal " + run.id).at("right") == 1);
}

TEST_CASE("whole bottles by commands: a letter for each, peeled after the close") {
  HandNight run;
  run.begin("bottles", "preference", {"Ash", "Birch", "Cedar"});
  std::string table = "place,round,item,code,value\n";
  for (int place = 1; place <= 3; ++place) {
    const std::string flight = std::to_string(place) + ",1,";
    table += flight + "prefer,," + std::to_string(run.cups(place)[0]) + '\n' + flight + "sureness,,fairly\n";
  }
  run.json("answer " + run.id, {run.write("liked.csv", table)});
  run.json("close " + run.id);
  requireRefused(run, "key " + run.id, "line 2, column bottle", {run.sheet("c.csv", "bottle,lot", {"C,Heather mead"})});
  requireRefused(run, "key " + run.id, "told once", {run.sheet("a.csv", "bottle,lot", {"A,Heather mead"})});
  CHECK(run.json("key " + run.id + " --by another", {run.sheet("both.csv", "bottle,lot", {"A,Heather mead", "B,Bought mead"})}).at("read").size() == 3);
  CHECK(run.json("reveal " + run.id).at("commitment_holds") == true);
}
