#include "stats/choice.h"
#include "stats/replicated.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

using namespace oddglass::stats;

namespace {

struct ShareCoverage {
  double posterior = 0.0;
  double pooled = 0.0;
};

struct Pattern {
  std::vector<int> heads;  // how many people had 0, 1, 2, 3 right
  Interval posterior, pooled;
};

// All ways in which six people's counts of three rounds can fall, with both intervals at 95 %.
std::vector<Pattern> patterns() {
  std::vector<Pattern> list;
  for (int a = 0; a <= 6; ++a)
    for (int b = 0; a + b <= 6; ++b)
      for (int c = 0; a + b + c <= 6; ++c) {
        const std::vector<int> heads{a, b, c, 6 - a - b - c};
        std::vector<PersonCount> people;
        int right = 0;
        for (int k = 0; k < 4; ++k)
          for (int i = 0; i < heads[k]; ++i) {
            people.push_back({k, 3});
            right += k;
          }
        const auto share = shareOfPeople(people, 1.0 / 3.0, 0.95).value();
        const Estimate pooled = shareInterval(Method::triangle, right, 18, 0.95);
        list.push_back({heads, {share.low, share.high}, {*pooled.low, *pooled.high}});
      }
  return list;
}

ShareCoverage coverageAt(const std::vector<Pattern>& all, double mu, double gamma) {
  const auto one = personCounts(3, 1.0 / 3.0, mu, gamma);
  ShareCoverage sum;
  for (const auto& pattern : all) {
    double chance = 720.0;  // 6! / product of heads!, times the people's chances
    for (int k = 0; k < 4; ++k) chance *= std::pow(one[k], pattern.heads[k]) / std::tgamma(pattern.heads[k] + 1.0);
    if (pattern.posterior.low <= mu && mu <= pattern.posterior.high) sum.posterior += chance;
    if (pattern.pooled.low <= mu && mu <= pattern.pooled.high) sum.pooled += chance;
  }
  return sum;
}

}  // namespace

// Every outcome of six people and three rounds is added up, nothing is simulated. A Bayesian interval promises its level on
// average over mu and gamma only: where nearly everybody can tell and people hardly differ it falls a little below 95 %.
TEST_CASE("the people's interval keeps its level where pooled trials lose it") {
  const auto all = patterns();
  REQUIRE(all.size() == 84);
  double worst = 1.0, worstPooled = 1.0;
  for (const double mu : {0.1, 0.2, 0.3, 0.5, 0.7, 0.8, 0.9})
    for (const double gamma : {0.1, 0.3, 0.5}) {
      const ShareCoverage here = coverageAt(all, mu, gamma);
      INFO("mu " << mu << " gamma " << gamma << " people " << here.posterior << " pooled " << here.pooled);
      CHECK(here.posterior > (mu < 0.85 ? 0.95 : 0.92));
      worst = std::min(worst, here.posterior);
      worstPooled = std::min(worstPooled, here.pooled);
    }
  CHECK(worstPooled < 0.90);
  CHECK(worst > worstPooled);
}
