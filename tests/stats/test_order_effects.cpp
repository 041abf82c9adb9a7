#include "stats/orders/order_effects.h"

#include "stats/error.h"
#include "stats/rows.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// Four tasters in a Williams square of four samples; the score is told by the test.
struct Night {
  ScoreRows rows;
  std::vector<int> previous;
};

template <class Score>
Night williams(int copies, Score score) {
  const int orders[4][4]{{0, 1, 3, 2}, {1, 2, 0, 3}, {2, 3, 1, 0}, {3, 0, 2, 1}};
  Night night;
  night.rows.position = Factor{{}, 4};
  for (int t = 0; t < 4 * copies; ++t)
    for (int place = 0; place < 4; ++place) {
      const int sample = orders[t % 4][place], before = place ? orders[t % 4][place - 1] : -1;
      rows::add(night.rows, t, sample, score(t, place, sample, before));
      night.rows.position->of.push_back(place);
      night.previous.push_back(before);
    }
  return night;
}

double wobble(int i) { return std::sin(12.9898 * i) * 0.3; }

}  // namespace

// Planted effects come back: the square is balanced, so that each is estimated apart from the others.
TEST_CASE("planted effects of place and of the cup before come back") {
  const double carry[]{0.4, -0.1, -0.5, 0.2};
  int i = 0;
  const Night night = williams(3, [&](int t, int place, int sample, int before) {
    return 5.0 + 0.3 * t + sample + (place == 0 ? 0.75 : 0.0) + (before >= 0 ? carry[before] : 0.0) + 1e-7 * wobble(++i);
  });
  const OrderEffects found = orderEffects(night.rows, night.previous, 0.95);
  REQUIRE(found.carryOver.previous.size() == 4);
  for (int sample = 0; sample < 4; ++sample) CHECK_THAT(found.carryOver.previous[sample].effect.estimate.value(), WithinAbs(carry[sample], 1e-6));
  CHECK(*found.carryOver.df1 == 3.0);
  // 48 rows less 12 tasters, 3 samples, 3 places, 3 carry-over.
  CHECK(*found.carryOver.df2 == 27.0);
  CHECK(*found.carryOver.pValue < 1e-6);
  // The place alone: without a carry-over in the scores it is what was planted.
  const Night plain = williams(2, [&](int t, int place, int sample, int) { return 5.0 + 0.3 * t + sample + (place == 0 ? 0.75 : 0.0) + 1e-7 * wobble(++i); });
  const OrderEffects placed = orderEffects(plain.rows, {}, 0.95);
  CHECK_THAT(placed.firstPosition.estimate.value(), WithinAbs(0.75, 1e-6));
  CHECK(*placed.firstPosition.df == 32.0 - 8.0 - 3.0 - 1.0);
  CHECK(placed.carryOver.why == Reason::notGiven);
}

TEST_CASE("order effects that the orders do not set apart are not guessed") {
  // Everybody tasted in the same order: the first cup is always sample 0.
  ScoreRows same = rows::ofTasters({{1, 2, 4}, {2, 2, 3}, {3, 5, 4}});
  same.position = Factor{{0, 1, 2, 0, 1, 2, 0, 1, 2}, 3};
  const OrderEffects found = orderEffects(same, {-1, 0, 1, -1, 0, 1, -1, 0, 1}, 0.95);
  CHECK_FALSE(found.firstPosition.estimate);
  CHECK(found.firstPosition.why == Reason::emptyCell);
  CHECK(found.carryOver.why == Reason::emptyCell);
  CHECK_FALSE(found.carryOver.F);
}

TEST_CASE("no residual, no interval") {
  const Night night = williams(1, [](int t, int, int sample, int) { return 1.0 + t + sample; });
  const OrderEffects found = orderEffects(night.rows, night.previous, 0.95);
  CHECK_THAT(found.firstPosition.estimate.value(), WithinAbs(0.0, 1e-9));
  CHECK_FALSE(found.firstPosition.se);
  CHECK(found.firstPosition.why == Reason::noSpread);
  CHECK(found.carryOver.why == Reason::noSpread);
}

TEST_CASE("halo by hand") {
  // Both questions are taster + sample + the same rest, so that the rests move together wholly; with the sign turned, wholly apart.
  const std::vector<std::vector<double>> rest{{1, -2, 1}, {-1, 1, 0}, {0, 1, -1}};
  std::vector<std::vector<double>> table(3, std::vector<double>(3));
  std::vector<double> with, against;
  for (int t = 0; t < 3; ++t)
    for (int s = 0; s < 3; ++s) {
      table[t][s] = 5 + t + 2 * s + rest[t][s];
      with.push_back(3 - t + s + 2 * rest[t][s]);
      against.push_back(3 - t + s - rest[t][s]);
    }
  const ScoreRows answers = rows::ofTasters(table);
  CHECK_THAT(halo(answers, with).correlation.value(), WithinAbs(1.0, 1e-12));
  CHECK_THAT(halo(answers, against).correlation.value(), WithinAbs(-1.0, 1e-12));
  CHECK(halo(answers, with).df == 3);
  CHECK(halo(answers, std::vector<double>(9, 4.0)).why == Reason::noSpread);
  CHECK(halo(rows::ofTasters({{1, 2}, {2, 1}}), {1, 2, 3, 4}).why == Reason::fewTasters);
}

TEST_CASE("order effects: impossible input is refused by name") {
  ScoreRows answers = rows::ofTasters({{1, 2}, {3, 4}});
  const auto refused = [&](const std::vector<int>& previous, const char* argument) {
    try {
      orderEffects(answers, previous, 0.95);
      FAIL("not refused");
    } catch (const BadInput& bad) {
      CHECK(bad.argument() == argument);
    }
  };
  refused({}, "position");
  answers.position = Factor{{0, 1, 1, 0}, 2};
  refused({0}, "previous");
  refused({-2, 0, 0, 0}, "previous");
  refused({2, 0, 0, 0}, "previous");
  CHECK_THROWS_AS(halo(answers, {1.0}), BadInput);
  CHECK_THROWS_AS(halo(answers, {1.0, 2.0, NAN, 3.0}), BadInput);
}
