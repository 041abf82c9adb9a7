#include "stats/design/balance.h"
#include "stats/design/williams.h"

#include "stats/cases.h"
#include "stats/error.h"

using namespace oddglass::stats;

namespace {
SampleOrders allRows(int samples) {
  SampleOrders rows;
  for (const SampleOrders& square : williamsSquares(samples)) rows.insert(rows.end(), square.begin(), square.end());
  return rows;
}

/// Every entry is `value`; on the diagonal `self`.
bool isEven(const std::vector<std::vector<int>>& table, int value, int self) {
  for (std::size_t a = 0; a < table.size(); ++a)
    for (std::size_t b = 0; b < table[a].size(); ++b)
      if (table[a][b] != (a == b ? self : value)) return false;
  return true;
}
}  // namespace

// Sources beside each case in designs.json.
TEST_CASE("Williams squares of the cases") {
  int looked = 0;
  for (const auto& c : checks::family("designs")) {
    if (!c["inputs"].contains("t")) continue;
    INFO(c["id"]);
    const int samples = c["inputs"]["t"];
    const SampleOrders rows = allRows(samples);
    const Balance balance = balanceOf(rows, samples);
    const auto& out = c["expected"];
    CHECK(static_cast<int>(rows.size()) == out["n_sequences_minimum"].get<int>());
    CHECK(isEven(balance.position, out["position_count"], out["position_count"]));
    CHECK(isEven(balance.carryover, out["carryover_count"], out["self_carryover"]));
    checks::requireAllSeen(out, {"n_sequences_minimum", "position_count", "carryover_count", "self_carryover"});
    ++looked;
  }
  CHECK(looked == 4);
}

// The definition (Williams 1949), counted for every size on offer.
TEST_CASE("Williams squares are even for every number of samples") {
  for (int samples = 2; samples <= 60; ++samples) {
    INFO(samples);
    const auto squares = williamsSquares(samples);
    REQUIRE(static_cast<int>(squares.size()) == 1 + samples % 2);
    for (const SampleOrders& square : squares) CHECK(isEven(balanceOf(square, samples).position, 1, 1));
    const SampleOrders rows = allRows(samples);
    const Balance balance = balanceOf(rows, samples);
    const int squaresSoMany = 1 + samples % 2;
    CHECK(isEven(balance.carryover, squaresSoMany, 0));
    CHECK(isEven(balance.pairs, samples * squaresSoMany, samples * squaresSoMany));
  }
  CHECK_THROWS_AS(williamsSquares(1), BadInput);
  CHECK_THROWS_AS(williamsSquares(61), BadInput);
}

TEST_CASE("balance is counted, also for orders of unlike length and repeats") {
  // By hand.
  const Balance balance = balanceOf({{0, 1, 0}, {1}}, 2);
  CHECK(balance.position == std::vector<std::vector<int>>{{1, 0, 1}, {1, 1, 0}});
  CHECK(balance.carryover == std::vector<std::vector<int>>{{0, 1}, {1, 0}});
  CHECK(balance.second == std::vector<std::vector<int>>{{1, 0}, {0, 0}});
  CHECK(balance.pairs == std::vector<std::vector<int>>{{1, 1}, {1, 2}});
  CHECK(balanceOf({}, 2).position == std::vector<std::vector<int>>{{}, {}});
  CHECK_THROWS_AS(balanceOf({{2}}, 2), BadInput);
  CHECK_THROWS_AS(balanceOf({{-1}}, 2), BadInput);
  CHECK_THROWS_AS(balanceOf({}, 0), BadInput);
}
