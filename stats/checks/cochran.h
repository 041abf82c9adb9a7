#pragma once

#include "stats/ranks/arranged.h"
#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Who checked what: one row a taster, one column a sample, 1 checked and 0 not.
using CheckTable = std::vector<std::vector<int>>;

/// Whether a descriptor was checked for some samples more often than for others.
struct CochranQ {
  int df = 0;                       ///< samples - 1
  std::optional<double> statistic;
  std::optional<double> pValue;     ///< upper tail of chi-square
  ArrangedP arranged;               ///< by dealing each taster's checks to the samples; both empty where that is too large
  std::optional<Reason> why;        ///< emptyCell without tasters, oneTaster, allTied where everybody checked all or none
};

/// Rows of one length, from 2 samples on, cells 0 or 1; else BadInput. With `mayDraw` false a p that cannot be counted is not drawn either.
/// Sources: Cochran 1950, Biometrika 37:256: (k - 1) (k sum C^2 - T^2) / (k T - sum R^2), C the checks of a sample, R those of a taster, T all;
/// exact p by convolution over the tasters (`ranks/arranged.h`), those who checked all or none left out, for they change nothing.
CochranQ cochranQ(const CheckTable& table, bool mayDraw = true);

/// How many of these tasters checked some samples and not others.
int tellers(const CheckTable& table);

/// Exact two-sided p for one sample against another: tasters who checked only the one against those who checked only the other. 1 where nobody did
/// either. Counts from 0; BadInput otherwise. Source: McNemar 1947, Psychometrika 12:153, by the exact binomial at one half.
double mcNemar(int onlyOne, int onlyOther);

}  // namespace oddglass::stats
