#include "stats/signal/rounds.h"

#include "stats/binomial_masses.h"
#include "stats/check.h"
#include "stats/replicated.h"
#include "stats/signal/fewest_hits.h"

#include <algorithm>
#include <vector>

namespace oddglass::stats {
namespace {

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
  const std::vector<double> ours = upperTails(tableCounts(signalsOfEach(people, rounds), rates.falseAlarm, mean, gamma)),
                            strangers = upperTails(binomialMasses(signals, rates.hit)), none = upperTails(binomialMasses(signals, rates.falseAlarm)),
                            masses = binomialMasses(noises, rates.falseAlarm);
  for (int alarms = 0; alarms <= noises; ++alarms) {
    const auto hits = static_cast<std::size_t>(fewest[static_cast<std::size_t>(alarms)]);
    if (hits > static_cast<std::size_t>(signals)) break;
    const double here = masses[static_cast<std::size_t>(alarms)];
    found.power += here * ours[hits];
    found.independent += here * strangers[hits];
    found.alphaActual += here * none[hits];
  }
  found.power = std::min(1.0, found.power);
  found.independent = std::min(1.0, found.independent);
  return found;
}

}  // namespace oddglass::stats
