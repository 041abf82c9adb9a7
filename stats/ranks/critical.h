#pragma once

#include <optional>

namespace oddglass::stats {

/// The smallest value of a statistic of untied ranks that is reached with a risk of at most alpha.
struct RankCritical {
  std::optional<double> critical;  ///< empty when even the largest value has a greater risk
  double alphaActual = 0.0;        ///< its risk; without a critical value the risk of the largest
  bool isExact = true;             ///< else by chi-square (Friedman) or the normal (Page)
};

/// Friedman's statistic of untied ranks. samples 2 to 1000, tasters 1 to 1e7, alpha in (0, 1); BadInput otherwise. Exact while counting takes no
/// more than 3e7 steps, else the quantile of chi-square with samples - 1 df. Source: Friedman 1937 and exact tables by convolution.
RankCritical friedmanCritical(int samples, int tasters, double alpha);

/// Page's L. The same bounds. Exact up to 12 samples while counting takes no more than 5e8 steps, else the smallest whole L whose normal tail is at
/// most alpha. Source: Page 1963; Odeh 1977, Commun. Stat. B 6:49.
RankCritical pageCritical(int samples, int tasters, double alpha);

}  // namespace oddglass::stats
