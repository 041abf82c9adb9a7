#include "stats/ranks/critical.h"

#include "stats/binomial.h"
#include "stats/check.h"
#include "stats/ranks/arranged.h"
#include "stats/ranks/page.h"
#include "stats/ranks/weighted.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>

#include <cmath>
#include <map>
#include <numeric>

namespace oddglass::stats {
namespace {

constexpr double mostTableSteps = 3e7;

void requireSizes(int samples, int tasters, double alpha) {
  if (samples < 2 || samples > 1000) throw BadInput("samples", "must be from 2 to 1000");
  if (tasters < 1 || tasters > mostTrials) throw BadInput("tasters", "must be from 1 to 10 million");
  requireOpenShare("alpha", alpha);
}

/// Beyond this nothing is counted, and no blocks are made.
bool isSmall(int samples, int tasters) { return samples <= 12 && tasters <= 2000; }

}  // namespace

RankCritical friedmanCritical(int samples, int tasters, double alpha) {
  requireSizes(samples, tasters, alpha);
  const double k = samples, n = tasters;
  // Chances by four times the sum of squared distances of the sums, a whole number.
  std::map<long long, double> chances;
  const auto add = [&](const std::vector<int>& doubled, double chance) {
    long long spread = 0;
    for (int sum : doubled) {
      const long long away = sum - static_cast<long long>(tasters) * (samples + 1);
      spread += away * away;
    }
    chances[spread] += chance;
  };
  if (!isSmall(samples, tasters) || !eachRankSums(untiedBlocks(samples, tasters), mostTableSteps, add))
    return {boost::math::quantile(boost::math::complement(boost::math::chi_squared(k - 1), alpha)), alpha, false};
  RankCritical found{std::nullopt, chances.rbegin()->second, true};
  double tail = 0.0;
  for (auto each = chances.rbegin(); each != chances.rend(); ++each) {
    tail += each->second;
    if (!atMost(tail, alpha)) break;
    found = {3.0 * static_cast<double>(each->first) / (n * k * (k + 1)), tail, true};
  }
  return found;
}

RankCritical pageCritical(int samples, int tasters, double alpha) {
  requireSizes(samples, tasters, alpha);
  std::vector<int> places(static_cast<std::size_t>(samples));
  std::iota(places.begin(), places.end(), 1);
  const auto sums = isSmall(samples, tasters) ? weightedSums(untiedBlocks(samples, tasters), places) : std::nullopt;
  if (!sums) {
    const double k = samples, n = tasters, mean = n * k * (k + 1) * (k + 1) / 4, sd = std::sqrt(n * k * k * (k + 1) * (k + 1) * (k - 1) / 144);
    const double most = n * k * (k + 1) * (2 * k + 1) / 6;
    const double needed = std::ceil(mean + sd * boost::math::quantile(boost::math::complement(boost::math::normal(), alpha)) - 1e-9);
    const double l = std::min(needed, most);
    const double risk = boost::math::cdf(boost::math::complement(boost::math::normal(), (l - mean) / sd));
    return {needed <= most ? std::optional(l) : std::nullopt, risk, false};
  }
  RankCritical found{std::nullopt, sums->chance.back(), true};
  double tail = 0.0;
  for (std::size_t i = sums->chance.size(); i-- > 0;) {
    tail += sums->chance[i];
    if (!atMost(tail, alpha)) break;
    // Untied: twice a whole number of ranks.
    if (sums->chance[i] > 0.0) found = {static_cast<double>(sums->lowest + static_cast<long long>(i)) / 2.0, tail, true};
  }
  return found;
}

}  // namespace oddglass::stats
