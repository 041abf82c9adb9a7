#include "stats/signal/fewest_hits.h"

#include "stats/binomial.h"
#include "stats/check.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

// In long double, so that a p that is alpha to the digit stays it: sums of many logarithms are taken apart again.
class HypergeometricTails {
 public:
  HypergeometricTails(int signals, int noises) : signals_(signals), noises_(noises), logs_(static_cast<std::size_t>(signals + noises) + 1, 0.0L) {
    for (std::size_t i = 1; i < logs_.size(); ++i) logs_[i] = logs_[i - 1] + std::log(static_cast<long double>(i));
  }

  // P(as many hits or more) with the sums of the table held.
  double atLeast(int hits, int alarms) const {
    const int called = hits + alarms, most = std::min(signals_, called);
    if (hits <= called - noises_ || hits == 0) return 1.0;
    double term = static_cast<double>(std::exp(choose(signals_, hits) + choose(noises_, alarms) - choose(signals_ + noises_, called))), sum = 0.0;
    for (int x = hits; x <= most && term > sum * 1e-18; ++x) {
      sum += term;
      term *= static_cast<double>(signals_ - x) * (called - x) / ((x + 1.0) * (noises_ - called + x + 1.0));
    }
    return std::min(1.0, sum);
  }

 private:
  long double choose(int from, int take) const { return log(from) - log(take) - log(from - take); }
  long double log(int factorial) const { return logs_[static_cast<std::size_t>(factorial)]; }
  int signals_, noises_;
  std::vector<long double> logs_;
};

}  // namespace

std::vector<int> fewestHits(int signals, int noises, double alpha) {
  for (const auto& [argument, trials] : {std::pair("signals", signals), std::pair("noises", noises)})
    if (trials < 0 || trials > 20'000) throw BadInput(argument, "must be from 0 to 20,000");
  requireOpenShare("alpha", alpha);
  const HypergeometricTails tails(signals, noises);
  std::vector<int> fewest;
  int hits = 0;
  for (int alarms = 0; alarms <= noises; ++alarms) {
    // With both shares alike p is above one half, so the hits that are needed lie above.
    if (alpha < 0.5 && noises > 0) hits = std::max(hits, static_cast<int>(static_cast<long long>(alarms) * signals / noises));
    while (hits <= signals && !atMost(tails.atLeast(hits, alarms), alpha)) ++hits;
    fewest.push_back(hits);
  }
  return fewest;
}

}  // namespace oddglass::stats
