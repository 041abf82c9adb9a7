#pragma once

#include "stats/methods.h"
#include "stats/reason.h"

#include <optional>

namespace oddglass::stats {

/// A number of independent trials with its critical number and power.
struct Size {
  int trials;
  int critical;
  double power;
};

/// Smallest numbers of trials for a wanted power. Power is a saw-tooth in the trials: `first` is the first number that reaches it,
/// `stable` the number from which on it is never lost again. Empty beyond 100,000 trials (why = beyondSearch).
struct Sizes {
  std::optional<Size> first;
  std::optional<Size> stable;
  std::optional<Reason> why;
};

/// For an answer that is right with probability pc, above guessing and at most 1; power and alpha in (0, 1). Not for a preference.
/// Source: exact binomial scan; the stable size as Ennis and Jesionka 2011, J Sens Stud 26:371. The scan stops when power has
/// held for 100 trials and for half as many again as the last failing number.
Sizes sizeFor(Method method, double pc, double power, double alpha);

}  // namespace oddglass::stats
