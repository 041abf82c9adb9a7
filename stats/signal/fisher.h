#pragma once

namespace oddglass::stats {

/// Counts of a yes-no test: a signal and a noise were served, and "signal" or "noise" was said. In A-not-A the signal is a cup of A,
/// in same-different a pair of unlike cups. All counts from 0, each sum at most 10 million; BadInput otherwise, which names the count.
struct YesNo {
  int hits = 0;               ///< signal, called signal
  int misses = 0;             ///< signal, called noise
  int falseAlarms = 0;        ///< noise, called signal
  int correctRejections = 0;  ///< noise, called noise
  int signals() const { return hits + misses; }
  int noises() const { return falseAlarms + correctRejections; }
};

/// Throws BadInput for counts that cannot be.
void requireCounts(const YesNo& counts);

/// P(as many hits or more), all sums of the table held: small where signals are called signal more often than noises.
/// Source: Fisher 1935, exact test of a 2 x 2 table, one-sided (hypergeometric tail).
double fisherGreater(const YesNo& counts);

/// P(X = x) for a hypergeometric count: of `all` things `marked` are marked, `drawn` are drawn without putting back.
/// 0 outside the possible range. Source: Loader 2000, as a quotient of binomial masses.
double hypergeometricMass(int x, int marked, int all, int drawn);

}  // namespace oddglass::stats
