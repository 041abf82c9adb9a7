#include "stats/methods.h"

#include <catch2/catch.hpp>

using namespace oddglass::stats;

TEST_CASE("a triangle is guessed right one time in three") {
  // ISO 4120:2021: the probability of a correct answer by guessing is 1/3.
  CHECK_THAT(guessing(Method::triangle), Catch::Matchers::WithinULP(1.0 / 3.0, 1));
}
