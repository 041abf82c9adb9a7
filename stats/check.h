#pragma once

#include "stats/error.h"

#include <cmath>

namespace oddglass::stats {

/// The largest number of trials this room works with.
inline constexpr int mostTrials = 10'000'000;

/// Throws BadInput when `value` is not a probability strictly between 0 and 1.
inline void requireOpenShare(const char* argument, double value) {
  if (!(value > 0.0 && value < 1.0)) throw BadInput(argument, "must lie between 0 and 1");
}

/// Throws BadInput when `value` is not a share from 0 to 1, both included.
inline void requireShare(const char* argument, double value) {
  if (!(value >= 0.0 && value <= 1.0)) throw BadInput(argument, "must be from 0 to 1");
}

/// Throws BadInput unless 0 <= trials <= mostTrials.
inline void requireTrials(const char* argument, int trials) {
  if (trials < 0) throw BadInput(argument, "must not be negative");
  if (trials > mostTrials) throw BadInput(argument, "must not be above 10 million");
}

/// Throws BadInput unless 0 <= correct <= trials.
inline void requireCount(const char* argument, int correct, int trials) {
  requireTrials("trials", trials);
  if (correct < 0) throw BadInput(argument, "must not be negative");
  if (correct > trials) throw BadInput(argument, "must not be more than the trials");
}

}  // namespace oddglass::stats
