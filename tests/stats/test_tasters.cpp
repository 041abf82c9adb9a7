#include "stats/panel/panel.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/rows.h"

#include <cmath>
#include <numeric>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Source beside the case in people_and_time.json.
TEST_CASE("a taster's level and how it is shrunk") {
  int looked = 0;
  for (const auto& c : checks::family("people_and_time")) {
    if (c["id"] != "level_shrunk") continue;
    const auto found = tasterMeasures(rows::ofTasters(c["inputs"]["scores_taster_x_sample"].get<std::vector<std::vector<double>>>()));
    const auto& out = c["expected"];
    for (std::size_t t = 0; t < found.size(); ++t) {
      CHECK_THAT(found[t].level.value(), WithinAbs(out["raw"][t].get<double>(), 1e-9));
      CHECK_THAT(found[t].shrunkLevel.value(), WithinAbs(out["level"][t].get<double>(), 1e-5));
      CHECK_THAT(*found[t].shrunkLevel / *found[t].level, WithinAbs(out["shrink"].get<double>(), 1e-9));
    }
    checks::requireAllSeen(out, {"raw", "level", "shrink"});
    ++looked;
  }
  CHECK(looked == 1);
}

// Hand-made: what follows from the definitions alone.
TEST_CASE("a missing sample does not make a taster look strict") {
  // Everybody scores 9, 5, 1; the second taster missed the best sample.
  ScoreRows answers;
  for (int t = 0; t < 3; ++t)
    for (int s = 0; s < 3; ++s)
      if (t != 1 || s != 0) rows::add(answers, t, s, 9.0 - 4.0 * s);
  for (const auto& taster : tasterMeasures(answers)) {
    CHECK_THAT(taster.level.value(), WithinAbs(0.0, 1e-12));
    CHECK_THAT(taster.shrunkLevel.value(), WithinAbs(0.0, 1e-12));
  }
  const MeanTable table = meanTable(answers);
  CHECK_FALSE(table.table);
  CHECK(table.why == Reason::emptyCell);
}

TEST_CASE("spread, repeats and discrimination of one taster by hand") {
  // Samples twice each: 1 3, 5 7, 9 11. Means 2, 6, 10: sd 4. Within: 2 in each cell, so sd sqrt 2. F = (2 x 16) / 2 = 16 on 2 and 3 df.
  ScoreRows answers;
  for (int taster = 0; taster < 2; ++taster)
    for (int s = 0; s < 3; ++s)
      for (int k = 0; k < 2; ++k) rows::add(answers, taster, s, 4.0 * s + 1.0 + 2.0 * k);
  const auto found = tasterMeasures(answers);
  CHECK_THAT(found[0].spread.value(), WithinRel(4.0, 1e-12));
  CHECK_THAT(found[0].shrunkSpread.value(), WithinRel(4.0, 1e-12));  // nobody differs, so nothing is shrunk
  CHECK_THAT(found[0].repeatSd.value(), WithinRel(std::sqrt(2.0), 1e-12));
  CHECK_THAT(found[0].discriminationF.value(), WithinRel(16.0, 1e-12));
  // P(F > 16) on 2 and 3 df is (1 + 2 x 16 / 3)^(-3/2), the closed form for 2 df above (Abramowitz and Stegun 26.6.4).
  CHECK_THAT(found[0].discriminationP.value(), WithinRel(std::pow(1.0 + 32.0 / 3.0, -1.5), 1e-12));
  CHECK_FALSE(found[0].agreement);  // three samples are too few
  CHECK(found[0].why == std::vector{Reason::fewSamples});
}

TEST_CASE("spread is shrunk with four degrees of freedom from the panel") {
  // Variances 1 and 9 on 2 df each: s0^2 = 5, shrunk (4 x 5 + 2 x 1) / 6 and (4 x 5 + 2 x 9) / 6.
  const auto found = tasterMeasures(rows::ofTasters({{4, 5, 6}, {2, 5, 8}}));
  CHECK_THAT(found[0].shrunkSpread.value(), WithinRel(std::sqrt(22.0 / 6.0), 1e-12));
  CHECK_THAT(found[1].shrunkSpread.value(), WithinRel(std::sqrt(38.0 / 6.0), 1e-12));
}

TEST_CASE("agreement leaves out the taster, and is drawn towards the panel") {
  const auto found = tasterMeasures(rows::ofTasters({{1, 2, 3, 4, 5, 6}, {2, 2, 3, 5, 5, 6}, {6, 5, 4, 3, 2, 1}, {1, 3, 2, 4, 6, 5}}));
  double low = 1.0, high = -1.0;
  for (const auto& taster : found) low = std::min(low, *taster.agreement), high = std::max(high, *taster.agreement);
  CHECK_THAT(found[2].agreement.value(), WithinAbs(low, 0.0));
  CHECK(low < -0.9);
  for (const auto& taster : found) {
    CHECK(*taster.shrunkAgreement > -1.0);
    CHECK(*taster.shrunkAgreement < 1.0);
    CHECK(*taster.shrunkAgreement >= low);
  }
  CHECK(*found[2].shrunkAgreement > *found[2].agreement);
  // Where all agree alike there is nothing between tasters, and all are drawn to the one mean.
  const auto alike = tasterMeasures(rows::ofTasters({{1, 2, 3, 5}, {2, 1, 5, 3}}));
  CHECK_THAT(alike[0].agreement.value(), WithinRel(*alike[1].agreement, 1e-12));
  CHECK_THAT(alike[0].shrunkAgreement.value(), WithinRel(*alike[0].agreement, 1e-12));
}

TEST_CASE("what cannot be known of tasters is said") {
  const auto one = tasterMeasures(rows::ofTasters({{1, 2, 3, 4}}));
  CHECK_FALSE(one[0].level);
  CHECK_FALSE(one[0].agreement);
  CHECK(one[0].spread);
  CHECK(std::ranges::find(one[0].why, Reason::oneTaster) != one[0].why.end());
  CHECK(std::ranges::find(one[0].why, Reason::noRepeats) != one[0].why.end());
  CHECK(meanTable(rows::ofTasters({{1, 2, 3, 4}})).why == Reason::oneTaster);
  // Always the same score: no agreement, for nothing can be compared; the level is known.
  const auto flat = tasterMeasures(rows::ofTasters({{5, 5, 5, 5}, {1, 2, 3, 4}, {2, 3, 3, 4}}));
  CHECK_FALSE(flat[0].agreement);
  CHECK(flat[0].spread == 0.0);
  CHECK(flat[0].level);
  CHECK(std::ranges::find(flat[0].why, Reason::noSpread) != flat[0].why.end());
  // Two tables that share nothing.
  ScoreRows apart;
  rows::add(apart, 0, 0, 1.0), rows::add(apart, 0, 1, 2.0), rows::add(apart, 1, 2, 3.0), rows::add(apart, 1, 3, 4.0);
  CHECK(std::ranges::find(tasterMeasures(apart)[0].why, Reason::notConnected) != tasterMeasures(apart)[0].why.end());
}
