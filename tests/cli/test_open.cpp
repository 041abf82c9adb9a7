// `open`: the same drinks once more after the reveal; what that did stands in `room`, and goes out and comes in with the session.
#include "cli/ran.h"
#include "own_evenings.h"

using namespace oddglass;
using testing::requireRefused;
using testing::Terminal;
using Catch::Matchers::WithinAbs;

namespace {

struct Opened : Terminal {
  testing::OwnEvenings evenings{4};
  std::vector<std::string> ids;

  void tell(int count) {
    for (int evening = 0; evening < count; ++evening) ids.push_back(evenings.tell(evenings.proud()).text);
    store = evenings.store->file().string();
    evenings.store.reset();
  }
  std::string answers(const std::string& text) { return write("open.csv", text); }
};

const char* const everybody = "place,lot,value\n1,1,7\n1,2,5\n2,1,5\n2,2,5\n3,1,6\n3,2,5\n4,1,5\n4,2,4\n5,\"Heather mead, bottled in March\",9\n5,Bought mead,2\n";

}  // namespace

TEST_CASE("open answers are taken from a file, all or none, and the label effect follows from three tastings") {
  Opened run;
  run.tell(3);
  requireRefused(run, "open " + run.ids[0], "line 3", {run.answers("place,lot,value\n1,1,7\n1,2,15\n")});
  requireRefused(run, "open " + run.ids[0], "line 2", {run.answers("place,lot,value\n1,Elder wine,7\n")});
  requireRefused(run, "open " + run.ids[0], "lot", {run.answers("place,value\n1,7\n")});
  for (int i = 0; i < 2; ++i) CHECK(run.json("open " + run.ids[static_cast<std::size_t>(i)], {run.answers(everybody)}).at("places").size() == 5);
  requireRefused(run, "open " + run.ids[0], "5", {run.answers("place,lot,value\n5,1,7\n5,2,5\n")});
  cli::Json room = run.json("room");
  CHECK(room.at("label").at("why") == "fewer than three tastings with an open round");
  CHECK(room.at("label_per_session").size() == 2);
  run.json("open " + run.ids[2], {run.answers("place,slot,value\n1,1,7\n1,2,5\n2,1,5\n2,2,5\n3,1,6\n3,2,5\n4,1,5\n4,2,4\n5,1,9\n5,2,2\n")});
  room = run.json("room");
  // Blind gaps 1, 0, 1, 0 and the maker's 4; open 2, 0, 1, 1 and 7: the friends moved by 1, 0, 0, 1, the maker by 3.
  CHECK_THAT(room.at("label").at("estimate").get<double>(), WithinAbs(2.5, 1e-12));
  CHECK(room.at("label").at("verdict") == "towards their own");
  CHECK(room.at("label").at("order_and_label_together") == true);
  const std::string readable = run("room").out;
  CHECK(readable.find("Knowing the labels moved you further towards your own than it moved the others, by 2.5 points") != std::string::npos);
  CHECK(readable.find("cannot be told apart") != std::string::npos);
}

TEST_CASE("open answers go out and come in with their session, and verify") {
  Opened run;
  run.tell(1);
  run.json("open " + run.ids[0], {run.answers(everybody)});
  const std::string out = (run.folder / "out").string();
  run.json("export " + run.ids[0] + " --as json --out " + out);
  std::string file;
  for (const auto& each : std::filesystem::directory_iterator(out)) file = each.path().string();
  Terminal other;
  other.json("import", {file});
  const cli::Json found = other.json("verify", {run.ids[0]});
  CHECK(found.dump().find("\"open\"") != std::string::npos);
  const cli::Json room = other.json("room", {"--taster", "Wenna Tarn"});
  CHECK(room.at("label_per_session").size() == 1);
}
