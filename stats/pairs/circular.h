#pragma once

#include "stats/pairs/choices.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// How consistent one taster's paired choices are: three samples go round in a circle when each is taken over the next.
struct CircularTriads {
  long long triads = 0;        ///< circles among the pairs that were decided; several choices of a pair count by their majority
  std::optional<double> zeta;  ///< 1 no circle, 0 as many as there can be; empty under three samples, or where a pair is undecided
};

/// Choices of one taster among `samples` samples, 2 to 300; BadInput otherwise. Source: Kendall and Babington Smith 1940, Biometrika 31:324:
/// d = C(n, 3) - sum C(a, 2), zeta = 1 - d / dmax, dmax = (n^3 - n) / 24 for odd n and (n^3 - 4 n) / 24 for even n.
CircularTriads circularTriads(const std::vector<PairedChoice>& choices, int samples);

}  // namespace oddglass::stats
