#pragma once

#include "stats/reason.h"
#include "stats/signal/fisher.h"

#include <optional>

namespace oddglass::stats {

/// What a yes-no test says: the distance of signal and noise, and how readily "signal" is said.
/// dPrime, its standard error and the criterion are empty where a rate is 0 or 1 that leaves them without a finite value (why = allOneWay),
/// and with no signal or no noise at all (why = emptyCell, then everything is). `corrected` is d' after adding half an answer to each of the four counts
/// (the log-linear rule; Hautus 1995), so it always has a value.
struct SignalFound {
  std::optional<double> dPrime;
  std::optional<double> standardError;
  std::optional<double> corrected;
  std::optional<double> criterion;  ///< A-not-A: c, 0 without a bias, negative when "A" is said readily. Same-different: tau, in standard deviations
  std::optional<double> criterionCorrected;
  std::optional<double> pValue;     ///< Fisher's exact, one-sided
  std::optional<Reason> why;
};

/// Two rates: of "signal" said to signals, and to noises.
struct Rates {
  double hit;
  double falseAlarm;
};

/// A-not-A: d' = z(hit) - z(false alarm), of either sign; c = -(z(hit) + z(false alarm)) / 2.
/// Variance: H(1-H)/(n phi(zH)^2) + the same of F. Sources: Macmillan and Creelman 2005; Gourevitch and Galanter 1967, Psychometrika 32:25.
SignalFound aNotA(const YesNo& counts);

/// Same-different, differencing rule: "different" is said when two cups lie more than tau apart, each with unit variance.
/// F = 2 Phi(-tau/sqrt2), H = Phi((d'-tau)/sqrt2) + Phi((-d'-tau)/sqrt2). d' is 0, without a standard error (why = atGuessing), when H is at or below F.
/// Sources: Macmillan, Kaplan and Creelman 1977, Psychol Rev 84:452; delta method.
SignalFound sameDifferent(const YesNo& counts);

/// The rates at a d' of 0 or more: A-not-A at a criterion c, same-different at a tau of 0 or more. Finite, at most 1000 in size; BadInput otherwise.
Rates aNotARates(double dPrime, double criterion);
Rates sameDifferentRates(double dPrime, double tau);

/// d' and criterion (c or tau) of two rates; empty where they have no finite value. Rates from 0 to 1.
struct Distance {
  double dPrime;
  double criterion;
};
std::optional<Distance> aNotADistance(const Rates& rates);
std::optional<Distance> sameDifferentDistance(const Rates& rates);

}  // namespace oddglass::stats
