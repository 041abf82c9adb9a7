#include "stats/lean/lean.h"

#include "stats/simulated.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace oddglass::stats;
using simulated::Chance;
using simulated::Share;

namespace {

/// Friends differ in how much they like the drink (sd 0.8), and each evening adds its own chance (sd 1); the maker is one of them, and leans by 0.7.
constexpr double trueLean = 0.7;

std::vector<PersonDifference> series(Chance& chance, int people, int sessions, double missing) {
  std::vector<PersonDifference> differences;
  std::vector<double> day;
  for (int s = 0; s < sessions; ++s) day.push_back(chance.normal(0.7));
  for (int p = 0; p < people; ++p) {
    const double person = chance.normal(0.8) + (p == 0 ? trueLean : 0.0);
    for (int s = 0; s < sessions; ++s)
      if (chance.uniform() >= missing || s == p % sessions) differences.push_back({p, s, person + day[s] + chance.normal(1.0)});
  }
  return differences;
}

struct Coverage {
  Share ours, constant, pooled;
};

/// What goes wrong otherwise: the maker taken as a constant (s / sqrt k), and a mean over sessions weighted as if each were a study of its own.
Coverage leanCoverage(int people, int sessions, double missing, int draws, std::uint64_t seed) {
  Chance chance(seed);
  Coverage found;
  for (int draw = 0; draw < draws; ++draw) {
    const MakerContrast contrast = makerContrast(series(chance, people, sessions, missing), 0, 0.95);
    if (!contrast.lean.low) continue;
    const double off = *contrast.lean.estimate - trueLean, reach = *contrast.lean.high - *contrast.lean.estimate;
    found.ours.add(std::fabs(off) <= reach);
    found.constant.add(std::fabs(off) <= reach / std::sqrt(contrast.friends + 1.0));
    double weight = 0.0, sum = 0.0;
    for (const auto& session : contrast.sessions)
      if (session.lean.se) weight += 1.0 / (*session.lean.se * *session.lean.se), sum += *session.lean.estimate / (*session.lean.se * *session.lean.se);
    if (weight > 0.0) found.pooled.add(std::fabs(sum / weight - trueLean) <= 1.959964 / std::sqrt(weight));
  }
  return found;
}

void requireLeanCoverage(int draws) {
  for (const int people : {4, 6, 8, 12})
    for (const int sessions : {1, 3, 6})
      for (const double missing : {0.0, 0.25}) {
        if (sessions == 1 && missing > 0.0) continue;
        const Coverage found = leanCoverage(people, sessions, missing, draws, 7000 + 100 * people + sessions);
        CAPTURE(people, sessions, missing, found.ours.value(), found.constant.value(), found.pooled.value(), found.ours.draws);
        CHECK(found.ours.draws > 0.95 * draws);
        // With everybody there the pivot is exactly t. With holes people's means are known unequally well: a little either way.
        const double give = missing > 0.0 ? 0.015 : 0.0;
        CHECK(found.ours.value() > 0.95 - give - found.ours.slack(0.95));
        CHECK(found.ours.value() < 0.95 + give + found.ours.slack(0.95));
        CHECK(found.constant.value() < 0.92);
        if (sessions == 6) CHECK(found.pooled.value() < 0.80);
      }
}

}  // namespace

// The interval of the lean covers what it says at panels of 4, 6, 8 and 12 over 1, 3 and 6 sessions; the short cuts do not (as a constant .85 with
// 3 friends and .45 with 11; weighted over 6 sessions .48 to .73).
TEST_CASE("the lean's interval covers its level", "[repeated]") { requireLeanCoverage(400); }

TEST_CASE("the lean's interval covers its level in full", "[.long]") { requireLeanCoverage(20'000); }
