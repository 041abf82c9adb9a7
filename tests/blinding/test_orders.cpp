#include "blinding/orders.h"
#include "domain/problem.h"
#include "blinding/seeds.h"
#include "stats/designs.h"

#include <catch2/catch.hpp>

#include <map>
#include <set>

using namespace oddglass;
using namespace oddglass::blinding;

namespace {

std::vector<FlightOrder> deal(int places, int rounds, std::uint8_t which) {
  Stream stream(seedOf(which), StreamName::orders);
  return dealOrders({.places = places, .rounds = rounds}, stream);
}

stats::TriangleOrder sides(const FlightOrder& flight) {
  return {flight.lots.at(0).value, flight.lots.at(1).value, flight.lots.at(2).value};
}

}  // namespace

TEST_CASE("Each whole block of six places has each triangle order once, in each round") {
  for (std::uint8_t which = 0; which < 100; ++which) {
    const auto dealt = deal(12, 3, which);
    REQUIRE(dealt.size() == 36);
    std::map<std::pair<int, int>, std::set<stats::TriangleOrder>> blocks;
    for (const auto& flight : dealt) blocks[{flight.round.value, (flight.place.value - 1) / 6}].insert(sides(flight));
    REQUIRE(blocks.size() == 6);
    for (const auto& [block, orders] : blocks) CHECK(orders.size() == 6);
  }
}

// ISO 4120:2021 asks for the six orders equally often; then each lot is the odd one equally often and at each position.
TEST_CASE("Whole blocks balance the odd lot and its position") {
  for (std::uint8_t which = 0; which < 20; ++which) {
    std::map<int, int> oddAt, oddLot;
    for (const auto& flight : deal(18, 1, which)) {
      const auto order = sides(flight);
      const auto odd = stats::oddCup(order);
      REQUIRE(odd);
      ++oddAt[*odd];
      ++oddLot[order[*odd]];
    }
    CHECK(oddAt == std::map<int, int>{{0, 6}, {1, 6}, {2, 6}});
    CHECK(oddLot == std::map<int, int>{{1, 9}, {2, 9}});
  }
}

TEST_CASE("A block that is not full has orders that differ, and real places fill whole blocks first") {
  for (std::uint8_t which = 0; which < 50; ++which) {
    const auto dealt = deal(10, 1, which);
    std::set<stats::TriangleOrder> first, rest;
    for (const auto& flight : dealt) (flight.place.value <= 6 ? first : rest).insert(sides(flight));
    CHECK(first.size() == 6);
    CHECK(rest.size() == 4);
  }
}

TEST_CASE("Orders come in the order of place and round") {
  const auto dealt = deal(3, 2, 1);
  std::vector<std::pair<int, int>> seen;
  for (const auto& flight : dealt) seen.emplace_back(flight.place.value, flight.round.value);
  CHECK(seen == std::vector<std::pair<int, int>>{{1, 1}, {1, 2}, {2, 1}, {2, 2}, {3, 1}, {3, 2}});
}

TEST_CASE("Any order may come to any place") {
  std::map<int, std::set<stats::TriangleOrder>> seen;
  for (std::uint8_t which = 0; which < 200; ++which)
    for (const auto& flight : deal(6, 1, which)) seen[flight.place.value].insert(sides(flight));
  for (int place = 1; place <= 6; ++place) CHECK(seen[place].size() == 6);
}

TEST_CASE("Nothing can be dealt to nobody") {
  CHECK_THROWS_AS(deal(0, 1, 0), Problem);
  CHECK_THROWS_AS(deal(6, 0, 0), Problem);
}
