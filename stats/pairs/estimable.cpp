#include "stats/pairs/estimable.h"

#include <algorithm>
#include <set>

namespace oddglass::stats {
namespace {

/// How many samples are reached from the first along wins, or against them.
int reached(const std::vector<PairCount>& counts, int samples, bool alongWins) {
  std::vector<std::vector<int>> next(static_cast<std::size_t>(samples));
  for (const PairCount& each : counts) {
    const auto wins = [&](int winner, int loser) { next[static_cast<std::size_t>(alongWins ? winner : loser)].push_back(alongWins ? loser : winner); };
    if (each.leftWins + each.ties > 0.0) wins(each.left, each.right);
    if (each.rightWins + each.ties > 0.0) wins(each.right, each.left);
  }
  std::vector<bool> seen(static_cast<std::size_t>(samples), false);
  std::vector<int> open{0};
  seen[0] = true;
  int count = 0;
  while (!open.empty()) {
    const int at = open.back();
    open.pop_back();
    ++count;
    for (int to : next[static_cast<std::size_t>(at)])
      if (!seen[static_cast<std::size_t>(to)]) {
        seen[static_cast<std::size_t>(to)] = true;
        open.push_back(to);
      }
  }
  return count;
}

/// A difference constraint: worth of `high` - worth of `low` <= bound.
struct Constraint {
  int high, low;
  double bound;
};

/// True when worths exist that meet all constraints: no cycle of them has a negative sum.
bool isFeasible(const std::vector<Constraint>& constraints, int samples) {
  std::vector<double> worth(static_cast<std::size_t>(samples), 0.0);
  for (int round = 0; round <= samples; ++round) {
    bool hasMoved = false;
    for (const Constraint& each : constraints) {
      double& high = worth[static_cast<std::size_t>(each.high)];
      const double most = worth[static_cast<std::size_t>(each.low)] + each.bound;
      if (most < high) {
        high = most;
        hasMoved = true;
      }
    }
    if (!hasMoved) return true;
  }
  return false;
}

/// Whether an advantage of the left place (1) or the right one (-1), however large, could explain every choice.
bool isExplainedBy(double advantage, const std::vector<PairCount>& counts, int samples) {
  std::vector<Constraint> constraints;
  for (const PairCount& each : counts) {
    if (each.leftWins + each.ties > 0.0) constraints.push_back({each.right, each.left, advantage});
    if (each.rightWins + each.ties > 0.0) constraints.push_back({each.left, each.right, -advantage});
  }
  return isFeasible(constraints, samples);
}

}  // namespace

bool isBeatenAllRound(const std::vector<PairCount>& counts, int samples) { return reached(counts, samples, true) == samples && reached(counts, samples, false) == samples; }

bool isOrderEstimable(const std::vector<PairCount>& counts, int samples) {
  std::set<std::pair<int, int>> ways;
  for (const PairCount& each : counts) ways.insert({each.left, each.right});
  if (std::ranges::none_of(ways, [&](const auto& way) { return ways.contains({way.second, way.first}); })) return false;
  return !isExplainedBy(1.0, counts, samples) && !isExplainedBy(-1.0, counts, samples);
}

}  // namespace oddglass::stats
