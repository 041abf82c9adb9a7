#pragma once

#include "stats/choice.h"

#include <optional>

namespace oddglass::stats {

/// Share of the people who tell for sure that prefers the first of two drinks, from one forced choice and one preference a person: `first` and
/// `second` were right and prefer the one or the other, `wrong` were wrong. Right answers by luck are taken to prefer either drink half the time:
/// P(right, first) = pd theta + (1 - pd) guess / 2, P(wrong) = (1 - pd) (1 - guess).
/// The estimate is 1/2 + (first / (first + second) - 1/2) pc / pd cut to [0, 1]; the interval is by likelihood, pd profiled out, against chi-square(1).
/// Empty where the estimated pd is 0. Counts >= 0, guess in (0, 1), level in (0, 1). Source: maximum likelihood of the three cells, by Abbott's formula.
std::optional<Estimate> preferenceOfTellers(int first, int second, int wrong, double guess, double level);

}  // namespace oddglass::stats
