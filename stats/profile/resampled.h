#pragma once

#include "stats/profile/profile_cells.h"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace oddglass::stats {

/// The panel's mean profile in panels drawn from this one: tasters with replacement, each with all they said. One row a draw; columns by descriptor and within it by sample.
/// Draws 1 to 1,000,000 (BadInput otherwise), of the fixed stream: the same on every machine. Empty with `why`: oneTaster; emptyCell where a taster missed a
/// sample in some descriptor; tooLarge above 2e8 numbers. Source: Efron 1979, Ann Stat 7:1.
struct ResampledMeans {
  std::optional<Eigen::MatrixXd> means;
  std::optional<Reason> why;
};
ResampledMeans resampledMeans(const ProfileCells& cells, int draws);

/// A sample's mean in a descriptor, with its percentile interval over resampled panels.
struct ResampledMean {
  int descriptor = 0, sample = 0;
  double mean = 0.0;
  double low = 0.0, high = 0.0;
};

/// Percentile intervals of all means. level in (0, 1). From 20 tasters: below that such an interval covers far less than it says (90 % at 12, 73 % at 3, the project's own
/// simulation), and there is none (fewTasters). Source: Efron and Tibshirani 1993, chapter 13.
struct ResampledProfile {
  std::vector<ResampledMean> means;  ///< by descriptor and within it by sample
  std::optional<Reason> why;
};
ResampledProfile resampledProfile(const ProfileCells& cells, int draws, double level = 0.95);

}  // namespace oddglass::stats
