#include "stats/designs.h"

#include <catch2/catch.hpp>

#include <map>
#include <set>

using namespace oddglass::stats;

// ISO 4120 names the six orders AAB ABA BAA BBA BAB ABB; the rest is counting.
TEST_CASE("the six triangle orders are all there is and are balanced") {
  const std::set<TriangleOrder> all(triangleOrders.begin(), triangleOrders.end());
  REQUIRE(all == std::set<TriangleOrder>{{1, 1, 2}, {1, 2, 1}, {2, 1, 1}, {2, 2, 1}, {2, 1, 2}, {1, 2, 2}});
  std::map<int, int> oddAt, oddSide;
  for (const auto& order : triangleOrders) {
    const auto at = oddCup(order);
    REQUIRE(at.has_value());
    ++oddAt[*at];
    ++oddSide[order[*at]];
  }
  CHECK(oddAt == std::map<int, int>{{0, 2}, {1, 2}, {2, 2}});
  CHECK(oddSide == std::map<int, int>{{1, 3}, {2, 3}});
}

TEST_CASE("three alike and three unlike have no odd cup") {
  CHECK_FALSE(oddCup({1, 1, 1}).has_value());
  CHECK_FALSE(oddCup({2, 2, 2}).has_value());
  CHECK_FALSE(oddCup({1, 2, 3}).has_value());
}
