#include "stats/drawn.h"

#include <catch2/catch.hpp>

#include <array>
#include <cmath>
#include <vector>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// splitmix64 from state 0: the first outputs as published with the generator's reference code (Vigna, splitmix64.c; also the first test
// vector of several independent libraries). From memory.
TEST_CASE("the fixed stream is splitmix64 from state 0") {
  DrawnStream stream;
  CHECK(stream.next64() == 0xe220a8397b1dcdafULL);
  CHECK(stream.next64() == 0x6e789e6aa1b965f4ULL);
  CHECK(stream.next64() == 0x06c45d188009454fULL);
}

TEST_CASE("drawn numbers and shuffles are even") {
  DrawnStream stream;
  std::array<int, 7> counts{};
  for (int i = 0; i < 70'000; ++i) ++counts[stream.below(7)];
  for (int count : counts) CHECK_THAT(count, WithinAbs(10'000.0, 500.0));  // five standard deviations are 463
  std::array<int, 6> orders{};
  for (int i = 0; i < 60'000; ++i) {
    std::vector<int> three{0, 1, 2};
    stream.shuffle(three);
    ++orders[static_cast<std::size_t>(three[0] * 2 + (three[1] > three[2]))];
  }
  for (int count : orders) CHECK_THAT(count, WithinAbs(10'000.0, 500.0));
}

TEST_CASE("the arrangement that was seen counts among the drawn") {
  CHECK_THAT(drawnP(0, 99'999).pValue, WithinRel(1e-5, 1e-12));
  CHECK_THAT(drawnP(49'999, 99'999).error, WithinRel(0.5 / std::sqrt(99'999.0), 1e-9));
}
