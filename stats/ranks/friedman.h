#pragma once

#include "stats/ranks/arranged.h"
#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// A ratio with its degrees of freedom and upper-tail p.
struct RankF {
  double F;
  int df1;
  int df2;
  double pValue;
};

/// Whether samples that every taster ranked differ anywhere.
struct Friedman {
  std::vector<double> rankSums;
  int tasters = 0;
  int df = 0;                              ///< samples - 1
  std::optional<double> statistic;         ///< corrected for ties
  std::optional<double> pValue;            ///< upper tail of chi-square
  ArrangedP arranged;                      ///< by dealing each taster's own ranks
  std::optional<double> kendallW;          ///< 0 nobody agrees, 1 all rank alike
  std::optional<RankF> imanDavenport;      ///< a better approximation than chi-square; empty when all rank alike
  std::optional<Reason> why;               ///< oneTaster, allTied, emptyCell: why there is no statistic
};

/// Every taster ranked every sample; else `why` is emptyCell. Source: Friedman 1937, JASA 32:675, with the correction for ties of Conover 1999,
/// 5.8: (k - 1) sum (R - n (k + 1) / 2)^2 / (sum of squared ranks - n k (k + 1)^2 / 4); W = statistic / (n (k - 1)); Iman and Davenport 1980.
Friedman friedman(const RankBlocks& ranks);

/// The statistic of untied rank sums, R of each of k samples from n tasters: 12 / (n k (k + 1)) sum R^2 - 3 n (k + 1). Source: Friedman 1937; ISO 8587.
/// At least two sums and one taster, and the sums add up to n k (k + 1) / 2; else BadInput.
double friedmanOfSums(const std::vector<double>& rankSums, int tasters);

/// The difference of two rank sums named beforehand that is exceeded with risk alpha: z sqrt(n k (k + 1) / 6). Source: ISO 8587:2006.
double leastSignificantDifference(int samples, int tasters, double alpha);

}  // namespace oddglass::stats
