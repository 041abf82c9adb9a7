#include "stats/ranks/page.h"

#include "stats/error.h"
#include "stats/ranks/weighted.h"

#include <boost/math/distributions/normal.hpp>

#include <cmath>

namespace oddglass::stats {
namespace {

/// For each sample its place in the order, from 1.
std::vector<int> placesIn(const std::vector<int>& order, int samples) {
  std::vector<int> places(static_cast<std::size_t>(samples), 0);
  for (std::size_t i = 0; i < order.size(); ++i) {
    if (order[i] < 0 || order[i] >= samples || places[static_cast<std::size_t>(order[i])] != 0) throw BadInput("expected", "must name every sample once");
    places[static_cast<std::size_t>(order[i])] = static_cast<int>(i) + 1;
  }
  if (order.size() != places.size()) throw BadInput("expected", "must name every sample once");
  return places;
}

}  // namespace

double pageZ(double l, int samples, int tasters) {
  const double k = samples, n = tasters;
  return (l - n * k * (k + 1) * (k + 1) / 4) / std::sqrt(n * k * k * (k + 1) * (k + 1) * (k - 1) / 144);
}

Page page(const RankBlocks& ranks, const std::vector<int>& order) {
  const std::vector<int> places = placesIn(order, ranks.samples);
  const auto doubledL = [&](const std::vector<int>& sums) {
    double l = 0.0;
    for (std::size_t i = 0; i < sums.size(); ++i) l += static_cast<double>(places[i]) * sums[i];
    return l;
  };
  const double seen = doubledL(doubledRankSums(ranks));
  Page result;
  result.l = seen / 2.0;
  if (!isComplete(ranks)) result.why = Reason::emptyCell;
  else if (isAllTied(ranks)) result.why = Reason::allTied;
  else if (ranks.blocks.size() < 2) result.why = Reason::oneTaster;
  if (result.why) return result;
  result.z = pageZ(result.l, ranks.samples, static_cast<int>(ranks.blocks.size()));
  result.pValue = boost::math::cdf(boost::math::complement(boost::math::normal(), *result.z));
  if (ranks.samples <= 1000)
    if (const auto sums = weightedSums(ranks, places)) result.pExact = sums->atLeast(std::llround(seen));
  if (!result.pExact) result.drawn = drawnRankP(ranks, doubledL);
  return result;
}

}  // namespace oddglass::stats
