#pragma once

#include <optional>

namespace oddglass::stats {

/// The studentized range: the largest minus the smallest of `groups` independent normal values, divided by an independent estimate of their
/// standard deviation on `df` degrees of freedom. `groups` from 2 to 1000; `df` at least 0.1, whole or not (from 1e10 on, the normal
/// limit); BadInput otherwise. Source: Tukey 1953, Harter 1960; integrated over the estimate and over the range with positive terms only, so
/// that small probabilities keep nine digits or more.

/// P(Q > value), value 0 or more.
double studentizedRangeAbove(double value, int groups, double df);
/// P(Q <= value), value 0 or more.
double studentizedRangeBelow(double value, int groups, double df);
/// The value that is passed with probability `above`, strictly between 0 and 1; empty where it lies beyond 1e303.
std::optional<double> studentizedRangeCritical(double above, int groups, double df);

}  // namespace oddglass::stats
