#pragma once

#include "domain/plan.h"

#include <optional>

namespace oddglass::planning {

/// What Wald's ratio says of `right` among `trials` right answers: the difference is shown, it is not there as far as was asked, or go on.
enum class Sequential { difference, none, goOn };

/// Source: Wald 1945 (sequential probability ratio test) with p0 the chance of guessing and p1 that of the plan's share of people who can tell.
/// `trials` is 0 or more, 0 <= right <= trials; Problem(outOfRange) otherwise. Not for a preference, nor for methods without a guessing chance.
Sequential sequentialAfter(Method method, const Stopping& stopping, int alphaPm, int trials, int right);

}  // namespace oddglass::planning
