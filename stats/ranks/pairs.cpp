#include "stats/ranks/pairs.h"

#include "stats/error.h"
#include "stats/multiple/adjust.h"
#include "stats/multiple/studentized_range.h"

#include <boost/math/distributions/students_t.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace oddglass::stats {
namespace {

/// Conover's standard error of a difference of rank sums, and its df; nothing when the ranks leave no residual.
struct Residual {
  double error;
  int df;
};

std::optional<Residual> residualOf(const RankBlocks& ranks, const BlockSizes& sizes, const std::vector<int>& doubled) {
  const double k = sizes.size, b = sizes.tasters, t = ranks.samples, r = sizes.repeats;
  const int df = static_cast<int>(b * k - b - t + 1);
  double within = 0.0, between = 0.0;
  for (const RankBlock& block : ranks.blocks)
    for (int rank : block.doubled) within += (rank / 2.0 - (k + 1) / 2) * (rank / 2.0 - (k + 1) / 2);
  for (int sum : doubled) between += (sum / 2.0 - r * (k + 1) / 2) * (sum / 2.0 - r * (k + 1) / 2);
  // (A - C) (1 - T / (b (k - 1))) with T = (t - 1) between / within.
  const double left = within - (t - 1) * between / (b * (k - 1));
  if (df < 1 || left <= 1e-9 * within) return std::nullopt;
  return Residual{std::sqrt(2.0 * r * left / df), df};
}

void conover(RankPairs& result, const Residual& residual) {
  const boost::math::students_t t(residual.df);
  std::vector<double> p;
  for (const RankPair& pair : result.pairs) p.push_back(std::min(1.0, 2.0 * boost::math::cdf(boost::math::complement(t, std::abs(pair.difference) / residual.error))));
  const std::vector<double> adjusted = adjustHolm(p);
  for (std::size_t i = 0; i < adjusted.size(); ++i) result.pairs[i].pConoverHolm = adjusted[i];
}

}  // namespace

RankPairs rankPairs(const RankBlocks& ranks) {
  if (ranks.samples > 300) throw BadInput("samples", "must not be above 300");
  RankPairs result;
  const BlockSizes sizes = blockSizes(ranks);
  const std::vector<int> doubled = doubledRankSums(ranks);
  for (int a = 0; a < ranks.samples; ++a)
    for (int b = a + 1; b < ranks.samples; ++b) result.pairs.push_back({a, b, (doubled[static_cast<std::size_t>(a)] - doubled[static_cast<std::size_t>(b)]) / 2.0, {}, {}});
  std::optional<Reason> why;
  if (isAllTied(ranks)) why = Reason::allTied;
  else if (sizes.tasters < 2) why = Reason::oneTaster;
  else if (!sizes.isBalanced) why = Reason::emptyCell;
  result.whyNemenyi = result.whyConover = why;
  if (why) return result;
  const double k = sizes.size, scale = std::sqrt((k + 1) * (sizes.repeats * (k - 1) + sizes.together) / 12.0);
  std::map<double, double> known;  // many pairs differ by the same
  for (RankPair& pair : result.pairs) {
    const auto [at, isNew] = known.try_emplace(std::abs(pair.difference), 1.0);
    if (isNew) at->second = studentizedRangeAbove(at->first / scale, ranks.samples, std::numeric_limits<double>::infinity());
    pair.pNemenyi = at->second;
  }
  if (const auto residual = residualOf(ranks, sizes, doubled)) conover(result, *residual);
  else result.whyConover = Reason::noSpread;
  return result;
}

}  // namespace oddglass::stats
