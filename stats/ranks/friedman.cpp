#include "stats/ranks/friedman.h"

#include "stats/check.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>

#include <cmath>
#include <numeric>

namespace oddglass::stats {
namespace {

/// Four times the sum of squared distances from the mean rank sum.
double spreadOfSums(const std::vector<int>& doubled) {
  const double mean = std::accumulate(doubled.begin(), doubled.end(), 0.0) / static_cast<double>(doubled.size());
  double sum = 0.0;
  for (int value : doubled) sum += (value - mean) * (value - mean);
  return sum;
}

}  // namespace

Friedman friedman(const RankBlocks& ranks) {
  Friedman result;
  const std::vector<int> sums = doubledRankSums(ranks);
  for (int sum : sums) result.rankSums.push_back(sum / 2.0);
  const int k = ranks.samples, n = static_cast<int>(ranks.blocks.size());
  result.tasters = n;
  result.df = k - 1;
  if (!isComplete(ranks)) result.why = Reason::emptyCell;
  else if (isAllTied(ranks)) result.why = Reason::allTied;
  else if (n < 2) result.why = Reason::oneTaster;
  if (result.why) return result;
  double squares = 0.0;
  for (const RankBlock& block : ranks.blocks) squares += spreadOfSums(block.doubled);
  const double Q = (k - 1) * spreadOfSums(sums) / squares;
  result.statistic = Q;
  result.pValue = boost::math::cdf(boost::math::complement(boost::math::chi_squared(k - 1), Q));
  result.kendallW = Q / (n * (k - 1.0));
  const double left = n * (k - 1.0) - Q;
  if (left > 1e-9 * n) {
    RankF f{(n - 1) * Q / left, k - 1, (n - 1) * (k - 1), 0.0};
    f.pValue = boost::math::cdf(boost::math::complement(boost::math::fisher_f(f.df1, f.df2), f.F));
    result.imanDavenport = f;
  }
  result.arranged = arrangedP(ranks, spreadOfSums);
  return result;
}

double friedmanOfSums(const std::vector<double>& rankSums, int tasters) {
  const double k = static_cast<double>(rankSums.size()), n = tasters;
  if (rankSums.size() < 2) throw BadInput("rankSums", "a comparison needs two samples or more");
  if (tasters < 1) throw BadInput("tasters", "must be 1 or more");
  double total = 0.0, squares = 0.0;
  for (double sum : rankSums) {
    if (!std::isfinite(sum)) throw BadInput("rankSums", "must be finite numbers");
    total += sum;
    squares += (sum - n * (k + 1) / 2) * (sum - n * (k + 1) / 2);
  }
  if (std::abs(total - n * k * (k + 1) / 2) > 1e-6 * total) throw BadInput("rankSums", "must add up to n k (k + 1) / 2");
  return 12.0 * squares / (n * k * (k + 1));
}

double leastSignificantDifference(int samples, int tasters, double alpha) {
  if (samples < 2) throw BadInput("samples", "a comparison needs two samples or more");
  if (tasters < 1) throw BadInput("tasters", "must be 1 or more");
  requireOpenShare("alpha", alpha);
  const double z = boost::math::quantile(boost::math::complement(boost::math::normal(), alpha / 2));
  return z * std::sqrt(tasters * static_cast<double>(samples) * (samples + 1.0) / 6.0);
}

}  // namespace oddglass::stats
