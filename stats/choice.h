#pragma once

#include "stats/binomial.h"
#include "stats/methods.h"
#include "stats/reason.h"

#include <optional>

namespace oddglass::stats {

/// An estimate with both ends of its interval. An empty end has no finite limit.
struct Estimate {
  std::optional<double> estimate;
  std::optional<double> low;
  std::optional<double> high;
};

/// d' with two intervals: by likelihood (low, high) and by Clopper-Pearson through the inverse (exactLow, exactHigh).
/// The likelihood interval covers `level` on average, the exact one at least. At or below guessing d' is 0 and both low
/// ends are 0. All right: the estimate and the high ends are empty.
struct DPrimeEstimate {
  std::optional<double> estimate;
  std::optional<double> low, high;
  std::optional<double> exactLow, exactHigh;
  std::optional<double> standardError;  ///< delta method; empty at or below guessing and when all are right
  std::optional<Reason> why;            ///< set where the estimate is empty
};

/// What one count of right answers says. p is one-sided (for a preference two-sided), critical the smallest count that
/// reaches alpha (for a preference of the larger side).
struct Counted {
  double pValue;
  std::optional<int> critical;
  Estimate pc;
  Estimate pd;  ///< empty for a preference
  DPrimeEstimate dPrime;
  std::optional<Reason> why;  ///< noTrials or noGuessing where parts are empty
};

/// Exact p of a count: P(X >= correct) by guessing; for a preference the two-sided p. 1 without trials.
double pValue(Method method, int correct, int trials);

/// The needed number at alpha; for a preference of the larger side. Empty where none reaches alpha.
std::optional<int> neededNumber(Method method, int trials, double alpha);

/// Share of people who tell, with the Clopper-Pearson limits of pc put on its scale and cut at 0. trials >= 1.
Estimate shareInterval(Method method, int correct, int trials, double level);

/// d' with its intervals. trials >= 1. Sources: likelihood ratio against chi-square(1), the true d' not below 0; delta method
/// as in Bi, Ennis and O'Mahony 1997, J Sens Stud 12:87.
DPrimeEstimate dPrimeInterval(Method method, int correct, int trials, double level);

/// All of the above for one count. alpha and level in (0, 1); 0 <= correct <= trials.
Counted count(Method method, int correct, int trials, double alpha, double level);

}  // namespace oddglass::stats
