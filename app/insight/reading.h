#pragma once

#include "domain/plan.h"
#include "insight/signal.h"
#include "insight/trials.h"
#include "insight/votes.h"

#include <optional>
#include <vector>

namespace oddglass::insight {

/// What came out. `shown` is the plan's own question: told apart, more of a thing, or a preference. `both` is told apart, but by fewer than
/// the limit; `none` stands with a reason.
enum class Verdict { shown, notShown, alike, both, none };

/// Why there is no verdict.
enum class NoVerdict {
  sealBroken,      ///< the key was opened before everybody had answered
  nobodyAnswered,  ///< no answer that counts
  tooFew,          ///< not even the clearest answers could have reached the limit
  tooFewWithout,   ///< too few are left without what was said aloud or told by look or fizz
  noVotes,         ///< everybody had no preference, or as often the one as the other
};

/// Where a share lies. One round: exact, Clopper-Pearson, through the guessing model where there is one. Rounds: the person as the unit,
/// posterior. Alone: the share of this taster's tastings in which they can tell, or prefer the first lot.
enum class RangeBy { exact, people, self };
/// The share of people who can tell; for a preference, of those who prefer the first lot of the plan.
struct Range {
  double low = 0.0;
  double point = 0.0;  ///< estimate, or the middle of what is known where it is by people
  double high = 1.0;
  double level = 0.9;  ///< 1 - 2 alpha, for a preference 1 - alpha, so that it agrees with the test; with three lots alpha is shared as Holm does
  RangeBy by = RangeBy::exact;
};

/// How often this table would have shown what a share of such people can taste (or, for a preference, prefer).
struct Missed {
  int sharePm;    ///< 300 and 500 of 1000; for a preference 800 and 900. Same-different and A-not-A: see `dPrimeTenths`
  double chance;  ///< the person as the unit, with the plan's gamma; same-different and A-not-A: trials as the unit
  std::optional<int> dPrimeTenths{};  ///< same-different and A-not-A: 10 and 20, a d' of 1 and 2; then sharePm is how often the right one of two cups is picked at that d'
};

/// What a sequential plan came to: the lines of Wald's test are the result, and there is no p.
enum class Decision { difference, none, undecided };
struct Sequential {
  Decision decision = Decision::undecided;
  int afterRound = 0;         ///< the last round that was tasted
  bool stoppedEarly = false;  ///< a look said stop before the last planned round
  int differenceFrom = 0;     ///< right answers at or above which a difference is shown after this many trials
  int noneTo = -1;            ///< at or below this there is none of the size asked for; below 0 where not even 0 right would do
};

/// One way of working out the plan's question: from all trials that count, or from some of them.
struct Reading {
  Verdict verdict = Verdict::none;
  std::optional<NoVerdict> why;
  int right = 0;               ///< right answers; for a preference the votes of the larger side
  int trials = 0;              ///< for a preference the votes cast
  int people = 0;              ///< who gave at least one of the trials
  double expected = 0.0;       ///< right answers by guessing alone; for a preference half of the votes; 0 for same-different and A-not-A
  std::optional<double> pValue = 1.0;  ///< P(this many or more right) by guessing; two-sided for a preference; Fisher's for signal and noise. Nothing for a sequential plan
  std::optional<double> adjustedP;     ///< by Holm over the three pairs; only with three lots
  std::optional<int> needed;   ///< right answers needed at the plan's alpha; nothing when no count reaches it. With three lots given the other pairs
  std::optional<int> largest;  ///< most right answers that still are alike within the limit; only where a limit is set and alike is sought
  std::optional<double> alikeP;  ///< P(this many or fewer right) when the limit share can tell
  std::optional<double> alikeAdjustedP;  ///< by Holm over the three pairs; only with three lots
  std::optional<double> otherWayP;  ///< methods that name a thing, with fewer right than by guessing: two-sided p of leaning the other way
  std::optional<Range> range;  ///< nothing without trials, and for same-different and A-not-A
  std::vector<Missed> missed;  ///< empty without a needed number
  std::optional<Votes> votes;            ///< preference only
  std::optional<Signal> signal;          ///< same-different and A-not-A only
  std::optional<Sequential> sequential;  ///< sequential plans only
};

/// The p values of the other pairs, where three lots are compared in pairs: the smallest first or in any order, the verdict holds over all by Holm.
struct OtherPairs {
  std::vector<double> p;       ///< of a difference
  std::vector<double> alikeP;  ///< of alikeness, where it is sought
};

/// How much of a reading is worked out. `verdict`: without ranges and what could have been missed, which take nearly all of the time.
enum class Depth { whole, verdict };

/// Works out the question of a sealed plan from trials of one group. Sources: exact binomial for test and alikeness (ISO 4120:2021,
/// ISO 10399:2017, ISO 5495:2005), stats/replicated.h for people; stats/signal for signal and noise; Wald 1947 for sequential plans;
/// Holm 1979, Scand J Statist 6:65, over pairs.
Reading readTrials(const std::vector<Trial>& trials, const Plan& plan, const OtherPairs& others = {}, Depth depth = Depth::whole);

/// A p adjusted by Holm among itself and the others; at most 1, and the p itself without others.
double holm(double p, std::vector<double> others);

/// The weaker of two verdicts: `none` below `notShown` below `shown` and `alike` below `both`; of shown and alike neither holds.
Verdict weaker(Verdict a, Verdict b);

/// True when two readings show a preference, but for different lots.
bool contradict(const Reading& a, const Reading& b);

}  // namespace oddglass::insight
