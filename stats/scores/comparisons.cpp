#include "stats/scores/comparisons.h"

#include "stats/estimated.h"
#include "stats/multiple/studentized_range.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace oddglass::stats {
namespace {

void spread(SampleDifference& difference, const std::optional<double>& critical) {
  if (!critical || !std::isfinite(*critical * *difference.se)) return;
  difference.low = *difference.difference - *critical * *difference.se;
  difference.high = *difference.difference + *critical * *difference.se;
}

}  // namespace

void addInterval(SampleMean& mean, double level) {
  const double half = studentPoint((1.0 - level) / 2.0, *mean.df) * *mean.se;
  if (!std::isfinite(half)) return;
  mean.low = *mean.mean - half;
  mean.high = *mean.mean + half;
}

double tukeyP(double t, int samples, double df) { return studentizedRangeAbove(t * std::numbers::sqrt2, samples, df); }

void addTukey(SampleDifference& difference, int samples, double level) {
  difference.pValue = tukeyP(std::abs(*difference.difference) / *difference.se, samples, *difference.df);
  auto critical = studentizedRangeCritical(1.0 - level, samples, *difference.df);
  if (critical) *critical /= std::numbers::sqrt2;
  spread(difference, critical);
}

void addDunnett(SampleDifference& difference, const std::vector<double>& loads, double level) {
  const DunnettPlan plan{loads, *difference.df, true};
  difference.pValue = dunnettAbove(std::abs(*difference.difference) / *difference.se, plan);
  spread(difference, dunnettCritical(1.0 - level, plan));
}

std::vector<double> loadsNear(const Eigen::MatrixXd& correlations) {
  const Eigen::Index k = correlations.rows();
  if (k == 2) return std::vector<double>(2, std::sqrt(std::clamp(correlations(0, 1), 0.0, 0.9999)));
  Eigen::VectorXd loads = Eigen::VectorXd::Constant(k, std::numbers::sqrt2 / 2.0);
  for (int round = 0; k > 1 && round < 2000; ++round) {
    const Eigen::VectorXd before = loads;
    for (Eigen::Index i = 0; i < k; ++i) {
      const double weight = loads.squaredNorm() - loads(i) * loads(i), pull = correlations.row(i).dot(loads) - correlations(i, i) * loads(i);
      loads(i) = weight > 0.0 ? std::clamp(pull / weight, 0.0, 0.9999) : 0.0;
    }
    if ((loads - before).cwiseAbs().maxCoeff() < 1e-13) break;
  }
  return {loads.data(), loads.data() + k};
}

}  // namespace oddglass::stats
