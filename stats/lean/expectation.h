#pragma once

#include "stats/choice.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// How well somebody's expectations hold: each a probability given beforehand, and whether it came true.
struct Calibration {
  double brier = 0.0;         ///< mean of (probability - outcome)^2, 0 best; always saying one half gives 0.25
  double logScore = 0.0;      ///< mean of -ln(probability of what happened), lower is better
  double expectedHits = 0.0;  ///< sum of the probabilities
  int hits = 0;               ///< how many came true
  std::optional<double> pValue;  ///< two-sided, hits against the Poisson-binomial of the probabilities; empty above 20,000 expectations (tooLarge)
  struct Band {
    double low = 0.0, high = 0.0;  ///< probabilities in [low, high)
    int count = 0;                 ///< 1 or more
    double meanProbability = 0.0;
    Estimate cameTrue;             ///< share with its Clopper-Pearson interval
  };
  std::vector<Band> curve;         ///< fifths of the probabilities from 0 to 1 that hold an expectation; empty below 20 expectations
  std::optional<Reason> why;       ///< fewSessions where there is no curve
};

/// `probabilities` from 0.01 to 0.99, one or more, each with its outcome; BadInput otherwise. level in (0, 1).
/// p adds up all counts of hits that are no likelier than the one seen (relative allowance 1e-9).
/// Sources: Brier 1950, Mon Weather Rev 78:1; Good 1952, J R Stat Soc B 14:107 (log score); Poisson 1837 by exact convolution.
Calibration calibration(const std::vector<double>& probabilities, const std::vector<bool>& cameTrue, double level);

/// P(X = 0), ..., P(X = n) for the number of successes among independent trials with these probabilities, each in [0, 1].
std::vector<double> poissonBinomial(const std::vector<double>& probabilities);

}  // namespace oddglass::stats
