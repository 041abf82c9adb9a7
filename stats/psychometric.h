#pragma once

#include "stats/methods.h"

#include <optional>

namespace oddglass::stats {

/// Probability of a right answer for a true difference d' >= 0 (in standard deviations), equal-variance normal model.
/// From guessing(method) at 0 towards 1. A preference has no such function: BadInput, as for d' that is negative or
/// not finite.
/// Sources: pair and 3-AFC Hacker and Ratcliff 1979; triangle and duo-trio Ura 1960, David and Trivedi 1962; tetrad Ennis,
/// Ennis, Palen and O'Mahony 1998, Br J Math Stat Psychol 51:205; two-out-of-five by the least within-group sum of squares.
double rightAnswers(Method method, double dPrime);

/// Slope of rightAnswers at d' >= 0, in closed form (by quadrature for two-out-of-five); 0 at d' = 0 for every method
/// but pair and 3-AFC. Source: derived from the same formulas.
double rightAnswersSlope(Method method, double dPrime);

/// The d' whose probability of a right answer is pc, for pc in [0, 1]; 0 at or below guessing; empty where no finite
/// d' reaches pc (pc = 1, or so near that the difference is below rounding).
std::optional<double> dPrimeOf(Method method, double pc);

/// Probability of a right answer when a share pd in [0, 1] of people tell for sure and the rest guess.
/// Source: Abbott's formula; ISO 4120:2021.
double rightAnswersOfShare(Method method, double pd);

/// The share of people who tell, (pc - guess) / (1 - guess), 0 at or below guessing. pc in [0, 1].
double shareOf(Method method, double pc);

}  // namespace oddglass::stats
