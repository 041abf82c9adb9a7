#include "stats/mixed/reml.h"
#include "stats/simulated.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace oddglass::stats;
using simulated::Chance;
using simulated::Share;

namespace {

constexpr double trueDifference = 0.8;

struct Sheets {
  std::vector<double> score;
  Factor sample{{}, 2}, taster, session;
};

/// Two samples in every session, three sessions, a quarter of the answers missing. Tasters differ by 1, a taster's view of a sample by
/// `pair`, days by 0.5 and answers by 1 (standard deviations).
Sheets sheets(Chance& chance, int tasters, double pair) {
  Sheets all;
  all.taster.levels = tasters;
  all.session.levels = 3;
  std::vector<double> day, level, view;
  for (int v = 0; v < 3; ++v) day.push_back(chance.normal(0.5));
  for (int t = 0; t < tasters; ++t) level.push_back(chance.normal());
  for (int i = 0; i < 2 * tasters; ++i) view.push_back(chance.normal(pair));
  for (int t = 0; t < tasters; ++t)
    for (int v = 0; v < 3; ++v)
      for (int s = 0; s < 2; ++s) {
        if (chance.uniform() < 0.25) continue;
        all.score.push_back(5.0 + trueDifference * s + level[static_cast<std::size_t>(t)] + day[static_cast<std::size_t>(v)] + view[static_cast<std::size_t>(2 * t + s)] + chance.normal());
        all.sample.of.push_back(s);
        all.taster.of.push_back(t);
        all.session.of.push_back(v);
      }
  return all;
}

/// Of a nominal 95 %, by the interval of the difference between the samples.
Share coverage(int tasters, double pair, int draws) {
  Chance chance(4100 + tasters);
  Share covered;
  for (int draw = 0; draw < draws; ++draw) {
    const Sheets data = sheets(chance, tasters, pair);
    FixedEffects fixed(data.score.size());
    fixed.addIntercept();
    const Columns sample = fixed.addFactor("sample", data.sample);
    const Reml made = fitReml(fixed, {{"taster", data.taster}, {"taster:sample", combined(data.taster, data.sample)}, {"session", data.session}}, data.score);
    if (!made.fit) continue;
    const auto found = contrast(*made.fit, fixed.allZero(sample).row(0));
    covered.add(found && found->low <= trueDifference && trueDifference <= found->high);
  }
  return covered;
}

void requirePairCoverage(int draws) {
  for (const int tasters : {4, 6, 8, 12})
    for (const double pair : {0.5, 1.0}) {
      const Share covered = coverage(tasters, pair, draws);
      CAPTURE(tasters, pair, covered.value(), covered.draws);
      CHECK(covered.draws > draws * 9 / 10);
      // The range expected of Satterthwaite's interval on unbalanced data of this size, whatever term is estimated at zero.
      CHECK(covered.value() > 0.92 - covered.slack(0.92));
      CHECK(covered.value() < 0.99 + covered.slack(0.99));
    }
}

}  // namespace

TEST_CASE("unbalanced scores: the interval of a difference covers it about as often as it says", "[repeated]") { requirePairCoverage(250); }

TEST_CASE("unbalanced scores: coverage of a difference in full", "[.long]") { requirePairCoverage(4000); }
