#pragma once

#include "stats/profile/profile_cells.h"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Where the panel puts a sample on the first two axes, and how surely. `center` is empty (emptyCell) where no taster scored the sample in all descriptors.
/// No ellipse: fewTasters (fewer than 5; `points` are shown instead), noSpread (there is no second axis, or the tasters' points lie on a line).
struct SampleEllipse {
  int sample = 0;
  std::vector<Eigen::Vector2d> points;             ///< one for each taster who scored the sample in all descriptors
  std::optional<Eigen::Vector2d> center;           ///< their mean; for a table without holes the sample's place
  std::optional<Eigen::Vector2d> semiAxes;         ///< the longer first
  std::optional<double> angle;                     ///< of the longer one, in degrees anticlockwise from the first axis, above -90 to 90
  std::optional<Reason> why;
};

/// Principal components of the panel's means, samples in rows and descriptors in columns. Empty with `why`: noSpread (no descriptor parts the samples),
/// or the reason of the first descriptor where none has a mean for every sample.
struct ProfileComponents {
  std::vector<double> variances;  ///< of each axis, n - 1 as divisor, falling; axes that are nothing but rounding are left out
  std::vector<double> shares;     ///< of the whole, 0 to 1
  Eigen::MatrixXd samples;        ///< scores: one row a sample, one column an axis
  Eigen::MatrixXd descriptors;    ///< loadings, columns of length 1; zeros for one that is left out
  std::vector<std::optional<Reason>> leftOut;  ///< for each descriptor: why it takes no part (no mean for some sample; scaled, and without spread)
  std::vector<SampleEllipse> ellipses;         ///< one for each sample
  std::optional<Reason> why;
};

/// By the singular values of the centred means: their covariance, or with `isScaled` their correlation (each descriptor divided by the standard deviation of its means).
/// The sign of each axis makes its loading of largest size positive. The ellipse is where the sample's place lies at this level by Hotelling's T^2: each taster's own table,
/// less that taster's own level, is put on the axes, which are taken as given; tasters are the unit. level in (0, 1), BadInput otherwise.
/// Source: Pearson 1901, Phil Mag 2:559; Hotelling 1931, Ann Math Stat 2:360.
ProfileComponents componentsOf(const ProfileCells& cells, bool isScaled = false, double level = 0.95);

/// The ellipse of the mean of these points: (x - mean)' S^-1 (x - mean) <= 2 (n - 1) / (n (n - 2)) F(2, n - 2). `scale` is the size of the numbers the points came from:
/// a spread below 1e-12 of it is none.
SampleEllipse ellipseOf(int sample, std::vector<Eigen::Vector2d> points, double level, double scale = 0.0);

}  // namespace oddglass::stats
