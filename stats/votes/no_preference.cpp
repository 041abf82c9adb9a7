#include "stats/votes/no_preference.h"

#include "stats/binomial.h"
#include "stats/check.h"

#include <algorithm>
#include <cstdint>

namespace oddglass::stats {
namespace {

VoteTest testedVotes(int first, int second, double alpha) {
  const double p = twoSidedHalf(std::max(first, second), first + second);
  return {first, second, p, criticalLargerSide(first + second, alpha), atMost(p, alpha)};
}

}  // namespace

NoPreference noPreference(int first, int second, int none, double alpha) {
  requireTrials("first", first);
  requireTrials("second", second);
  requireTrials("none", none);
  requireOpenShare("alpha", alpha);
  const std::int64_t all = std::int64_t{first} + second + none;
  if (all > mostTrials) throw BadInput("none", "must leave all votes together at most 10 million");
  const bool isFirstAhead = first >= second;
  const int ahead = std::max(first, second), behind = std::min(first, second), votes = ahead + behind;
  // Of those without a preference this many go to the side that is ahead; the rest to the other.
  const int evenly = none / 2;
  const int asVoted = votes == 0 ? evenly : static_cast<int>((2 * std::int64_t{none} * ahead + votes - 1) / (2 * std::int64_t{votes}));
  const auto split = [&](int toAhead) {
    const int large = ahead + toAhead, small = behind + none - toAhead;
    return isFirstAhead ? testedVotes(large, small, alpha) : testedVotes(small, large, alpha);
  };
  NoPreference found{all == 0 ? 0.0 : static_cast<double>(none) / static_cast<double>(all), testedVotes(first, second, alpha), split(evenly), split(asVoted), false};
  found.changes = found.splitEvenly.isShown != found.without.isShown || found.splitAsVoted.isShown != found.without.isShown;
  return found;
}

}  // namespace oddglass::stats
