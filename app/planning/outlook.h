#pragma once

#include "planning/difference.h"
#include "planning/setup.h"
#include "planning/stopping.h"

#include <optional>
#include <vector>

namespace oddglass::planning {

/// How often the plan would show a difference of one size.
struct Finding {
  int sharePm;         ///< 300, 500 and 800 of 1000; for a preference 750 and 900. Of what: Outlook::shareOf
  double chance;       ///< the person as the unit
  double independent;  ///< as if every trial were a new person
};

/// How a verdict of *alike* stands.
struct AlikeOutlook {
  int limitPm;
  std::optional<int> largest;  ///< most right answers that still say alike; nothing when no count is few enough. Of three comparisons: of the one with fewest
  std::vector<std::optional<int>> largestInTurn;  ///< one for each comparison, the one with fewest right answers first
  double chance;               ///< of ending alike when nobody can tell at all; for three comparisons of one by itself
};

/// How a plan with looks ends.
struct SequentialOutlook {
  int every;            ///< trials between two looks: a round of everybody who counts
  int last;             ///< trials after which it ends undecided at the latest
  int sharePm;          ///< the share that should not be missed
  SequentialEnd nobody; ///< when nobody can tell
  SequentialEnd share;  ///< when that share can
};

/// Why a plan is small; said before anything is poured. None of these forbids but `limitTooWide`.
enum class TooSmall {
  practice,         ///< no answers could show anything: even all right would prove nothing
  halfMissed,       ///< a difference that half can taste, or what 3 in 4 prefer, is found less than half the time
  alikeUnlikely,    ///< alike is sought and would not come out half the time even if nobody could tell
  limitTooWide,     ///< a limit above half of people: refused
  fewFriends,       ///< fewer than four: they will guess who wrote what
};

/// Ways to find more, in the order in which they are offered.
enum class Way {
  oneTarget,       ///< one of three comparisons only
  nameTheThing,    ///< a directional pair next time
  pourLess,        ///< less in each cup
  spit,            ///< spit cups; grams are still counted as if swallowed
  anotherEvening,  ///< the rounds spread over several evenings
  morePeople,
  fourCups,        ///< a tetrad
  moreRounds,
};

/// One way out with its numbers; what a way does not change is empty. It never goes beyond the ceiling in grams of one evening.
struct WayOut {
  Way way;
  std::optional<int> cupMl;
  std::optional<int> people;
  std::optional<int> rounds;
  std::optional<int> evenings;
  std::optional<int> needed;           ///< right answers, or votes of the larger side, needed then
  std::optional<double> chanceHalf;    ///< to show what half can taste, or what 3 in 4 prefer: with another method the same d'
  std::optional<double> chanceAlike;   ///< to end alike when nobody can tell; only where a limit is set
  std::optional<double> grams;         ///< a person an evening
  bool enoughBottles = true;           ///< no more than are free
};

/// What a plan can find and would miss. Only people who count are counted.
struct Outlook {
  Method method = Method::triangle;
  ShareOf shareOf = ShareOf::able;
  Claim claim = Claim::people;
  int people = 0;
  int rounds = 1;                 ///< of each comparison
  int trials = 0;                 ///< that count in each comparison; for a preference the votes, one a person
  int comparisons = 1;
  bool mayHaveNone = false;       ///< "no preference" may be answered
  bool canShow = false;           ///< some answers could show something
  std::optional<int> needed;      ///< right answers, for a preference the larger side; nothing where none is enough, or where it is not one number
  std::vector<std::optional<int>> neededInTurn;  ///< one for each comparison, the strongest first
  double alphaActual = 0.0;       ///< chance that anything is shown by guessing alone
  std::vector<Finding> findings;  ///< rising; chances 0 where nothing can be shown
  std::optional<SequentialOutlook> sequential;  ///< only for a plan with looks
  std::optional<AlikeOutlook> alike;  ///< only where a limit is set
  std::vector<TooSmall> tooSmall;
  std::vector<WayOut> waysOut;    ///< empty when the plan does what is sought 8 times in 10
  bool countsOnly = true;         ///< fewer than 20 people: counts, never percent of people

  /// What the rules ask about: half can taste it, or 3 in 4 prefer it. `findings` must not be empty.
  const Finding& half() const;
};

/// The share, in 1/1000, that the rules ask about for a method: 500, for a preference 750 (half of people prefer one for sure, the others choose at random).
int halfOf(Method method);

/// Source: planning/chances.h; the rules of "too small" are our own. Problem outOfRange.
Outlook outlookFor(const Setup& setup);

}  // namespace oddglass::planning
