#pragma once

#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// An estimate that is judged by Student's t. Where the estimate stands alone (no spread, too few to judge by), the rest is empty and `why` says so;
/// where there is no estimate either, everything is empty.
struct Estimated {
  std::optional<double> estimate;
  std::optional<double> se;      ///< standard error, above 0
  std::optional<double> df;      ///< degrees of freedom, above 0
  std::optional<double> low, high;
  std::optional<double> pValue;  ///< two-sided, against 0
  std::optional<Reason> why;     ///< set where anything is empty
};

/// Nothing but the reason.
Estimated nothing(Reason why);
/// The estimate alone.
Estimated alone(double estimate, Reason why);
/// Estimate, error, interval and two-sided p by Student's t. se >= 0 (0 or one that is not finite: `alone` with noSpread), df > 0, level in (0, 1).
/// Source: Student 1908, Biometrika 6:1.
Estimated byStudent(double estimate, double se, double df, double level);
/// The mean of independent values against 0, df = n - 1. One value: `alone` with `tooFew`; values that do not differ: `alone` with noSpread.
Estimated meanOf(const std::vector<double>& values, double level, Reason tooFew = Reason::fewTasters, double scale = 0.0);

/// Mean and standard deviation with n - 1. Empty for fewer than two. The deviation is exactly 0 where the values differ by no more than rounding:
/// 1e-12 of the largest of them, or of `scale`, the size of the numbers they came from where that is larger.
struct MeanAndSpread {
  double mean;
  std::optional<double> sd;
};
/// `values` holds one or more.
MeanAndSpread meanAndSpread(const std::vector<double>& values, double scale = 0.0);

/// P(T > t) of Student's t with df degrees of freedom; df > 0.
double studentTail(double t, double df);
/// The t with P(T > t) = tail; tail in (0, 1), df > 0. Not finite only where df is so small that it lies beyond all numbers.
double studentPoint(double tail, double df);
/// P(F > f) of Fisher's F; f >= 0, df1 and df2 > 0.
double fisherTail(double f, double df1, double df2);
/// The f with P(F > f) = tail.
double fisherPoint(double tail, double df1, double df2);

}  // namespace oddglass::stats
