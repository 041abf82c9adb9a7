#pragma once

#include "stats/multiple/dunnett.h"
#include "stats/panel/cells.h"
#include "stats/reason.h"

#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace oddglass::stats {

/// What a difference from the reference amounts to, in the order in which it is looked at.
enum class ProfileVerdict {
  within,      ///< within the limit
  less, more,  ///< than the reference
  cannotTell,  ///< cannot tell yet
};

/// A sample minus the reference in one descriptor, from the tasters who scored both. Where a number is empty, `why` says so: emptyCell (no taster
/// scored both), fewTasters (fewer than 3 did), noSpread (their differences are all alike). `pLimit` is empty without a limit as well.
struct ProfileDifference {
  int sample = 0;
  int tasters = 0;                           ///< how many scored both
  std::optional<double> difference;          ///< mean over them of each one's own difference
  std::optional<double> se, df;              ///< the error of `pValue`, `low` and `high`
  std::optional<double> low, high;           ///< at the level asked for; holds for all samples of this descriptor together
  std::optional<double> pValue, pAdjusted;   ///< two-sided, against no difference; adjusted over the descriptors
  std::optional<double> limitLow, limitHigh; ///< at level 1 - 2 alpha, for this pair alone: it lies within the limit just where pLimit <= alpha
  std::optional<double> pLimit, pLimitAdjusted;
  ProfileVerdict verdict = ProfileVerdict::cannotTell;
  std::optional<Reason> why;
};

/// What is asked of the differences: level and alpha in (0, 1), a limit above 0 with alpha below one half. The caller checks.
struct DifferenceQuestion {
  int reference = 0;
  std::optional<double> limit;
  double alpha = 0.05, level = 0.95;
};

/// Dunnett's distribution for each plan (loads, df) that came up at one level, and its critical value: descriptors with the same plan share it.
struct KnownDunnett {
  DunnettTable table;
  std::optional<double> critical;
};
using DunnettTables = std::map<std::pair<std::vector<double>, double>, KnownDunnett>;

/// Every other of so many samples minus the reference, in their order; adjusted p values and verdicts are not set yet. `cells` come by taster (row) and sample
/// (column): rounds and repeats are averaged first.
///
/// Against no difference: the error of one taster's mean score is the residual of taster + sample, fitted to the cells by least squares, on its own degrees of freedom.
/// With one other sample that is the paired t test. With several it is the taster x sample mean square of the balanced table, on (s - 1)(t - 1) df, and the p
/// values and intervals are Dunnett's for all samples that 3 tasters or more compared with the reference; the correlation of two differences
/// is n_both / (2 sqrt(n_1 n_2)), n_both being the tasters who scored all three.
/// Against the limit: two one-sided paired t tests with the spread of this pair alone, n - 1 df, whatever other samples stood beside it.
/// Source: Student 1908; Dunnett 1955, JASA 50:1096; Scheffe 1959 (mixed model); Schuirmann 1987, J Pharmacokinet Biopharm 15:657.
std::vector<ProfileDifference> differencesFromReference(const std::vector<Cell>& cells, int tasters, int samples, const DifferenceQuestion& question, DunnettTables& known);

}  // namespace oddglass::stats
