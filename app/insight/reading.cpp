#include "insight/reading.h"

#include "stats/choice.h"
#include "stats/replicated.h"
#include "stats/similarity.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>
#include <utility>

namespace oddglass::insight {

namespace {

constexpr auto triangle = stats::Method::triangle;
constexpr int missedPm[] = {300, 500};

std::vector<stats::PersonCount> byPerson(const std::vector<Trial>& trials) {
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

Range rangeOf(const std::vector<stats::PersonCount>& people, int right, int trials, const Plan& plan) {
  const double level = 1.0 - 2.0 * plan.alphaPm / 1000.0;
  const bool rounds = std::any_of(people.begin(), people.end(), [](const auto& person) { return person.trials > 1; });
  if (plan.claim != Claim::me && rounds)
    if (const auto share = stats::shareOfPeople(people, stats::guessing(triangle), level))
      return {share->low, share->median, share->high, level, RangeBy::people};
  const auto share = stats::shareInterval(triangle, right, trials, level);
  return {share.low.value_or(0.0), share.estimate.value_or(0.0), share.high.value_or(1.0), level,
          plan.claim == Claim::me ? RangeBy::self : RangeBy::exact};
}

std::vector<Missed> missedOf(const std::vector<stats::PersonCount>& people, int needed, const Plan& plan) {
  std::vector<int> rounds;
  for (const auto& person : people) rounds.push_back(person.trials);
  const double gamma = plan.claim == Claim::me ? 0.0 : plan.gammaPm / 1000.0;
  std::vector<Missed> missed;
  for (const int sharePm : missedPm) {
    const auto chances = stats::tableCounts(rounds, stats::guessing(triangle), sharePm / 1000.0, gamma);
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

}  // namespace

Reading readTrials(const std::vector<Trial>& trials, const Plan& plan) {
  const auto people = byPerson(trials);
  const double guess = stats::guessing(triangle), alpha = plan.alphaPm / 1000.0;
  Reading reading;
  reading.trials = static_cast<int>(trials.size());
  reading.right = static_cast<int>(std::count_if(trials.begin(), trials.end(), [](const Trial& trial) { return trial.right(); }));
  reading.people = static_cast<int>(people.size());
  reading.expected = guess * reading.trials;
  reading.pValue = stats::pValue(triangle, reading.right, reading.trials);
  reading.needed = stats::neededNumber(triangle, reading.trials, alpha);
  if (plan.limitPm && plan.sought != Sought::difference) {
    reading.largest = stats::largestAlike(reading.trials, guess, *plan.limitPm / 1000.0, alpha);
    reading.alikeP = stats::alikePValue(reading.right, reading.trials, guess, *plan.limitPm / 1000.0);
  }
  if (reading.trials > 0) reading.range = rangeOf(people, reading.right, reading.trials, plan);
  if (reading.needed) reading.missed = missedOf(people, *reading.needed, plan);
  std::tie(reading.verdict, reading.why) = verdictOf(reading, plan.sought);
  return reading;
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

}  // namespace oddglass::insight
