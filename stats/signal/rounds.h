#pragma once

#include "stats/signal/yes_no.h"

namespace oddglass::stats {

/// How often Fisher's exact test shows a difference when people answer several times each.
struct FisherRoundsPower {
  double power;        ///< the person as the unit
  double independent;  ///< as if every trial were a new person
  double alphaActual;  ///< the same when signals are called signal as often as noises are: at most alpha
  bool canShow;        ///< some table reaches alpha
};

/// Each of `people` answers `rounds` times, half of all trials signals (one fewer where they are odd), spread over people as evenly as they go.
/// Every noise is called signal with chance F. A person calls a signal so with chance F + (1 - F) pi; pi differs between people as a Beta with spread
/// gamma and the mean that gives the hit rate H: the chance-corrected beta-binomial of replicated.h with F in the place of guessing.
/// people, rounds >= 0, people x rounds <= 20,000; 0 <= F <= H <= 1, F below 1; gamma in [0, 1], alpha in (0, 1). Source: exact sum over both counts.
FisherRoundsPower fisherPowerOfRounds(int people, int rounds, const Rates& rates, double gamma, double alpha);

}  // namespace oddglass::stats
