#include "cases.h"
#include "stats/error.h"
#include "stats/pairs/circular.h"

using namespace oddglass::stats;
using checks::Json;
using Catch::Matchers::WithinAbs;

namespace {

std::vector<PairedChoice> choicesOf(const std::vector<std::vector<int>>& preferred) {
  std::vector<PairedChoice> choices;
  for (int a = 0; a < static_cast<int>(preferred.size()); ++a)
    for (int b = a + 1; b < static_cast<int>(preferred.size()); ++b) choices.push_back({a, b, preferred[static_cast<std::size_t>(a)][static_cast<std::size_t>(b)] ? Choice::left : Choice::right});
  return choices;
}

}  // namespace

// tests/data/checks/bradley_terry.json, circular_triads: Kendall and Babington Smith 1940.
TEST_CASE("published cases of circular triads") {
  int looked = 0;
  for (const Json& each : checks::family("bradley_terry")) {
    if (!each.at("inputs").contains("preference_matrix")) continue;
    INFO(each.at("id"));
    const auto preferred = each.at("inputs").at("preference_matrix").get<std::vector<std::vector<int>>>();
    const CircularTriads got = circularTriads(choicesOf(preferred), static_cast<int>(preferred.size()));
    CHECK(got.triads == each.at("expected").at("circular_triads").get<int>());
    CHECK_THAT(got.zeta.value(), WithinAbs(each.at("expected").at("zeta").get<double>(), 1e-12));
    ++looked;
  }
  CHECK(looked == 3);
}

TEST_CASE("circles counted one by one agree with C(n, 3) - sum C(a, 2) for every set of choices of five") {
  for (int pattern = 0; pattern < 1 << 10; ++pattern) {
    std::vector<PairedChoice> choices;
    std::vector<int> wins(5, 0);
    int bit = 0;
    for (int a = 0; a < 5; ++a)
      for (int b = a + 1; b < 5; ++b) {
        const bool isFirst = pattern >> bit++ & 1;
        choices.push_back({a, b, isFirst ? Choice::left : Choice::right});
        ++wins[static_cast<std::size_t>(isFirst ? a : b)];
      }
    int expected = 10;
    for (int each : wins) expected -= each * (each - 1) / 2;
    REQUIRE(circularTriads(choices, 5).triads == expected);
  }
}

TEST_CASE("undecided pairs and two samples leave no coefficient") {
  CHECK_FALSE(circularTriads({{0, 1, Choice::left}}, 2).zeta.has_value());
  CHECK_FALSE(circularTriads({{0, 1, Choice::left}, {1, 2, Choice::left}}, 3).zeta.has_value());
  CHECK_FALSE(circularTriads({{0, 1, Choice::left}, {1, 2, Choice::left}, {2, 0, Choice::tie}}, 3).zeta.has_value());
  // A pair that was tasted three times counts by its majority.
  CHECK(circularTriads({{0, 1, Choice::left}, {1, 2, Choice::left}, {2, 0, Choice::left}, {2, 0, Choice::right}, {0, 2, Choice::right}}, 3).triads == 1);
  CHECK_THROWS_AS(circularTriads({{0, 1, Choice::left}}, 301), BadInput);
  CHECK_THROWS_AS(circularTriads({{0, 1, Choice::left}}, 1), BadInput);
}
