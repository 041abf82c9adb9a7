#include "cli/power.h"
#include "domain/problem.h"
#include "stats/signal/plan.h"

namespace oddglass::cli {
namespace {

stats::Rates ratesOf(const PowerOptions& options) {
  refuseGiven(options, {options.difference.pd, options.rounds, options.gamma, options.limit, options.share, options.none});
  const bool isSameDifferent = options.method->text() == "same-different";
  const double dPrime = options.difference.dPrime->number(0.0, 1000.0);
  refuseGiven(options, {isSameDifferent ? options.criterion : options.tau});
  if (isSameDifferent) return stats::sameDifferentRates(dPrime, options.tau->numberOr(stats::plannedTau, 0.0, 1000.0));
  return stats::aNotARates(dPrime, options.criterion->numberOr(stats::plannedCriterion, -1000.0, 1000.0));
}

}  // namespace

Answer signalPower(const PowerOptions& options) {
  const stats::Rates rates = ratesOf(options);
  const int all = options.trials->whole(2, 20'000), noises = all / 2, signals = all - noises;
  const stats::FisherPower found = stats::fisherPower(signals, noises, rates, options.risk());
  return {Json{{"critical", nullptr}, {"alpha_actual", numberOrNull(found.alphaActual)}, {"power", numberOrNull(found.power)}, {"signals", signals}, {"noises", noises},
               {"hit_rate", numberOrNull(rates.hit)}, {"false_alarm_rate", numberOrNull(rates.falseAlarm)}, {"why", "how many hits are needed depends on the false alarms"}}, {}};
}

Answer signalSize(const PowerOptions& options) {
  const stats::Rates rates = ratesOf(options);
  const Given& size = *options.difference.dPrime;
  if (!(rates.hit > rates.falseAlarm)) throw Problem(Trouble::outOfRange, size.name, {{"text", size.text()}, {"low", "just above 0"}, {"high", "1000"}});
  Answer answer = sizesAnswer(stats::fisherSizes(rates, options.power->openShare(), options.risk()));
  for (const char* key : {"first", "stable"})
    if (!answer.json[key].is_null()) answer.json[key]["critical"] = nullptr;
  if (!answer.json.contains("why")) answer.json["why"] = "how many hits are needed depends on the false alarms";
  else answer.json["why"] = "more trials than are looked at (2,000)";
  return answer;
}

}  // namespace oddglass::cli
