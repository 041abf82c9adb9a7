#include "insight/choices.h"

#include "domain/flight_form.h"
#include "domain/names.h"
#include "stats/binomial.h"
#include "stats/choice.h"
#include "stats/similarity.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>
#include <utility>

namespace oddglass::insight {

namespace {

constexpr int missedPm[] = {300, 500};

Range rangeOf(const std::vector<stats::PersonCount>& people, int right, int trials, const Plan& plan, double level) {
  const auto method = statsMethod(plan.method);
  const bool rounds = std::any_of(people.begin(), people.end(), [](const auto& person) { return person.trials > 1; });
  if (plan.claim != Claim::me && rounds)
    if (const auto share = stats::shareOfPeople(people, stats::guessing(method), level))
      return {share->low, share->median, share->high, level, RangeBy::people};
  const auto share = stats::shareInterval(method, right, trials, level);
  return {share.low.value_or(0.0), share.estimate.value_or(0.0), share.high.value_or(1.0), level,
          plan.claim == Claim::me ? RangeBy::self : RangeBy::exact};
}

std::vector<Missed> missedOf(const std::vector<stats::PersonCount>& people, int needed, const Plan& plan) {
  std::vector<int> rounds;
  for (const auto& person : people) rounds.push_back(person.trials);
  const double gamma = plan.claim == Claim::me ? 0.0 : plan.gammaPm / 1000.0;
  std::vector<Missed> missed;
  for (const int sharePm : missedPm) {
    const auto chances = stats::tableCounts(rounds, stats::guessing(statsMethod(plan.method)), sharePm / 1000.0, gamma);
    missed.push_back({sharePm, std::min(1.0, std::accumulate(chances.begin() + needed, chances.end(), 0.0))});
  }
  return missed;
}

std::pair<Verdict, std::optional<NoVerdict>> verdictOf(const Reading& reading, Sought sought) {
  if (reading.trials == 0) return {Verdict::none, NoVerdict::nobodyAnswered};
  const bool mayShow = sought != Sought::alike && reading.needed, mayBeAlike = reading.largest.has_value();
  if (!mayShow && !mayBeAlike) return {Verdict::none, NoVerdict::tooFew};
  const bool shown = mayShow && reading.right >= *reading.needed, alike = mayBeAlike && reading.right <= *reading.largest;
  if (shown && alike) return {Verdict::both, std::nullopt};
  if (shown) return {Verdict::shown, std::nullopt};
  if (alike) return {Verdict::alike, std::nullopt};
  return {Verdict::notShown, std::nullopt};
}

// The smallest count that is shown beside the other pairs' p values; nothing when none is.
std::optional<int> neededBeside(stats::Method method, int trials, double alpha, const std::vector<double>& others) {
  for (int count = 0; count <= trials; ++count)
    if (stats::atMost(holm(stats::pValue(method, count, trials), others), alpha)) return count;
  return std::nullopt;
}

std::optional<int> largestBeside(int trials, double guess, double limit, double alpha, const std::vector<double>& others) {
  for (int count = trials; count >= 0; --count)
    if (stats::atMost(holm(stats::alikePValue(count, trials, guess, limit), others), alpha)) return count;
  return std::nullopt;
}

// Into how many parts Holm's step of a pair divides alpha.
double partsOf(double own, const std::vector<double>& others) {
  return 1.0 + static_cast<double>(std::ranges::count_if(others, [&](double other) { return other >= own; }));
}

// Into how many parts alpha goes, so that the range agrees with the verdict over the pairs: Holm's own step where one is reached, else all of them.
double sharesOfAlpha(const Reading& reading, const OtherPairs& others) {
  switch (reading.verdict) {
    case Verdict::shown: return partsOf(*reading.pValue, others.p);
    case Verdict::alike: return partsOf(*reading.alikeP, others.alikeP);
    case Verdict::both: return std::min(partsOf(*reading.pValue, others.p), partsOf(*reading.alikeP, others.alikeP));
    case Verdict::notShown:
    case Verdict::none: break;
  }
  return static_cast<double>(others.p.size() + 1);
}

// What every reading of forced choices holds before its verdict.
Reading counted(const std::vector<Trial>& trials, const Plan& plan) {
  Reading reading;
  reading.trials = static_cast<int>(trials.size());
  reading.right = static_cast<int>(std::ranges::count_if(trials, &Trial::right));
  reading.people = static_cast<int>(countsByPerson(trials).size());
  reading.expected = stats::guessing(statsMethod(plan.method)) * reading.trials;
  return reading;
}

}  // namespace

stats::Method statsMethod(Method method) { return stats::methodNamed(nameOf(method)); }

std::vector<stats::PersonCount> countsByPerson(const std::vector<Trial>& trials) {
  std::map<Place, stats::PersonCount> counts;
  for (const auto& trial : trials) {
    auto& person = counts.try_emplace(trial.place, stats::PersonCount{0, 0}).first->second;
    ++person.trials;
    person.correct += trial.right();
  }
  std::vector<stats::PersonCount> people;
  for (const auto& [place, count] : counts) people.push_back(count);
  return people;
}

Reading readChoices(const std::vector<Trial>& trials, const Plan& plan, const OtherPairs& others, Depth depth) {
  const auto people = countsByPerson(trials);
  const auto method = statsMethod(plan.method);
  const double guess = stats::guessing(method), alpha = plan.alphaPm / 1000.0;
  const bool inPairs = !others.p.empty();
  Reading reading = counted(trials, plan);
  reading.pValue = stats::pValue(method, reading.right, reading.trials);
  reading.needed = inPairs ? neededBeside(method, reading.trials, alpha, others.p) : stats::neededNumber(method, reading.trials, alpha);
  if (inPairs) reading.adjustedP = holm(*reading.pValue, others.p);
  // A named thing is asked about in one direction only: few answers for it say nothing of alikeness.
  if (plan.limitPm && plan.sought != Sought::difference && !namesAThing(plan.method)) {
    const double limit = *plan.limitPm / 1000.0;
    reading.largest = inPairs ? largestBeside(reading.trials, guess, limit, alpha, others.alikeP) : stats::largestAlike(reading.trials, guess, limit, alpha);
    reading.alikeP = stats::alikePValue(reading.right, reading.trials, guess, limit);
    if (inPairs) reading.alikeAdjustedP = holm(*reading.alikeP, others.alikeP);
  }
  if (namesAThing(plan.method) && reading.right < reading.expected)
    reading.otherWayP = std::min(1.0, 2.0 * stats::lowerTail(reading.right, reading.trials, guess));
  if (reading.needed && depth == Depth::whole) reading.missed = missedOf(people, *reading.needed, plan);
  std::tie(reading.verdict, reading.why) = verdictOf(reading, namesAThing(plan.method) ? Sought::difference : plan.sought);
  if (reading.trials > 0 && depth == Depth::whole) reading.range = rangeOf(people, reading.right, reading.trials, plan, 1.0 - 2.0 * alpha / sharesOfAlpha(reading, others));
  return reading;
}

}  // namespace oddglass::insight
