#pragma once

#include <vector>

namespace oddglass::stats {

/// p values adjusted for their number, in the order they came in; each at most 1. `p` holds values from 0 to 1 (BadInput otherwise);
/// none gives none.

/// Keeps the chance of even one false alarm at alpha. Source: Holm 1979 (step-down).
std::vector<double> adjustHolm(const std::vector<double>& p);

/// The risks that Holm's steps hold their p values against, the smallest p first: alpha / k, alpha / (k - 1), ..., alpha for k tests of 1 or more.
/// A p is at or below the risk of its step where `adjustHolm` puts it, and all smaller ones, at or below alpha. alpha in (0, 1). Source: Holm 1979.
std::vector<double> holmRisks(double alpha, int tests);

/// Keeps the share of false alarms among the alarms at alpha. Source: Benjamini and Hochberg 1995 (step-up).
std::vector<double> adjustBenjaminiHochberg(const std::vector<double>& p);

}  // namespace oddglass::stats
