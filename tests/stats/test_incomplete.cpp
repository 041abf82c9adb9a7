#include "cases.h"
#include "stats/design/balance.h"
#include "stats/design/incomplete.h"
#include "stats/error.h"

#include <algorithm>
#include <cstdlib>

using namespace oddglass::stats;
using checks::Json;
using Catch::Matchers::WithinAbs;

namespace {

void requireEvenPositions(const SampleOrders& orders, int samples) {
  const Balance balance = balanceOf(orders, samples);
  for (const auto& row : balance.position) REQUIRE(*std::ranges::max_element(row) - *std::ranges::min_element(row) <= 1);
}

}  // namespace

// Parameters of known designs, tests/data/checks/incomplete_designs.json (Cochran and Cox 1957, identities; the plane of seven points).
TEST_CASE("known balanced designs are found, and their orders are even") {
  int looked = 0;
  for (const Json& each : checks::family("incomplete_designs")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    INFO(each.at("id"));
    if (in.contains("blocks")) {
      const Blocks blocks = in.at("blocks").get<Blocks>();
      const BlockBalance balance = blockBalance(blocks, wanted.contains("t") ? wanted.at("t").get<int>() : 4);
      CHECK(balance.isBalanced == wanted.at("is_BIB").get<bool>());
      if (balance.isBalanced) {
        CHECK(balance.size == wanted.at("k").get<int>());
        CHECK(balance.repeats == wanted.at("r").get<int>());
        CHECK(static_cast<int>(blocks.size()) == wanted.at("b").get<int>());
        CHECK(balance.together == wanted.at("lambda").get<int>());
      }
    } else {
      const int t = in.at("t"), k = in.at("k"), b = in.at("b");
      const auto blocks = balancedBlocks(t, k, b);
      REQUIRE(blocks.has_value());
      const BlockBalance balance = blockBalance(*blocks, t);
      CHECK(static_cast<int>(blocks->size()) == b);
      CHECK(balance.isBalanced);
      CHECK(balance.size == k);
      CHECK(balance.repeats == in.at("r").get<int>());
      CHECK(balance.together == wanted.at("lambda").get<int>());
      CHECK_THAT(balance.efficiency.value(), WithinAbs(wanted.at("efficiency").get<double>(), 1e-12));
      CHECK(blockBalance(incompleteBlocks(t, k, b), t).isBalanced);
      CHECK(blockBalance(incompleteBlocks(t, k, 2 * b), t).together == 2 * balance.together);
      requireEvenPositions(evenOrders(*blocks, t), t);
    }
    ++looked;
  }
  CHECK(looked == 15);
}

// More parameters for which designs are known to exist (Fisher and Yates, tables XVII and XVIII; Hall 1986, appendix I: from memory).
TEST_CASE("further known designs") {
  for (const auto& [t, k, b] : {std::tuple{10, 4, 15}, {10, 5, 18}, {12, 3, 44}, {12, 4, 33}, {12, 6, 22}, {13, 3, 26}, {13, 4, 13}, {15, 3, 35}, {15, 7, 15}, {21, 5, 21}, {31, 6, 31}, {5, 2, 10}, {5, 4, 5}, {6, 5, 6},
                                {8, 3, 56}, {9, 6, 12}, {10, 9, 10}, {10, 6, 15}}) {
    INFO(t << ' ' << k << ' ' << b);
    const auto blocks = balancedBlocks(t, k, b);
    REQUIRE(blocks.has_value());
    CHECK(blockBalance(*blocks, t).isBalanced);
  }
}

TEST_CASE("the smallest balanced design") {
  CHECK(smallestBalancedBlocks(7, 3)->size() == 7);
  CHECK(smallestBalancedBlocks(6, 3)->size() == 10);
  CHECK(smallestBalancedBlocks(5, 3)->size() == 10);
}

TEST_CASE("no design where counting forbids it") {
  CHECK_FALSE(balancedBlocks(8, 3, 8).has_value());
  CHECK_FALSE(balancedBlocks(7, 3, 8).has_value());
  CHECK_FALSE(balancedBlocks(6, 3, 5).has_value());   // fewer blocks than samples (Fisher)
  CHECK_FALSE(balancedBlocks(15, 5, 21).has_value()); // the counting allows it, and none exists (Nandi 1945)
}

TEST_CASE("any number of tasters: samples equally often to within one, pairs near enough, positions even") {
  for (int samples = 3; samples <= 9; ++samples)
    for (int size = 2; size < samples; size += 2)
      for (int tasters : {1, 5, 9, 16}) {
        INFO(samples << " samples, " << size << " each, " << tasters << " tasters");
        const Blocks blocks = incompleteBlocks(samples, size, tasters);
        REQUIRE(static_cast<int>(blocks.size()) == tasters);
        const SampleOrders orders = evenOrders(blocks, samples);
        const Balance balance = balanceOf(orders, samples);
        int least = 1000, most = 0, fewest = 1000, commonest = 0;
        for (std::size_t a = 0; a < balance.pairs.size(); ++a) {
          least = std::min(least, balance.pairs[a][a]);
          most = std::max(most, balance.pairs[a][a]);
          for (std::size_t b = 0; b < a; ++b) {
            fewest = std::min(fewest, balance.pairs[a][b]);
            commonest = std::max(commonest, balance.pairs[a][b]);
          }
        }
        CHECK(most - least <= 1);
        CHECK(commonest - fewest <= 3);  // where tasters lack two samples each, the least sum of squares can need a range of 3
        requireEvenPositions(orders, samples);
        for (const auto& order : orders)
          for (int sample : order) REQUIRE(std::ranges::count(order, sample) == 1);
      }
}

TEST_CASE("the same design every time, and just-before as even as can be where a search can reach it") {
  CHECK(evenOrders(incompleteBlocks(7, 3, 14), 7) == evenOrders(incompleteBlocks(7, 3, 14), 7));
  // All pairs of four, both ways round: every sample comes just before every other once.
  const Balance pairs = balanceOf(evenOrders(incompleteBlocks(4, 2, 12), 4), 4);
  for (std::size_t a = 0; a < 4; ++a)
    for (std::size_t b = 0; b < 4; ++b) CHECK(pairs.carryover[a][b] == (a == b ? 0 : 1));
}

TEST_CASE("impossible designs are refused by name") {
  CHECK_THROWS_WITH(incompleteBlocks(2, 2, 4), Catch::StartsWith("samples:"));
  CHECK_THROWS_WITH(incompleteBlocks(61, 2, 4), Catch::StartsWith("samples:"));
  CHECK_THROWS_WITH(incompleteBlocks(5, 5, 4), Catch::StartsWith("size:"));
  CHECK_THROWS_WITH(incompleteBlocks(5, 1, 4), Catch::StartsWith("size:"));
  CHECK_THROWS_WITH(incompleteBlocks(5, 3, 0), Catch::StartsWith("tasters:"));
  CHECK_THROWS_WITH(incompleteBlocks(5, 3, 1001), Catch::StartsWith("tasters:"));
  CHECK_THROWS_AS(evenOrders({}, 3), BadInput);
  CHECK_THROWS_AS(evenOrders({{0, 0}}, 3), BadInput);
  CHECK_THROWS_AS(evenOrders({{0, 3}}, 3), BadInput);
  CHECK_THROWS_AS(evenOrders({{0, 1}, {0}}, 3), BadInput);
  CHECK_THROWS_AS(blockBalance({{0, 9}}, 3), BadInput);
  CHECK_FALSE(blockBalance({}, 3).isBalanced);
}
