#pragma once

#include "planning/chances.h"

#include <optional>

namespace oddglass::planning {

/// What Wald's lines say of `right` among `trials` right answers: the difference is shown, it is not there as far as was asked, or go on.
enum class Sequential { difference, none, goOn };

/// Source: Wald 1945 (sequential probability ratio test) with p0 the chance of guessing and p1 that of the plan's share of people who can tell.
/// `trials` is 0 or more, 0 <= right <= trials; Problem(outOfRange) otherwise. Not for a preference, nor for methods without a guessing chance.
Sequential sequentialAfter(Method method, const Stopping& stopping, int alphaPm, int trials, int right);

/// How a plan with looks ends when a share (0 to 1) of people can tell: looked at after whole rounds of everybody who counts, and at the latest
/// after the last round. `undecided`: still between the lines then. Exact, as if every trial were a new person. Source: stats/sequential/sprt.h.
struct SequentialEnd {
  double difference = 0.0;
  double none = 0.0;
  double undecided = 1.0;
  double expectedTrials = 0.0;
};
SequentialEnd sequentialEnd(const Setup& setup, const Size& size, double share);

}  // namespace oddglass::planning
