#pragma once

#include "stats/choice.h"
#include "stats/reason.h"

#include <Eigen/Core>

#include <optional>

namespace oddglass::stats {

/// Mean squares of a complete two-way table, samples in rows and tasters in columns, one value a cell.
struct TwoWay {
  int samples = 0, tasters = 0;
  double sample = 0.0, taster = 0.0, residual = 0.0;  ///< mean squares, df samples - 1, tasters - 1 and their product; what is only rounding is exactly 0
};

/// `table` has two rows and two columns or more, all finite; BadInput otherwise.
TwoWay twoWay(const Eigen::MatrixXd& table);

/// How far a panel's scores can be relied on. Estimates may be negative: they are not clipped.
struct Reliability {
  Estimate single;                 ///< ICC(2,1): agreement of one taster, tasters drawn at random
  Estimate ofPanel;                ///< ICC(2,k): agreement of the mean of these k tasters
  std::optional<double> alpha;     ///< Cronbach's alpha with tasters as items; equals ICC(3,k)
  std::optional<Reason> why;       ///< noSpread where anything is empty
};

/// From mean squares. ICC(2,1) = (MSs - MSe) / (MSs + (k - 1) MSe + k (MSt - MSe) / n), ICC(2,k) = (MSs - MSe) / (MSs + (MSt - MSe) / n), alpha = 1 - MSe / MSs.
/// The interval of ICC(2,1) is by F with Satterthwaite degrees of freedom, that of ICC(2,k) by Spearman and Brown's formula at its ends.
/// Where a denominator is not above 0 there is no estimate, and where the limits have no finite value there is no limit. level in (0, 1).
/// Sources: Shrout and Fleiss 1979, Psychol Bull 86:420; McGraw and Wong 1996, Psychol Methods 1:30; Cronbach 1951, Psychometrika 16:297.
Reliability reliability(const TwoWay& squares, double level);

}  // namespace oddglass::stats
