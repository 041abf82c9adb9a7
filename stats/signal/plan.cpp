#include "stats/signal/plan.h"

#include "stats/binomial.h"
#include "stats/check.h"

#include <algorithm>
#include <vector>

namespace oddglass::stats {
namespace {

void requireKind(const char* argument, int trials) {
  if (trials < 0 || trials > 20'000) throw BadInput(argument, "must be from 0 to 20,000");
}

/// For each number of false alarms the fewest hits that Fisher's test takes at alpha; signals + 1 where none does. More false alarms never need fewer hits.
std::vector<int> fewestHits(int signals, int noises, double alpha) {
  std::vector<int> fewest(static_cast<std::size_t>(noises) + 1);
  int hits = 0;
  for (int alarms = 0; alarms <= noises; ++alarms) {
    while (hits <= signals && !atMost(fisherGreater({hits, signals - hits, alarms, noises - alarms}), alpha)) ++hits;
    fewest[static_cast<std::size_t>(alarms)] = hits;
  }
  return fewest;
}

double chanceOf(const std::vector<int>& fewest, int signals, const Rates& rates) {
  const int noises = static_cast<int>(fewest.size()) - 1;
  double sum = 0.0;
  for (int alarms = 0; alarms <= noises; ++alarms) {
    const int hits = fewest[static_cast<std::size_t>(alarms)];
    if (hits <= signals) sum += binomialMass(alarms, noises, rates.falseAlarm) * upperTail(hits, signals, rates.hit);
  }
  return std::min(1.0, sum);
}

}  // namespace

FisherPower fisherPower(int signals, int noises, const Rates& rates, double alpha) {
  requireKind("signals", signals);
  requireKind("noises", noises);
  requireShare("hit", rates.hit);
  requireShare("falseAlarm", rates.falseAlarm);
  requireOpenShare("alpha", alpha);
  const std::vector<int> fewest = fewestHits(signals, noises, alpha);
  return {chanceOf(fewest, signals, rates), chanceOf(fewest, signals, {rates.falseAlarm, rates.falseAlarm})};
}

Sizes fisherSizes(const Rates& rates, double power, double alpha) {
  requireShare("hit", rates.hit);
  requireShare("falseAlarm", rates.falseAlarm);
  requireOpenShare("power", power);
  requireOpenShare("alpha", alpha);
  if (!(rates.hit > rates.falseAlarm)) throw BadInput("dPrime", "must be above 0");
  Sizes sizes;
  for (int half = 1; half <= 1000; ++half) {
    const double here = chanceOf(fewestHits(half, half, alpha), half, rates);
    if (here < power) {
      sizes.stable.reset();
      continue;
    }
    const Size size{2 * half, 0, here};
    if (!sizes.first) sizes.first = size;
    if (!sizes.stable) sizes.stable = size;
    if (2 * half >= sizes.stable->trials + std::max(20, sizes.stable->trials / 2)) return sizes;
  }
  sizes.stable.reset();
  sizes.why = Reason::beyondSearch;
  return sizes;
}

}  // namespace oddglass::stats
