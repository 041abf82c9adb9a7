#include "insight/votes.h"

#include "insight/choices.h"
#include "stats/binomial.h"
#include "stats/choice.h"
#include "stats/preference.h"

#include <algorithm>
#include <map>

namespace oddglass::insight {

namespace {

struct Said {
  int first = 0, second = 0, none = 0;
  int all() const { return first + second + none; }
};

// Half of those without a preference to each side, an odd one to the side that is behind.
SplitVotes votesSplitOf(const Votes& votes, double alpha) {
  SplitVotes split{votes.first + votes.none / 2, votes.second + votes.none / 2};
  if (votes.none % 2 == 1) ++(votes.first < votes.second ? split.first : split.second);
  split.pValue = stats::twoSidedHalf(split.first, split.first + split.second);
  split.isShown = stats::atMost(split.pValue, alpha);
  split.changes = split.isShown != stats::atMost(stats::twoSidedHalf(votes.first, votes.cast()), alpha);
  return split;
}

bool holdsAPreference(const Trial& trial) { return trial.preferred || trial.preferredNone; }

constexpr int missedSharesPm[] = {800, 900};

}  // namespace

Votes votesOf(const std::vector<Trial>& trials, std::pair<Slot, Slot> lots, bool alone, double alpha) {
  std::map<std::pair<Place, Round>, Said> said;
  for (const Trial& trial : trials) {
    if (!holdsAPreference(trial)) continue;
    Said& each = said[{trial.place, alone ? trial.round : Round{0}}];
    if (trial.preferredNone)
      ++each.none;
    else
      ++(*trial.preferred == lots.first ? each.first : each.second);
  }
  Votes votes;
  for (const auto& [who, each] : said) {
    if (each.first != each.second)
      ++(each.first > each.second ? votes.first : votes.second);
    else
      ++(each.first == 0 ? votes.none : votes.even);
    if (each.all() < 2) continue;
    ++votes.repeated;
    votes.steady += std::max({each.first, each.second, each.none}) == each.all();
  }
  if (votes.none > 0) votes.split = votesSplitOf(votes, alpha);
  return votes;
}

std::optional<Liking> likingOf(const std::vector<Trial>& trials, const Plan& plan, std::pair<Slot, Slot> lots) {
  if (!plan.alsoPrefer) return std::nullopt;
  std::vector<Trial> right;
  std::map<Place, int> tastings;
  Liking liking;
  for (const Trial& trial : trials) {
    ++tastings[trial.place];
    if (trial.right() && holdsAPreference(trial)) right.push_back(trial);
    liking.wrong += !trial.right();
  }
  if (right.empty()) return std::nullopt;
  const double alpha = plan.alphaPm / 1000.0;
  liking.votes = votesOf(right, lots, plan.claim == Claim::me, alpha);
  const int cast = liking.votes.cast(), larger = std::max(liking.votes.first, liking.votes.second);
  liking.pValue = stats::twoSidedHalf(larger, cast);
  liking.needed = stats::criticalLargerSide(cast, alpha);
  liking.isShown = cast > 0 && stats::atMost(liking.pValue, alpha);
  const bool onceEach = std::ranges::all_of(tastings, [](const auto& each) { return each.second == 1; });
  if (onceEach && plan.claim != Claim::me && liking.votes.none == 0 && liking.votes.cast() > 0) {
    const double level = 1.0 - 2.0 * alpha;
    const auto share = stats::preferenceOfTellers(liking.votes.first, liking.votes.second, liking.wrong, stats::guessing(statsMethod(plan.method)), level);
    if (share && share->estimate && share->low && share->high) liking.tellers = Liking::Share{*share->estimate, *share->low, *share->high, level};
  }
  return liking;
}

Reading readVotes(const std::vector<Trial>& trials, const Plan& plan) {
  const double alpha = plan.alphaPm / 1000.0;
  Reading reading;
  const Votes votes = votesOf(trials, lotsOf(plan), plan.claim == Claim::me, alpha);
  reading.votes = votes;
  reading.people = static_cast<int>(countsByPerson(trials).size());
  reading.trials = votes.cast();
  reading.right = std::max(votes.first, votes.second);
  reading.expected = reading.trials / 2.0;
  reading.pValue = stats::twoSidedHalf(reading.right, reading.trials);
  reading.needed = stats::criticalLargerSide(reading.trials, alpha);
  if (reading.trials > 0) {
    const double level = 1.0 - alpha;
    const auto share = stats::clopperPearson(votes.first, reading.trials, level);
    reading.range = Range{share.low, votes.first / static_cast<double>(reading.trials), share.high, level, plan.claim == Claim::me ? RangeBy::self : RangeBy::exact};
  }
  if (reading.needed)
    for (const int sharePm : missedSharesPm)
      reading.missed.push_back({sharePm, std::min(1.0, stats::upperTail(*reading.needed, reading.trials, sharePm / 1000.0) +
                                                           stats::lowerTail(reading.trials - *reading.needed, reading.trials, sharePm / 1000.0))});
  if (trials.empty())
    reading.why = NoVerdict::nobodyAnswered;
  else if (reading.trials == 0)
    reading.why = NoVerdict::noVotes;
  else if (!reading.needed)
    reading.why = NoVerdict::tooFew;
  else
    reading.verdict = reading.right >= *reading.needed ? Verdict::shown : Verdict::notShown;
  return reading;
}

}  // namespace oddglass::insight
