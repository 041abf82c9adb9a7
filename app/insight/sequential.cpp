#include "insight/choices.h"
#include "stats/sequential/sprt.h"

#include <algorithm>

namespace oddglass::insight {

namespace {

Decision decisionOf(stats::SequentialVerdict verdict) {
  switch (verdict) {
    case stats::SequentialVerdict::difference: return Decision::difference;
    case stats::SequentialVerdict::none: return Decision::none;
    case stats::SequentialVerdict::goOn:
    case stats::SequentialVerdict::undecided: return Decision::undecided;
  }
  return Decision::undecided;
}

}  // namespace

Reading readSequential(const std::vector<Trial>& trials, const Plan& plan) {
  const auto method = statsMethod(plan.method);
  const auto lines = stats::linesOfShare(method, plan.stopping->sharePm / 1000.0, plan.alphaPm / 1000.0, plan.stopping->betaPm / 1000.0);
  Reading reading;
  reading.trials = static_cast<int>(trials.size());
  reading.right = static_cast<int>(std::ranges::count_if(trials, &Trial::right));
  reading.people = static_cast<int>(countsByPerson(trials).size());
  reading.expected = stats::guessing(method) * reading.trials;
  reading.pValue.reset();
  Sequential sequential;
  sequential.decision = decisionOf(stats::verdictAt(lines, reading.right, reading.trials));
  while (sequential.differenceFrom <= reading.trials && stats::verdictAt(lines, sequential.differenceFrom, reading.trials) != stats::SequentialVerdict::difference)
    ++sequential.differenceFrom;
  while (sequential.noneTo < reading.trials && stats::verdictAt(lines, sequential.noneTo + 1, reading.trials) == stats::SequentialVerdict::none) ++sequential.noneTo;
  reading.sequential = sequential;
  if (trials.empty())
    reading.why = NoVerdict::nobodyAnswered;
  else
    reading.verdict = sequential.decision == Decision::difference ? Verdict::shown : Verdict::notShown;
  return reading;
}

}  // namespace oddglass::insight
