#include "stats/drivers/drivers.h"

#include "stats/cases.h"
#include "stats/error.h"

#include <cmath>
#include <limits>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// Six tasters in rows, five samples in columns.
constexpr int driverTasters = 6, driverSamples = 5;
constexpr double wordScores[driverTasters][driverSamples] = {{30, 45, 50, 62, 70}, {20, 40, 44, 50, 71}, {35, 30, 52, 66, 60}, {10, 25, 41, 39, 55}, {42, 40, 55, 58, 77}, {28, 33, 49, 61, 64}};
constexpr double likings[driverTasters][driverSamples] = {{4, 5, 5, 7, 6}, {5, 6, 5, 7, 8}, {3, 4, 6, 6, 5}, {6, 6, 7, 8, 7}, {5, 4, 6, 6, 8}, {4, 6, 5, 7, 7}};

std::vector<WordAndLiking> drivenRows(double level = 0.0, double stretch = 1.0, int tasters = driverTasters, int samples = driverSamples) {
  std::vector<WordAndLiking> rows;
  for (int t = 0; t < tasters; ++t)
    for (int s = 0; s < samples; ++s) rows.push_back({t, s, stretch * wordScores[t][s], likings[t][s] + level * t});
  return rows;
}

}  // namespace

// R 4.2.2: slope of lm(y ~ factor(taster) + x); its jackknife by fitting it again without each taster; Student's t with 5 df; the spread from
// the residuals of lm(x ~ factor(taster)).
TEST_CASE("drivers: the slope within tasters and its jackknife") {
  const Driver found = driversOf({drivenRows()})[0];
  CHECK(found.tasters == 6);
  CHECK(found.samples == 5);
  CHECK_THAT(found.slope.estimate.value(), WithinRel(6.294603731062982e-02, 1e-12));
  CHECK_THAT(found.slope.se.value(), WithinRel(8.125221909030067e-03, 1e-10));
  CHECK_THAT(found.slope.low.value(), WithinRel(4.205948946076292e-02, 1e-10));
  CHECK_THAT(found.slope.high.value(), WithinRel(8.383258516049673e-02, 1e-10));
  CHECK_THAT(found.slope.pValue.value(), WithinRel(5.728906103838572e-04, 1e-9));
  CHECK_THAT(found.spread.value(), WithinRel(1.631665815457728e+01, 1e-12));
  CHECK(found.pAdjusted == found.slope.pValue);
}

TEST_CASE("drivers: a taster's generosity changes nothing, and a scale only the unit") {
  const Driver plain = driversOf({drivenRows()})[0], generous = driversOf({drivenRows(0.7)})[0], stretched = driversOf({drivenRows(0.0, 10.0)})[0];
  CHECK_THAT(generous.slope.estimate.value(), WithinRel(*plain.slope.estimate, 1e-12));
  CHECK_THAT(generous.slope.se.value(), WithinRel(*plain.slope.se, 1e-10));
  CHECK_THAT(stretched.slope.estimate.value() * 10.0, WithinRel(*plain.slope.estimate, 1e-12));
  CHECK_THAT(stretched.shrunk.value() * 10.0, WithinRel(*plain.shrunk, 1e-10));
  CHECK_THAT(stretched.slope.pValue.value(), WithinRel(*plain.slope.pValue, 1e-9));
}

// Efron and Morris 1975, Morris 1983: the slopes are multiplied by t2 / (t2 + se^2), t2 the mean of slope^2 - se^2 in common units.
TEST_CASE("drivers: slopes are drawn in, one among noise more than one by itself") {
  std::vector<WordAndLiking> noise = drivenRows();
  const double scattered[driverSamples] = {50, 49, 51, 50, 50.5};
  for (std::size_t i = 0; i < noise.size(); ++i) noise[i].word = scattered[(i * 7 + i / driverSamples * 3) % driverSamples];
  const Driver alone = driversOf({drivenRows()})[0];
  const auto among = driversOf({drivenRows(), noise, noise, noise});
  CHECK(alone.shrunk.value() < *alone.slope.estimate);
  CHECK(among[0].shrunk.value() < *alone.shrunk);
  CHECK(among[0].shrunk.value() > 0.0);
  double between = 0.0;
  for (const Driver& each : among) between += std::pow(*each.slope.estimate * *each.spread, 2) - std::pow(*each.slope.se * *each.spread, 2);
  between = std::max(0.0, between / 4.0);
  for (const Driver& each : among) {
    const double error = *each.slope.se * *each.spread;
    CHECK_THAT(each.shrunk.value(), WithinAbs(*each.slope.estimate * between / (between + error * error), 1e-12));
    CHECK(each.pAdjusted.value() >= *each.slope.pValue);
  }
}

TEST_CASE("drivers: too few people, too few samples and no spread have their reasons") {
  CHECK(driversOf({drivenRows(0, 1, 4)})[0].slope.why == Reason::fewTasters);
  CHECK(driversOf({drivenRows(0, 1, 6, 3)})[0].slope.why == Reason::fewSamples);
  auto same = drivenRows();
  for (WordAndLiking& row : same) row.word = 40.0;
  CHECK(driversOf({same})[0].slope.why == Reason::noSpread);
  auto one = same;
  one[3].word = 50.0;  // only one taster told the samples apart
  CHECK(driversOf({one})[0].slope.why == Reason::noSpread);
  auto even = drivenRows();
  for (WordAndLiking& row : even) row.liking = 5.0;
  const Driver flat = driversOf({even})[0];
  CHECK(flat.slope.estimate == 0.0);
  CHECK(flat.slope.why == Reason::noSpread);
  CHECK_FALSE(flat.shrunk);
  CHECK(driversOf({{}})[0].slope.why == Reason::fewTasters);
  CHECK(driversOf({}).empty());
}

TEST_CASE("drivers: bad input is named") {
  const auto named = [](const std::string& argument) { return Catch::Matchers::Predicate<BadInput>([=](const BadInput& bad) { return bad.argument() == argument; }, argument); };
  auto twice = drivenRows();
  twice.push_back(twice.front());
  CHECK_THROWS_MATCHES(driversOf({twice}), BadInput, named("words"));
  CHECK_THROWS_MATCHES(driversOf({{{-1, 0, 1, 1}}}), BadInput, named("words"));
  CHECK_THROWS_MATCHES(driversOf({{{0, 0, std::numeric_limits<double>::quiet_NaN(), 1}}}), BadInput, named("word"));
  CHECK_THROWS_MATCHES(driversOf({{{0, 0, 1, std::numeric_limits<double>::infinity()}}}), BadInput, named("liking"));
  CHECK_THROWS_MATCHES(driversOf({drivenRows()}, 1.0), BadInput, named("level"));
}
