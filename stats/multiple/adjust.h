#pragma once

#include <vector>

namespace oddglass::stats {

/// p values adjusted for their number, in the order they came in; each at most 1. `p` holds values from 0 to 1 (BadInput otherwise);
/// none gives none.

/// Keeps the chance of even one false alarm at alpha. Source: Holm 1979 (step-down).
std::vector<double> adjustHolm(const std::vector<double>& p);

/// Keeps the share of false alarms among the alarms at alpha. Source: Benjamini and Hochberg 1995 (step-up).
std::vector<double> adjustBenjaminiHochberg(const std::vector<double>& p);

}  // namespace oddglass::stats
