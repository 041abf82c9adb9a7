#include "planning/chances.h"

#include "planning/stopping.h"
#include "stats/binomial.h"
#include "stats/multiple/adjust.h"
#include "stats/power.h"
#include "stats/psychometric.h"
#include "stats/signal/plan.h"
#include "stats/signal/rounds.h"
#include "stats/similarity.h"
#include "stats/votes/preference_plan.h"

#include <cmath>

namespace oddglass::planning {

namespace {

stats::Rates ratesOf(Method method, double dPrime) {
  return method == Method::aNotA ? stats::aNotARates(dPrime, stats::plannedCriterion) : stats::sameDifferentRates(dPrime, stats::plannedTau);
}

// What each comparison is held against, the clearest first.
std::vector<double> risksOf(const Setup& setup) { return stats::holmRisks(setup.alpha(), setup.comparisons()); }

stats::FisherRoundsPower fisher(const Setup& setup, const Size& size, double dPrime) {
  return stats::fisherPowerOfRounds(size.people, size.rounds, ratesOf(setup.method, dPrime), setup.gamma(), risksOf(setup).front());
}

double guessingOf(const Setup& setup) { return stats::guessing(statsMethod(setup.method)); }

}  // namespace

Size sizeOf(const Setup& setup) { return {setup.counting(), setup.rounds}; }

std::vector<std::optional<int>> neededInTurn(const Setup& setup, const Size& size) {
  std::vector<std::optional<int>> needed;
  for (const double risk : risksOf(setup)) {
    if (setup.method == Method::preference)
      needed.push_back(stats::criticalLargerSide(size.people, risk));
    else if (!hasGuessing(setup.method) || setup.stopping)
      needed.push_back(std::nullopt);
    else
      needed.push_back(stats::criticalNumber(size.trials(), guessingOf(setup), risk));
  }
  return needed;
}

double alphaActual(const Setup& setup, const Size& size) {
  if (setup.method == Method::preference) return stats::preferencePower(size.people, 0.5, setup.alpha()).alphaActual;
  if (!hasGuessing(setup.method)) return fisher(setup, size, 0.0).alphaActual;
  if (setup.stopping) return sequentialEnd(setup, size, 0.0).difference;
  const auto needed = neededInTurn(setup, size).front();
  if (!needed) return 0.0;
  const double each = stats::upperTail(*needed, size.trials(), guessingOf(setup));
  return setup.comparisons() == 1 ? each : -std::expm1(setup.comparisons() * std::log1p(-each));
}

Chance chanceOf(const Setup& setup, const Size& size, const Difference& difference) {
  if (setup.method == Method::preference) {
    const double chance = stats::preferencePower(size.people, difference.size, setup.alpha()).powerThisWay;
    return {chance, chance};
  }
  if (!hasGuessing(setup.method)) {
    const auto power = fisher(setup, size, difference.size);
    return {power.power, power.independent};
  }
  if (setup.stopping) {
    const double chance = sequentialEnd(setup, size, difference.size).difference;
    return {chance, chance};
  }
  const auto power = stats::powerOfRounds(statsMethod(setup.method), size.people, size.rounds, difference.size, setup.gamma(), risksOf(setup).front());
  return {power.power, power.independent};
}

bool canShow(const Setup& setup, const Size& size) {
  if (size.trials() == 0) return false;
  if (!hasGuessing(setup.method) && setup.method != Method::preference) return fisher(setup, size, 0.0).canShow;
  if (setup.stopping) return sequentialEnd(setup, size, 1.0).difference > 0.0;
  return neededInTurn(setup, size).front().has_value();
}

AlikeChance alikeChanceOf(const Setup& setup, const Size& size, int limitPm) {
  if (!hasGuessing(setup.method) || setup.stopping) return {};
  const double guess = guessingOf(setup);
  AlikeChance alike;
  for (const double risk : risksOf(setup)) alike.largestInTurn.push_back(stats::largestAlike(size.trials(), guess, limitPm / 1000.0, risk));
  if (const auto largest = alike.largestInTurn.front()) alike.chance = stats::lowerTail(*largest, size.trials(), guess);
  return alike;
}

}  // namespace oddglass::planning
