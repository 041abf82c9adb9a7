#include "stats/signal/rounds.h"

#include "stats/binomial.h"
#include "stats/check.h"
#include "stats/replicated.h"
#include "stats/signal/fisher.h"

#include <algorithm>
#include <vector>

namespace oddglass::stats {
namespace {

/// For each number of false alarms the fewest hits that reach alpha, signals + 1 where none does; more false alarms never need fewer.
std::vector<int> fewestHits(int signals, int noises, double alpha) {
  std::vector<int> fewest;
  int hits = 0;
  for (int alarms = 0; alarms <= noises; ++alarms) {
    while (hits <= signals && !atMost(fisherGreater({hits, signals - hits, alarms, noises - alarms}), alpha)) ++hits;
    fewest.push_back(hits);
  }
  return fewest;
}

std::vector<int> signalsOfEach(int people, int rounds) {
  std::vector<int> each(static_cast<std::size_t>(people), rounds / 2);
  if (rounds % 2 == 1)
    for (int i = 0; i < people / 2; ++i) ++each[static_cast<std::size_t>(i)];
  return each;
}

}  // namespace

FisherRoundsPower fisherPowerOfRounds(int people, int rounds, const Rates& rates, double gamma, double alpha) {
  if (people < 0) throw BadInput("people", "must not be negative");
  if (rounds < 0) throw BadInput("rounds", "must not be negative");
  if (people > 20'000 / std::max(1, rounds)) throw BadInput("people", "people times rounds must not be above 20,000");
  requireShare("hit", rates.hit);
  requireShare("falseAlarm", rates.falseAlarm);
  if (!(rates.falseAlarm < 1.0) || rates.hit < rates.falseAlarm) throw BadInput("falseAlarm", "must be below 1 and not above the hits");
  requireShare("gamma", gamma);
  requireOpenShare("alpha", alpha);
  const int signals = people * rounds / 2, noises = people * rounds - signals;
  const std::vector<int> fewest = fewestHits(signals, noises, alpha);
  FisherRoundsPower found{0.0, 0.0, 0.0, fewest.front() <= signals};
  if (!found.canShow) return found;
  const double mean = std::clamp((rates.hit - rates.falseAlarm) / (1.0 - rates.falseAlarm), 0.0, 1.0);
  std::vector<double> tail = tableCounts(signalsOfEach(people, rounds), rates.falseAlarm, mean, gamma);
  for (std::size_t k = tail.size() - 1; k > 0; --k) tail[k - 1] += tail[k];
  for (int alarms = 0; alarms <= noises; ++alarms) {
    const int hits = fewest[static_cast<std::size_t>(alarms)];
    if (hits > signals) break;
    const double here = binomialMass(alarms, noises, rates.falseAlarm);
    found.power += here * tail[static_cast<std::size_t>(hits)];
    found.independent += here * upperTail(hits, signals, rates.hit);
    found.alphaActual += here * upperTail(hits, signals, rates.falseAlarm);
  }
  found.power = std::min(1.0, found.power);
  found.independent = std::min(1.0, found.independent);
  return found;
}

}  // namespace oddglass::stats
