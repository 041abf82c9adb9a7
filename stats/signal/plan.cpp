#include "stats/signal/plan.h"

#include "stats/binomial.h"
#include "stats/check.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

/// Signals, and noises, in the largest plan that the search for a size looks at.
constexpr int mostOfAKind = 1000;

void requireKind(const char* argument, int trials) {
  if (trials < 0 || trials > 20'000) throw BadInput(argument, "must be from 0 to 20,000");
}

/// The numbers of false alarms that are at all likely.
struct Likely {
  int from;
  int to;
};

Likely likely(int noises, double rate) {
  const double middle = noises * rate, reach = 10.0 * std::sqrt(noises * rate * (1.0 - rate)) + 40.0;
  return {std::max(0, static_cast<int>(middle - reach)), std::min(noises, static_cast<int>(middle + reach) + 1)};
}

/// Chance that Fisher's test shows a difference when the answers have these rates. More false alarms never need fewer hits.
double chanceOf(int signals, int noises, const Rates& rates, double alpha) {
  const Likely range = likely(noises, rates.falseAlarm);
  // With both shares alike p is above one half, so the hits that are needed lie above.
  int hits = noises == 0 || alpha >= 0.5 ? 0 : static_cast<int>(static_cast<double>(range.from) * signals / noises);
  double sum = 0.0;
  for (int alarms = range.from; alarms <= range.to; ++alarms) {
    while (hits <= signals && !atMost(fisherGreater({hits, signals - hits, alarms, noises - alarms}), alpha)) ++hits;
    if (hits > signals) break;
    sum += binomialMass(alarms, noises, rates.falseAlarm) * upperTail(hits, signals, rates.hit);
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
  return {chanceOf(signals, noises, rates, alpha), chanceOf(signals, noises, {rates.falseAlarm, rates.falseAlarm}, alpha)};
}

Sizes fisherSizes(const Rates& rates, double power, double alpha) {
  requireShare("hit", rates.hit);
  requireShare("falseAlarm", rates.falseAlarm);
  requireOpenShare("power", power);
  requireOpenShare("alpha", alpha);
  if (!(rates.hit > rates.falseAlarm)) throw BadInput("dPrime", "must be above 0");
  Sizes sizes;
  // The teeth of the saw are far below a tenth at the end of the search: where the last number falls short by that, all do.
  const bool isFar = chanceOf(mostOfAKind, mostOfAKind, rates, alpha) < power - 0.1;
  for (int half = 1; !isFar && half <= mostOfAKind; ++half) {
    const double here = chanceOf(half, half, rates, alpha);
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
