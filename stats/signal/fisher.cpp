#include "stats/signal/fisher.h"

#include "stats/binomial.h"
#include "stats/check.h"

#include <algorithm>

namespace oddglass::stats {

void requireCounts(const YesNo& counts) {
  requireTrials("hits", counts.hits);
  requireTrials("misses", counts.misses);
  requireTrials("falseAlarms", counts.falseAlarms);
  requireTrials("correctRejections", counts.correctRejections);
  requireTrials("hits", counts.signals());
  requireTrials("falseAlarms", counts.noises());
  requireTrials("hits", counts.signals() + counts.noises());
}

double hypergeometricMass(int x, int marked, int all, int drawn) {
  requireCount("marked", marked, all);
  requireCount("drawn", drawn, all);
  if (x < 0 || x > marked || drawn - x < 0 || drawn - x > all - marked) return 0.0;
  if (drawn == 0 || drawn == all) return 1.0;
  const double share = static_cast<double>(drawn) / all;
  return binomialMass(x, marked, share) * binomialMass(drawn - x, all - marked, share) / binomialMass(drawn, all, share);
}

double fisherGreater(const YesNo& counts) {
  requireCounts(counts);
  const int signals = counts.signals(), all = signals + counts.noises(), called = counts.hits + counts.falseAlarms;
  const int least = std::max(0, called - counts.noises()), most = std::min(signals, called);
  if (counts.hits == least) return 1.0;
  const double mass = hypergeometricMass(counts.hits, signals, all, called);
  // From one count to the next the mass changes by this factor, so each tail is summed away from the middle, where terms only fall.
  const auto rise = [&](double x) { return (signals - x) * (called - x) / ((x + 1.0) * (counts.noises() - called + x + 1.0)); };
  const double mean = static_cast<double>(signals) * called / all;
  double sum = 0.0;
  if (counts.hits > mean) {
    double term = mass;
    for (int x = counts.hits; x <= most && term > sum * 1e-18; ++x) {
      sum += term;
      term *= rise(x);
    }
    return std::min(1.0, sum);
  }
  double term = mass / rise(counts.hits - 1.0);
  for (int x = counts.hits - 1; x >= least && term > sum * 1e-18; --x) {
    sum += term;
    if (x > least) term /= rise(x - 1.0);
  }
  return std::clamp(1.0 - sum, 0.0, 1.0);
}

}  // namespace oddglass::stats
