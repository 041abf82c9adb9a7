#pragma once

#include "domain/plan.h"
#include "insight/trials.h"

#include <optional>
#include <vector>

namespace oddglass::insight {

/// What came out. `both` is told apart, but by fewer than the limit; `none` stands with a reason.
enum class Verdict { shown, notShown, alike, both, none };

/// Why there is no verdict.
enum class NoVerdict {
  sealBroken,      ///< the key was opened before everybody had answered
  nobodyAnswered,  ///< no answer that counts
  tooFew,          ///< not even the clearest count could have reached the limit
  tooFewWithout,   ///< too few are left without what was said aloud or told by look or fizz
};

/// Where a share of people lies. One round: exact, Clopper-Pearson through the guessing model. Rounds: the person as the unit, posterior.
/// Alone: the share of this taster's tastings in which they can tell.
enum class RangeBy { exact, people, self };
struct Range {
  double low = 0.0;
  double point = 0.0;  ///< estimate, or the middle of what is known where it is by people
  double high = 1.0;
  double level = 0.9;  ///< 1 - 2 alpha, so that it agrees with the test
  RangeBy by = RangeBy::exact;
};

/// How often this table would have shown a difference that a share of such people can taste.
struct Missed {
  int sharePm;    ///< 300 or 500 of 1000
  double chance;  ///< the person as the unit, with the plan's gamma
};

/// One way of working out the plan's question: from all trials that count, or from some of them.
struct Reading {
  Verdict verdict = Verdict::none;
  std::optional<NoVerdict> why;
  int right = 0;
  int trials = 0;
  int people = 0;              ///< who gave at least one of the trials
  double expected = 0.0;       ///< right answers by guessing alone
  double pValue = 1.0;         ///< P(this many or more right) by guessing
  std::optional<int> needed;   ///< right answers needed at the plan's alpha; nothing when no count reaches it
  std::optional<int> largest;  ///< most right answers that still are alike within the limit; only where a limit is set and alike is sought
  std::optional<double> alikeP;  ///< P(this many or fewer right) when the limit share can tell
  std::optional<Range> range;  ///< nothing without trials
  std::vector<Missed> missed;  ///< for 300 and 500 of 1000; empty without a needed number
};

/// Works out the question of a sealed plan from trials of one group. Source: exact binomial for test and alikeness
/// (ISO 4120:2021), stats/replicated.h for people.
Reading readTrials(const std::vector<Trial>& trials, const Plan& plan);

/// The weaker of two verdicts: `none` below `notShown` below `shown` and `alike` below `both`; of shown and alike neither holds.
Verdict weaker(Verdict a, Verdict b);

}  // namespace oddglass::insight
