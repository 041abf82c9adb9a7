#pragma once

#include "stats/methods.h"

#include <optional>

namespace oddglass::stats {

/// How often a plan comes out, exactly. `critical` is empty (and the chances 0) where no count can reach alpha.
struct Power {
  std::optional<int> critical;
  double alphaActual;  ///< chance of reaching the critical number by guessing, at most alpha
  double power;
};

/// Chance of showing a difference with `trials` independent trials when an answer is right with probability pc in [0, 1].
/// Not for a preference. Source: exact binomial.
Power powerOf(Method method, int trials, double pc, double alpha);

/// Power with the person as the unit: each of `people` tastes `rounds` times, and a share pd of people like these can tell, with
/// spread gamma between them (0.3 unless the user says otherwise; own figure). `independent` takes every trial as a new person.
/// Source: exact sum of chance-corrected beta-binomials (see replicated.h).
struct RoundsPower {
  std::optional<int> critical;
  double alphaActual;
  double power;
  double independent;
  double gamma;
};
inline constexpr double usualGamma = 0.3;
RoundsPower powerOfRounds(Method method, int people, int rounds, double pd, double gamma, double alpha);

/// Chance that the count of rounds ends at or below the largest for alikeness with this limit, when a share pd can tell;
/// `independent` beside it. 0 where no count is few enough.
struct AlikePower {
  std::optional<int> largest;
  double power;
  double independent;
  double gamma;
};
AlikePower alikePowerOfRounds(Method method, int people, int rounds, double limit, double pd, double gamma, double alpha);

/// Chance of showing a difference when exactly `able` of `people` are always right and the others guess.
/// 0 <= able <= people. Source: exact binomial over the guessers.
double powerOfExactlyAble(Method method, int people, int able, int rounds, double alpha);

}  // namespace oddglass::stats
