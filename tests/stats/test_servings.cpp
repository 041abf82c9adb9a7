#include "stats/design/right_answers.h"
#include "stats/design/servings.h"

#include "stats/cases.h"
#include "stats/error.h"

#include <algorithm>
#include <map>
#include <set>

using namespace oddglass::stats;

namespace {

/// As the cases write an order: "RA:AB" with one marked cup, else "AAB".
std::string written(const CupOrder& order, int marked) {
  std::string text;
  for (std::size_t i = 0; i < order.size(); ++i) {
    if (static_cast<int>(i) < marked) text += 'R';
    text += order[i] == 1 ? 'A' : 'B';
    if (static_cast<int>(i) + 1 == marked) text += ':';
  }
  return text;
}

constexpr Serving all[]{Serving::triangle, Serving::duoTrio, Serving::duoTrioAlwaysA, Serving::duoTrioAlwaysB, Serving::tetrad, Serving::twoOutOfFive, Serving::pair,
                        Serving::threeAfcOfA, Serving::threeAfcOfB, Serving::sameDifferent, Serving::aNotA, Serving::aNotALearned, Serving::aNotALearnedOfB, Serving::preference};

}  // namespace

// Sources beside each case in designs.json.
TEST_CASE("the orders of each serving") {
  const std::map<std::string, Serving> servings{{"triangle", Serving::triangle}, {"duo-trio (balanced reference)", Serving::duoTrio}, {"paired", Serving::pair},
                                                {"tetrad", Serving::tetrad}, {"two-out-of-five", Serving::twoOutOfFive}};
  int looked = 0;
  for (const auto& c : checks::family("designs")) {
    if (!c["inputs"].contains("test")) continue;
    INFO(c["id"]);
    const std::string test = c["inputs"]["test"];
    // The case of 3-AFC has a single B as the target.
    const Served& found = served(test == "3-AFC" ? Serving::threeAfcOfB : servings.at(test));
    CHECK(found.orders.size() == c["expected"]["n_distinct_orders"].get<std::size_t>());
    std::set<std::string> ours;
    for (const CupOrder& order : found.orders) ours.insert(written(order, found.marked));
    CHECK(ours.size() == found.orders.size());
    if (!c["expected"]["orders"].is_null()) CHECK(ours == c["expected"]["orders"].get<std::set<std::string>>());
    ++looked;
  }
  CHECK(looked == 6);
}

// By counting; the standards ask that all orders are used equally often.
TEST_CASE("in a whole block sides stand evenly in the coded cups, and the right answer falls evenly on them") {
  for (const Serving serving : all) {
    const Served& found = served(serving);
    INFO(static_cast<int>(serving));
    REQUIRE_FALSE(found.orders.empty());
    const std::size_t cups = found.orders[0].size();
    std::set<CupOrder> distinct;
    std::vector<int> ofA(cups, 0);
    for (const CupOrder& order : found.orders) {
      REQUIRE(order.size() == cups);
      distinct.insert(order);
      for (std::size_t i = 0; i < cups; ++i) {
        REQUIRE((order[i] == 1 || order[i] == 2));
        ofA[i] += order[i] == 1;
      }
    }
    CHECK(distinct.size() == found.orders.size());
    const std::set<int> coded(ofA.begin() + found.marked, ofA.end());
    CHECK(coded.size() == 1);
    if (serving != Serving::threeAfcOfA && serving != Serving::threeAfcOfB) CHECK(2 * *coded.begin() == static_cast<int>(found.orders.size()));
  }
  int twoOfA = 0;
  for (const CupOrder& order : served(Serving::twoOutOfFive).orders) twoOfA += std::ranges::count(order, 1) == 2;
  CHECK(twoOfA == 10);
}

TEST_CASE("the right answer of each order, by its definition") {
  CHECK(oddCup(CupOrder{1, 2, 1}) == 1);
  CHECK_FALSE(oddCup(CupOrder{1, 1, 1}).has_value());
  CHECK_FALSE(oddCup(CupOrder{1, 2}).has_value());
  for (const Serving serving : {Serving::duoTrio, Serving::duoTrioAlwaysA, Serving::duoTrioAlwaysB}) {
    std::map<int, int> at;
    for (const CupOrder& order : served(serving).orders) {
      const auto cup = matchingCup(order);
      REQUIRE(cup.has_value());
      CHECK(order[static_cast<std::size_t>(*cup)] == order[0]);
      CHECK(order[static_cast<std::size_t>(3 - *cup)] != order[0]);
      ++at[*cup];
    }
    CHECK(at[1] == at[2]);
  }
  CHECK_FALSE(matchingCup({1, 2, 2}).has_value());
  CHECK_FALSE(matchingCup({1, 2}).has_value());
  CHECK(onlyCup({1, 2}, 2) == 1);
  CHECK(onlyCup({2, 2, 1}, 1) == 2);
  CHECK_FALSE(onlyCup({1, 1, 2}, 1).has_value());
  CHECK_FALSE(onlyCup({1, 1, 2}, 3).has_value());
  CHECK(areSame({2, 2}) == true);
  CHECK(areSame({1, 2}) == false);
  CHECK_FALSE(areSame({1}).has_value());
  CHECK(isA({1}) == true);
  CHECK(isA({1, 2}) == false);
  CHECK_FALSE(isA({}).has_value());
}

TEST_CASE("one grouping in three is right in a tetrad, one pair in ten in two-out-of-five") {
  for (const auto& [serving, rightPairs] : {std::pair(Serving::tetrad, 2), std::pair(Serving::twoOutOfFive, 1)})
    for (const CupOrder& order : served(serving).orders) {
      const int cups = static_cast<int>(order.size());
      int right = 0, pairs = 0;
      for (int a = 0; a < cups; ++a)
        for (int b = a + 1; b < cups; ++b, ++pairs) {
          right += isRightGroup(order, {a, b});
          CHECK(isRightGroup(order, {a, b}) == isRightGroup(order, {b, a}));
        }
      CHECK(pairs == (cups == 4 ? 6 : 10));
      CHECK(right == rightPairs);
      const auto group = rightGroup(order);
      REQUIRE(group.has_value());
      CHECK((*group)[0] < (*group)[1]);
      CHECK(isRightGroup(order, *group));
      CHECK(order[static_cast<std::size_t>((*group)[0])] == order[static_cast<std::size_t>((*group)[1])]);
    }
  CHECK_FALSE(isRightGroup({1, 1, 2, 2}, {0, 0}));
  CHECK_FALSE(isRightGroup({1, 1, 2, 2}, {-1, 0}));
  CHECK_FALSE(isRightGroup({1, 1, 2, 2}, {2, 4}));
  CHECK_FALSE(isRightGroup({1, 1, 1, 2}, {0, 1}));
  CHECK_FALSE(rightGroup({1, 1, 1, 1, 2}).has_value());
  CHECK_FALSE(rightGroup({1, 2, 3, 3}).has_value());
  CHECK_FALSE(rightGroup({1, 2, 2}).has_value());
}

TEST_CASE("a serving that does not exist is refused") { CHECK_THROWS_AS(served(static_cast<Serving>(99)), BadInput); }
