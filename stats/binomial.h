#pragma once

#include <optional>

namespace oddglass::stats {

/// Two ends of an interval, low <= high.
struct Interval {
  double low;
  double high;
};

/// p <= alpha, both ends included. A relative allowance of 1e-12 keeps exact ties (5 of 5 in a pair is 1/32) on the
/// right side of rounding.
bool atMost(double p, double alpha);

/// P(X = x) for X ~ Binomial(trials, p); 0 outside 0..trials. p in [0, 1].
double binomialMass(int x, int trials, double p);

/// P(X >= x), exact. 1 for x <= 0 and 0 for x > trials; p in [0, 1].
/// Source: the incomplete beta identity I_p(x, n - x + 1) (Abramowitz and Stegun 26.5.24).
double upperTail(int x, int trials, double p);

/// P(X <= x), exact. 0 for x < 0 and 1 for x >= trials; p in [0, 1]. Source: as upperTail, by the complement.
double lowerTail(int x, int trials, double p);

/// Two-sided p of x successes against one half: twice the smaller tail, at most 1. Source: exact sign test.
double twoSidedHalf(int x, int trials);

/// The smallest count x with P(X >= x | trials, guess) <= alpha; empty when even all right cannot reach alpha.
/// guess and alpha in (0, 1). Source: ISO 4120:2021, ISO 10399:2017 (exact binomial tables).
std::optional<int> criticalNumber(int trials, double guess, double alpha);

/// The smallest count of the larger side with 2 P(X >= x | trials, 1/2) <= alpha; empty when none reaches it.
/// Source: ISO 5495:2005, two-sided.
std::optional<int> criticalLargerSide(int trials, double alpha);

/// Clopper-Pearson interval for a share; covers at least `level`. trials >= 1. Source: Clopper and Pearson 1934, Biometrika 26:404.
Interval clopperPearson(int successes, int trials, double level);

/// Wilson's score interval. trials >= 1. Source: Wilson 1927, JASA 22:209.
Interval wilson(int successes, int trials, double level);

/// Jeffreys interval: equal tails of Beta(x + 1/2, n - x + 1/2); 0 at no success and 1 at all successes.
/// trials >= 1. Source: Brown, Cai and DasGupta 2001, Statistical Science 16:101.
Interval jeffreys(int successes, int trials, double level);

}  // namespace oddglass::stats
