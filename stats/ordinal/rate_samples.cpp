#include "stats/ordinal/ordinal.h"

#include "stats/error.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>

#include <cmath>

namespace oddglass::stats {
namespace {

FixedEffects covariates(const ScoreRows& rows) {
  FixedEffects fixed(rows.response.size());
  if (rows.session) fixed.addFactor("session", *rows.session);
  if (rows.position) fixed.addFactor("position", *rows.position);
  return fixed;
}

}  // namespace

RatedSamples rateSamples(const ScoreRows& rows, int points) {
  requireSound(rows);
  std::vector<int> category;
  for (double value : rows.response) {
    if (value != std::floor(value) || std::abs(value) > 1e6) throw BadInput("response", "must be whole numbers");
    category.push_back(static_cast<int>(value));
  }
  FixedEffects fixed = covariates(rows);
  const Columns samples = fixed.addFactor("sample", rows.sample);
  RatedSamples rated;
  const Ordinal full = fitOrdinal(fixed, rows.taster, category, Link::logit, points);
  rated.why = full.why;
  if (!full.fit) return rated;
  rated.fit = full.fit;
  const Eigen::Index first = full.fit->thresholds.size();
  for (int k = samples.first; k < samples.first + samples.count; ++k) {
    const double estimate = full.fit->fixed[k], se = std::sqrt(full.fit->covariance(first + k, first + k));
    rated.samples.push_back({estimate, se, 2.0 * boost::math::cdf(boost::math::complement(boost::math::normal(), std::abs(estimate) / se))});
  }
  const Ordinal alike = fitOrdinal(covariates(rows), rows.taster, category, Link::logit, points);
  rated.why = alike.why;
  if (!alike.fit) return rated;
  rated.ratio = std::max(0.0, 2.0 * (full.fit->logLikelihood - alike.fit->logLikelihood));
  rated.ratioDf = samples.count;
  rated.pValue = boost::math::cdf(boost::math::complement(boost::math::chi_squared(rated.ratioDf), *rated.ratio));
  return rated;
}

}  // namespace oddglass::stats
