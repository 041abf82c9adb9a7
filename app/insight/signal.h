#pragma once

#include "insight/trials.h"

#include <optional>
#include <vector>

namespace oddglass::insight {

/// Same-different and A-not-A as signal and noise. Same-different: the signal is a flight of two lots, a hit is "different" said of it.
/// A-not-A: the signal is a cup of the marked lot, a hit is "the same as the marked cup" said of it.
struct Signal {
  int hits = 0, misses = 0, falseAlarms = 0, correctRejections = 0;
  std::optional<double> dPrime;          ///< nothing where a rate of 0 or 1 leaves it without a finite value
  std::optional<double> standardError;
  std::optional<double> low, high;       ///< d' less and plus its standard errors at `level`; not below 0 for same-different
  double level = 0.9;
  std::optional<double> corrected;       ///< d' after half an answer was added to each count; nothing without signals or noises
  std::optional<double> criterion;       ///< A-not-A: c, negative when "the same" is said readily; same-different: tau. From the corrected counts where they alone give one
  int signalsServed() const { return hits + misses; }
  int noisesServed() const { return falseAlarms + correctRejections; }
};

/// How well sureness parts signal from noise; six classes, from sure the one way to sure the other. Looked at afterwards.
struct SurenessIndex {
  double rIndex = 0.5;   ///< 0.5 by guessing
  double low = 0, high = 1;
  double level = 0.9;
  double pValue = 1.0;   ///< one-sided permutation
  bool isExact = false;
};

/// Counts and distance. Source: stats/signal/yes_no.h.
Signal signalOf(const std::vector<Trial>& trials, Method method, double level);

/// Nothing where somebody left sureness out, or without signals or noises. Source: stats/signal/r_index.h.
std::optional<SurenessIndex> surenessIndexOf(const std::vector<Trial>& trials, Method method, double level);

}  // namespace oddglass::insight
