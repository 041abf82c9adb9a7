#include "cli/ran.h"
#include "stats/cases.h"

#include <algorithm>

using oddglass::testing::requireRefused;
using oddglass::testing::Terminal;
using checks::Json;

// Parameters of known balanced designs, tests/data/checks/incomplete_designs.json, through the program. (Its two lists of blocks are in tests/stats: the
// program makes designs and judges none.)
TEST_CASE("designs of incomplete blocks, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("incomplete_designs")) {
    const Json& in = each.at("inputs");
    if (in.contains("blocks")) continue;
    INFO(each.at("id"));
    const int t = in.at("t"), k = in.at("k"), b = in.at("b");
    const std::string words = "design --kind incomplete --samples " + std::to_string(t) + " --size " + std::to_string(k) + " --tasters " + std::to_string(b) + " --seed plum";
    const auto got = run.json(words);
    REQUIRE(static_cast<int>(got.at("orders").size()) == b);
    for (const auto& order : got.at("orders")) CHECK(static_cast<int>(order.size()) == k);
    const auto pairs = got.at("balance").at("pairs").get<std::vector<std::vector<int>>>(), position = got.at("balance").at("position").get<std::vector<std::vector<int>>>();
    for (int x = 0; x < t; ++x) {
      const auto& row = pairs[static_cast<std::size_t>(x)];
      for (int y = 0; y < t; ++y) CHECK(row[static_cast<std::size_t>(y)] == (x == y ? in.at("r").get<int>() : each.at("expected").at("lambda").get<int>()));
      const auto& places = position[static_cast<std::size_t>(x)];
      CHECK(*std::ranges::max_element(places) - *std::ranges::min_element(places) <= 1);
    }
    CHECK(run.json(words) == got);
    ++looked;
  }
  CHECK(looked == 13);
  CHECK(run.json("design --kind incomplete --samples 7 --size 3 --seed 1").at("orders").size() == 7);
  CHECK(run.json("design --kind incomplete --samples 7 --size 4 --tasters 5 --seed 1").at("orders").size() == 5);
}

TEST_CASE("impossible incomplete blocks are refused by name") {
  Terminal run;
  requireRefused(run, "design --kind incomplete --size 2 --seed 1", "--samples");
  requireRefused(run, "design --kind incomplete --samples 2 --size 2 --seed 1", "--samples");
  requireRefused(run, "design --kind incomplete --samples 5 --seed 1", "--size");
  requireRefused(run, "design --kind incomplete --samples 5 --size 5 --seed 1", "--size");
  requireRefused(run, "design --kind incomplete --samples 5 --size 3 --tasters 1001 --seed 1", "--tasters");
  requireRefused(run, "design --kind incomplete --samples 5 --size 3 --tasters 0 --seed 1", "--tasters");
}
