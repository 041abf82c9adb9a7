#pragma once

#include "stats/long_rows.h"
#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Whether two drinks are alike within a limit, by two one-sided tests paired by taster.
struct Alike {
  int tasters = 0;                    ///< how many had both
  std::optional<double> difference;   ///< mean over tasters
  std::optional<double> low, high;    ///< at level 1 - 2 alpha
  std::optional<double> pValue;       ///< the larger of the two one-sided p values
  bool isAlike = false;               ///< pValue <= alpha
  std::optional<Reason> why;          ///< set where anything is empty
};

/// From one difference a taster. limit > 0, alpha in (0, 0.5); BadInput otherwise, and for a difference that is not finite.
/// Without spread there is no t: each one-sided p is by flipping all signs, 2^-n where the mean lies strictly inside the limit and 1 where it does not.
/// One taster: the difference alone, oneTaster. None: nothing, fewTasters.
/// Source: Schuirmann 1987, J Pharmacokinet Biopharm 15:657; the interval at 1 - 2 alpha agrees with the test.
Alike pairedAlike(const std::vector<double>& differences, double limit, double alpha);

/// Mean of `batch` minus mean of `reference` for each taster who had both, rounds and repeats averaged first; in the order of the tasters' labels.
/// BadInput for labels outside the samples, or the same one twice.
std::vector<double> differencesByTaster(const ScoreRows& rows, int batch, int reference);

}  // namespace oddglass::stats
