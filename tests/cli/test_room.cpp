// `room`: the brewer beside the room, from opened sessions.
#include "cli/ran.h"
#include "own_evenings.h"

#include <cmath>

using namespace oddglass;
using testing::requireRefused;
using testing::Terminal;
using Catch::Matchers::WithinAbs;

namespace {

/// A terminal over a store in which the brewer's evenings were told; friends at odd places put their own one above the reference, the rest level.
struct Brewery : Terminal {
  testing::OwnEvenings evenings{4};

  void tell(int count, bool isOpened = true) {
    for (int evening = 0; evening < count; ++evening) {
      if (isOpened) evenings.tell(evenings.proud(), 60 + 10 * evening);
      else evenings.taste(evenings.proud(), 90);
    }
  }
  void leave() {
    store = evenings.store->file().string();
    evenings.store.reset();
  }
};

}  // namespace

TEST_CASE("room says lean, expectations and calibration of the brewer") {
  Brewery run;
  run.tell(3);
  run.tell(1, false);
  run.leave();
  const cli::Json room = run.json("room");
  CHECK(room.at("name") == "Wenna Tarn");
  // Gaps of the friends 1, 0, 1, 0, the maker's 4: 4 - 0.5, se sqrt(1/3) sqrt(1 + 1/4) by Crawford and Howell 1998; t with 3 df at 97.5 %: 3.182446.
  CHECK_THAT(room.at("lean").at("estimate").get<double>(), WithinAbs(3.5, 1e-12));
  CHECK_THAT(room.at("lean").at("low").get<double>(), WithinAbs(3.5 - 3.182446 * std::sqrt(5.0 / 12.0), 1e-5));
  CHECK(room.at("lean").at("df") == 3.0);
  CHECK(room.at("lean").at("verdict") == "kinder");
  CHECK(room.at("lean").at("sessions") == 3);
  CHECK(room.at("lean").at("friends") == 4);
  CHECK(room.at("per_session").size() == 3);
  REQUIRE(room.at("expectations").size() == 3);  // what is still sealed is not among them
  CHECK(room.at("expectations").at(0).at("expectation_pc") == 60);
  CHECK(room.at("expectations").at(0).at("came_true") == true);
  CHECK(room.at("calibration").at("hits") == 3);
  CHECK_THAT(room.at("calibration").at("brier").get<double>(), WithinAbs((0.16 + 0.09 + 0.04) / 3, 1e-12));
  CHECK_THAT(room.at("calibration").at("expected_hits").get<double>(), WithinAbs(2.1, 1e-12));

  const std::string readable = run("room").out;
  CHECK(readable.find("You were kinder to your own than the room was, by 3.5 points (1.4 to 5.6), over 3 tastings.") != std::string::npos);
  CHECK(readable.find("60 in 100 that the panel's mean puts Heather mead above Bought mead (liking)") != std::string::npos);
}

TEST_CASE("room of fewer than three sessions, of a friend, of nobody") {
  Brewery run;
  run.tell(1);
  run.leave();
  const cli::Json room = run.json("room");
  CHECK(room.at("lean").at("verdict") == "no verdict");
  CHECK(room.at("lean").at("why") == "fewer than three opened tastings of their own");
  CHECK(room.at("calibration").is_null());
  CHECK(room.at("why").is_string());
  const cli::Json friends = run.json("room", {"--taster", "Friend A"});
  CHECK(friends.at("per_session").empty());
  CHECK(friends.at("expectations").empty());
  requireRefused(run, "room", "Nobody here", {"--taster", "Nobody here"});

  Terminal empty;
  empty.json("put", {empty.write("shelf.json", R"({"format":"oddglass","version":1,"tasters":[{"id":"a1000000000000000000000000000001","name":"Odo"}]})")});
  requireRefused(empty, "room", "brewer");
}
