#pragma once

#include "stats/methods.h"
#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// A sequential plan: no difference (an answer is right with chance p0) against a difference (p1), with the risks of a false alarm and of a miss.
/// 0 < p0 < p1 < 1, alpha and beta above 0, alpha + beta below 1; BadInput otherwise.
struct SequentialPlan {
  double p0;
  double p1;
  double alpha;
  double beta;
};

/// The two lines x = intercept + slope n for x right of n: at or above the upper one a difference is shown, at or below the lower one none.
struct SequentialLines {
  double slope;
  double acceptIntercept;  ///< below 0
  double rejectIntercept;  ///< above 0
};

/// Wald's sequential probability ratio test. Source: Wald 1947, Sequential Analysis, chapter 5; ISO 16820:2019.
SequentialLines linesOf(const SequentialPlan& plan);

/// The lines of guessing against a share (above 0, at most 1) of people who can tell. A share of all people would leave a wrong answer no chance at all,
/// and the lines need one: then a right answer is taken to come all but 1e-9 of the time. BadInput as for `linesOf`.
SequentialLines linesOfShare(Method method, double share, double alpha, double beta);

/// Where a plan stands. `undecided`: the trials that were allowed are used up between the lines.
enum class SequentialVerdict { goOn, difference, none, undecided };

/// When a plan is looked at and when it ends: after every `every` trials, and, where `last` is given, after that many at the latest.
/// every >= 1, last >= 1; a last look is always taken at `last`.
struct Looks {
  int every = 1;
  std::optional<int> last{};
};

/// The verdict after `right` of `trials`. Comparisons take both ends, with an allowance of 1e-12.
SequentialVerdict verdictAt(const SequentialLines& lines, int right, int trials);

/// What a row of answers (true: right) comes to, and after how many; answers after the decision are not looked at. `after` counts all
/// answers while it goes on.
struct SequentialDecision {
  SequentialVerdict verdict;
  int after;
  int right;
};
SequentialDecision decide(const SequentialLines& lines, const std::vector<bool>& answers, const Looks& looks);

/// Expected number of trials by Wald's approximation, which lets the count stop on the lines: without a difference and with p1.
struct WaldExpected {
  double none;
  double p1;
};
WaldExpected waldExpected(const SequentialPlan& plan);

/// How a plan ends when an answer is right with chance p, exactly. `undecided` is what is left when the trials are used up; without a
/// last trial the recursion goes on until less than 1e-13 is left.
struct SequentialOutcome {
  double difference;
  double none;
  double undecided;
  double expectedTrials;
};
/// p in [0, 1]. Empty when the recursion would take more than 100,000 trials or about two hundred million steps (why: Reason::tooLarge).
/// Source: recursion over the counts between the lines, by their definition.
std::optional<SequentialOutcome> outcomeOf(const SequentialLines& lines, double p, const Looks& looks);

}  // namespace oddglass::stats
