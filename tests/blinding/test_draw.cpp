#include "blinding/draw.h"
#include "domain/problem.h"
#include "blinding/seeds.h"
#include "stats/designs.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <set>

using namespace oddglass;
using namespace oddglass::blinding;

namespace {

Drawn drawFrom(std::uint8_t which, const Shape& shape) {
  Streams streams = streamsFrom(seedOf(which));
  return draw(shape, streams);
}

}  // namespace

TEST_CASE("Every cup and spare has one code and one line, in the documented order") {
  const Shape shape{.deal = {.places = 12, .rounds = 2}};
  const Drawn drawn = drawFrom(4, shape);
  REQUIRE(drawn.cups.size() == 12 * 2 * 3 * 2);
  REQUIRE(drawn.lines.size() == drawn.cups.size());
  CHECK(std::ranges::is_sorted(drawn.lines));
  CHECK(std::ranges::is_sorted(drawn.cups, {}, [](const Cup& c) { return std::tuple(c.place, c.round, c.position, c.spare); }));
  std::set<Code> fromCups, fromLines;
  for (const Cup& cup : drawn.cups) fromCups.insert(cup.code);
  for (const auto& [code, slot] : drawn.lines) fromLines.insert(code);
  CHECK(fromCups.size() == drawn.cups.size());
  CHECK(fromCups == fromLines);
}

TEST_CASE("A spare code stands for the lot of its cup, and every flight is a triangle") {
  const Drawn drawn = drawFrom(9, {.deal = {.places = 7, .rounds = 3}, .spareCodesPerCup = 2});
  std::map<Code, Slot> key(drawn.lines.begin(), drawn.lines.end());
  std::map<std::tuple<Place, Round, Position>, std::set<Slot>> lots;
  std::map<std::pair<Place, Round>, stats::TriangleOrder> flights;
  for (const Cup& cup : drawn.cups) {
    lots[{cup.place, cup.round, cup.position}].insert(key.at(cup.code));
    flights[{cup.place, cup.round}].at(cup.position.value - 1) = key.at(cup.code).value;
  }
  CHECK(lots.size() == 7 * 3 * 3);
  for (const auto& [cup, slots] : lots) CHECK(slots.size() == 1);
  for (const auto& [flight, order] : flights) CHECK(stats::oddCup(order));
}

// The rule behind blindness: what stands on the cups has nothing to do with what is in them.
TEST_CASE("Other orders leave every code where it was") {
  const Shape shape{.deal = {.places = 6, .rounds = 2}};
  const Drawn first = drawFrom(1, shape);
  bool anyDiffers = false;
  for (std::uint8_t which = 2; which < 40; ++which) {
    Streams mixed{Stream(seedOf(which), StreamName::orders), Stream(seedOf(1), StreamName::codes)};
    const Drawn other = draw(shape, mixed);
    CHECK(other.cups == first.cups);
    anyDiffers = anyDiffers || other.lines != first.lines;
  }
  CHECK(anyDiffers);
}

TEST_CASE("A seed reproduces its draw and no other") {
  const Shape shape{.deal = {.places = 6}};
  Drawn drawn = drawFrom(17, shape);
  CHECK(reproduces(seedOf(17), shape, drawn));
  CHECK_FALSE(reproduces(seedOf(18), shape, drawn));
  auto& slot = drawn.lines.front().second;
  slot.value = 3 - slot.value;
  CHECK_FALSE(reproduces(seedOf(17), shape, drawn));
}

TEST_CASE("Impossible shapes are refused by name") {
  CHECK_THROWS_AS(drawFrom(0, {.deal = {.places = 0}}), Problem);
  CHECK_THROWS_AS(drawFrom(0, {.deal = {.places = 6, .rounds = 0}}), Problem);
  CHECK_THROWS_AS(drawFrom(0, {.deal = {.comparisons = 2, .places = 6, .rounds = 2}}), Problem);
  CHECK_THROWS_AS(drawFrom(0, {.deal = {.places = 6}, .spareCodesPerCup = -1}), Problem);
  try {
    drawFrom(0, {.deal = {.places = 99, .rounds = 20}});
    FAIL("nothing was thrown");
  } catch (const Problem& problem) {
    CHECK(problem.trouble() == Trouble::tooManyCups);
  }
}
