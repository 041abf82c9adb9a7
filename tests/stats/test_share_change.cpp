#include "stats/error.h"
#include "stats/posterior.h"
#include "stats/share_change.h"

#include <catch2/catch.hpp>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;

TEST_CASE("a change turns its sign when before and after change places", "[change]") {
  const auto there = changeOfShare({2, 6}, {5, 6}, 1.0 / 3, 0.9), back = changeOfShare({5, 6}, {2, 6}, 1.0 / 3, 0.9);
  REQUIRE((there && back));
  CHECK_THAT(there->low + back->high, WithinAbs(0.0, 1e-6));
  CHECK_THAT(there->median + back->median, WithinAbs(0.0, 1e-6));
  CHECK(there->low < there->median);
  CHECK(there->median < there->high);
}

TEST_CASE("the same counts leave a change that lies evenly about nothing", "[change]") {
  const auto same = changeOfShare({4, 8}, {4, 8}, 0.5, 0.95);
  REQUIRE(same);
  CHECK_THAT(same->median, WithinAbs(0.0, 1e-6));
  CHECK_THAT(same->low + same->high, WithinAbs(0.0, 1e-6));
}

// One trial right on both sides and no guessing: the two shares have the density 2p, and P(after - before > d) = (1 - d)^3 (3 + d) / 6 for d >= 0, by hand
// from the double integral of 4 p q over q > p + d.
TEST_CASE("a change has the tails that are counted by hand", "[change]") {
  const auto found = changeOfShare({1, 1}, {1, 1}, 0.0, 0.95);
  REQUIRE(found);
  const double d = found->high;
  CHECK_THAT((1 - d) * (1 - d) * (1 - d) * (3 + d) / 6, WithinAbs(0.025, 1e-6));
}

TEST_CASE("nothing is said of a change without trials or without spread", "[change]") {
  CHECK_FALSE(changeOfShare({0, 0}, {3, 3}, 0.5, 0.95));
  CHECK_FALSE(changeOfShare({3, 3}, {0, 0}, 0.5, 0.95));
  CHECK_FALSE(ratioOfSpreads(0.0, 3, 2.0, 3, 0.95));
  CHECK_FALSE(ratioOfSpreads(2.0, 0, 2.0, 3, 0.95));
  CHECK_THROWS_AS(changeOfShare({4, 3}, {1, 3}, 0.5, 0.95), BadInput);
  CHECK_THROWS_AS(changeOfShare({1, 3}, {1, 3}, 0.5, 1.0), BadInput);
  CHECK_THROWS_AS(ratioOfSpreads(-1.0, 3, 2.0, 3, 0.95), BadInput);
}
