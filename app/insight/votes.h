#pragma once

#include "insight/trials.h"

#include <optional>
#include <vector>

namespace oddglass::insight {

/// How votes without a preference would change a result: half of them given to each side.
struct SplitVotes {
  int first = 0;
  int second = 0;
  double pValue = 1.0;   ///< two-sided
  bool isShown = false;
  bool changes = false;  ///< shown and not shown change places
};

/// A preference in votes. One vote a person: whichever of the two lots they liked better more often; with as many on both sides no vote.
/// Alone each round is a vote, since it is one person's own steadiness that is asked about.
struct Votes {
  int first = 0;    ///< for the first lot of the plan
  int second = 0;
  int none = 0;     ///< had no preference every time: reported, not tested
  int even = 0;     ///< as often the one as the other: no vote
  int repeated = 0; ///< people with more than one answer; alone 0
  int steady = 0;   ///< of them, who answered the same every time
  std::optional<SplitVotes> split;  ///< only with somebody who had none
  int cast() const { return first + second; }
};

/// Votes of all trials that hold a preference. `first` and `second` are the lots compared; `alone`: every trial a vote of its own.
/// Source: exact sign test without ties (Dixon and Mood 1946); the split is *common practice* and stands beside it only.
Votes votesOf(const std::vector<Trial>& trials, std::pair<Slot, Slot> lots, bool alone, double alpha);

/// What those who were right liked better; asked after a forced choice, looked at afterwards, never part of the verdict.
struct Liking {
  Votes votes;                    ///< among right answers
  double pValue = 1.0;            ///< exact sign test, two-sided
  std::optional<int> needed;      ///< votes of the larger side that would show a preference; nothing where none could
  bool isShown = false;
  int wrong = 0;                  ///< answers that were wrong
  /// Share of those who tell for sure that prefers the first lot, guesses counted in (stats/preference.h). Only where everybody tasted once,
  /// nobody had no preference, and somebody is estimated to tell; else the counts alone.
  struct Share { double estimate = 0, low = 0, high = 1, level = 0.9; };
  std::optional<Share> tellers;
};

/// Nothing unless the plan asks it and somebody was right and answered it. Source: exact sign test; stats/preference.h.
std::optional<Liking> likingOf(const std::vector<Trial>& trials, const Plan& plan, std::pair<Slot, Slot> lots);

}  // namespace oddglass::insight
