#include "insight/signal.h"

#include "domain/flight_form.h"
#include "insight/choices.h"
#include "stats/binomial.h"
#include "stats/psychometric.h"
#include "stats/signal/plan.h"
#include "stats/signal/r_index.h"
#include "stats/signal/yes_no.h"

#include <algorithm>
#include <numbers>

namespace oddglass::insight {

namespace {

bool isSignal(const Trial& trial, Method method) { return *trial.wasSame == (method == Method::aNotA); }
bool saysSignal(const Trial& trial, Method method) { return *trial.saidSame == (method == Method::aNotA); }

stats::YesNo countsOf(const std::vector<Trial>& trials, Method method) {
  stats::YesNo counts;
  for (const Trial& trial : trials) {
    const bool said = saysSignal(trial, method);
    if (isSignal(trial, method))
      ++(said ? counts.hits : counts.misses);
    else
      ++(said ? counts.falseAlarms : counts.correctRejections);
  }
  return counts;
}

// The class of an answer: 0 sure that it is the signal, 5 sure that it is not.
std::size_t classOf(const Trial& trial, Method method) {
  const auto sure = static_cast<std::size_t>(*trial.sureness);
  return saysSignal(trial, method) ? 3 - sure : 2 + sure;
}

// The point of the normal distribution above which `tail` lies: a pair is right with probability Phi(d'/sqrt 2).
double normalPoint(double tail) { return stats::dPrimeOf(stats::Method::pair, 1.0 - tail).value_or(0.0) / std::numbers::sqrt2; }

std::vector<Missed> missedSignalOf(const stats::YesNo& counts, Method method, double alpha) {
  std::vector<Missed> missed;
  for (const int tenths : {10, 20}) {
    const double dPrime = tenths / 10.0;
    const auto rates = method == Method::aNotA ? stats::aNotARates(dPrime, stats::plannedCriterion) : stats::sameDifferentRates(dPrime, stats::plannedTau);
    const int pairPm = static_cast<int>(1000.0 * stats::rightAnswers(stats::Method::pair, dPrime) + 0.5);
    missed.push_back({pairPm, stats::fisherPower(counts.signals(), counts.noises(), rates, alpha).power, tenths});
  }
  return missed;
}

}  // namespace

Signal signalOf(const std::vector<Trial>& trials, Method method, double level) {
  const stats::YesNo counts = countsOf(trials, method);
  const auto found = method == Method::aNotA ? stats::aNotA(counts) : stats::sameDifferent(counts);
  Signal signal;
  signal.hits = counts.hits;
  signal.misses = counts.misses;
  signal.falseAlarms = counts.falseAlarms;
  signal.correctRejections = counts.correctRejections;
  signal.dPrime = found.dPrime;
  signal.standardError = found.standardError;
  signal.level = level;
  signal.corrected = found.corrected;
  signal.criterion = found.criterion ? found.criterion : found.criterionCorrected;
  if (found.dPrime && found.standardError) {
    const double reach = normalPoint((1.0 - level) / 2.0) * *found.standardError;
    signal.low = *found.dPrime - reach;
    signal.high = *found.dPrime + reach;
    if (method == Method::sameDifferent) signal.low = std::max(0.0, *signal.low);
  }
  return signal;
}

std::optional<SurenessIndex> surenessIndexOf(const std::vector<Trial>& trials, Method method, double level) {
  if (!formOf(method).saysSame || trials.empty() || std::ranges::any_of(trials, [](const Trial& trial) { return !trial.sureness; })) return std::nullopt;
  std::vector<int> signal(6, 0), noise(6, 0);
  for (const Trial& trial : trials) ++(isSignal(trial, method) ? signal : noise)[classOf(trial, method)];
  const auto found = stats::rIndexOf(signal, noise, level);
  if (!found) return std::nullopt;
  return SurenessIndex{found->rIndex, found->low, found->high, level, found->pValue, found->isExact};
}

Reading readSignal(const std::vector<Trial>& trials, const Plan& plan, Depth depth) {
  const double alpha = plan.alphaPm / 1000.0;
  const stats::YesNo counts = countsOf(trials, plan.method);
  Reading reading;
  reading.trials = static_cast<int>(trials.size());
  reading.right = static_cast<int>(std::ranges::count_if(trials, &Trial::right));
  reading.people = static_cast<int>(countsByPerson(trials).size());
  reading.signal = signalOf(trials, plan.method, 1.0 - 2.0 * alpha);
  reading.pValue = stats::fisherGreater(counts);
  // The clearest table that could have come out: every signal called one, no noise.
  const bool canShow = stats::atMost(stats::fisherGreater({counts.signals(), 0, 0, counts.noises()}), alpha);
  if (canShow && depth == Depth::whole) reading.missed = missedSignalOf(counts, plan.method, alpha);
  if (trials.empty())
    reading.why = NoVerdict::nobodyAnswered;
  else if (!canShow)
    reading.why = NoVerdict::tooFew;
  else
    reading.verdict = stats::atMost(*reading.pValue, alpha) ? Verdict::shown : Verdict::notShown;
  return reading;
}

}  // namespace oddglass::insight
