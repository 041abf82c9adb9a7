#include "stats/votes/preference_plan.h"

#include "stats/binomial.h"
#include "stats/check.h"

#include <algorithm>

namespace oddglass::stats {
namespace {

/// Chances of an end, with the critical number of these votes.
struct Ends {
  double both;
  double larger;
};

Ends endsOf(int votes, int critical, double share) {
  const double first = upperTail(critical, votes, share), second = upperTail(critical, votes, 1.0 - share);
  // A critical number of the larger side is above half, so that both cannot happen at once.
  return {std::min(1.0, first + second), share >= 0.5 ? first : second};
}

}  // namespace

PreferencePower preferencePower(int people, double share, double alpha, double none) {
  requireTrials("people", people);
  requireShare("share", share);
  requireOpenShare("alpha", alpha);
  if (!(none >= 0.0 && none < 1.0)) throw BadInput("none", "must be from 0 to just below 1");
  PreferencePower found{criticalLargerSide(people, alpha), 0.0, 0.0, 0.0};
  const auto add = [&](int votes, double weight) {
    const auto critical = criticalLargerSide(votes, alpha);
    if (!critical) return;
    const Ends truly = endsOf(votes, *critical, share);
    found.alphaActual += weight * endsOf(votes, *critical, 0.5).both;
    found.power += weight * truly.both;
    found.powerThisWay += weight * truly.larger;
  };
  if (none == 0.0) {
    add(people, 1.0);
    return found;
  }
  if (people > 100'000) throw BadInput("people", "must not be above 100,000 where some have no preference");
  for (int votes = 0; votes <= people; ++votes) {
    const double weight = binomialMass(votes, people, 1.0 - none);
    if (weight > 0.0) add(votes, weight);
  }
  return found;
}

Sizes preferenceSizes(double share, double power, double alpha) {
  requireShare("share", share);
  requireOpenShare("power", power);
  requireOpenShare("alpha", alpha);
  if (share == 0.5) throw BadInput("share", "must not be one half");
  constexpr int last = 100'000;
  Sizes sizes;
  int critical = 1;  // never falls as people are added, so the search goes on from the last one
  for (int n = 1; n <= last; ++n) {
    while (critical <= n && !atMost(upperTail(critical, n, 0.5), alpha / 2.0)) ++critical;
    const double here = critical <= n ? endsOf(n, critical, share).both : 0.0;
    if (here < power) {
      sizes.stable.reset();
      continue;
    }
    if (!sizes.first) sizes.first = Size{n, critical, here};
    if (!sizes.stable) sizes.stable = Size{n, critical, here};
    if (n >= sizes.stable->trials + std::max(100, sizes.stable->trials / 2)) return sizes;
  }
  sizes.stable.reset();
  sizes.why = Reason::beyondSearch;
  return sizes;
}

}  // namespace oddglass::stats
