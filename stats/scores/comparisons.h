#pragma once

#include "stats/multiple/dunnett.h"
#include "stats/scores/sample_scores.h"

#include <Eigen/Core>

namespace oddglass::stats {

/// Adds the interval by Student's t at this level to a mean with se > 0 and df > 0.
void addInterval(SampleMean& mean, double level);
/// p of |difference| / se = t among all pairs of so many samples.
double tukeyP(double t, int samples, double df);
/// Adds p and interval by Tukey-Kramer, for all pairs of so many samples. The difference has its se > 0 and df > 0.
void addTukey(SampleDifference& difference, int samples, double level);
/// Adds two-sided p and interval by Dunnett, for all differences with these loads.
void addDunnett(SampleDifference& difference, const std::vector<double>& loads, double level);

/// The loads in [0, 1) whose products come nearest to these correlations, by least squares: exact for two treatments and for the
/// structure of groups of unequal size. Source: Hsu 1992, J Comput Graph Stat 1:151 (factor analytic approximation); Harman and Jones 1966.
std::vector<double> loadsNear(const Eigen::MatrixXd& correlations);

}  // namespace oddglass::stats
