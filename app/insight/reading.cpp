#include "insight/reading.h"

#include "domain/flight_form.h"
#include "insight/choices.h"
#include "stats/multiple/adjust.h"

#include <algorithm>

namespace oddglass::insight {

Reading readTrials(const std::vector<Trial>& trials, const Plan& plan, const OtherPairs& others, Depth depth) {
  if (formOf(plan.method).saysSame) return readSignal(trials, plan, depth);
  if (!formOf(plan.method).hasRight) return readVotes(trials, plan);
  return plan.stopping ? readSequential(trials, plan) : readChoices(trials, plan, others, depth);
}

double holm(double p, std::vector<double> others) {
  others.insert(others.begin(), p);
  return stats::adjustHolm(others).front();
}

Verdict weaker(Verdict a, Verdict b) {
  const auto rank = [](Verdict verdict) {
    switch (verdict) {
      case Verdict::none: return 0;
      case Verdict::notShown: return 1;
      case Verdict::shown:
      case Verdict::alike: return 2;
      case Verdict::both: return 3;
    }
    return 0;
  };
  if (a == b) return a;
  if (rank(a) == rank(b)) return Verdict::notShown;
  return rank(a) < rank(b) ? a : b;
}

bool contradict(const Reading& a, const Reading& b) {
  if (!a.votes || !b.votes || a.verdict != Verdict::shown || b.verdict != Verdict::shown) return false;
  return (a.votes->first > a.votes->second) != (b.votes->first > b.votes->second);
}

}  // namespace oddglass::insight
