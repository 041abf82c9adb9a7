#pragma once

#include "planning/setup.h"

#include <optional>
#include <vector>

namespace oddglass::planning {

/// How often the plan would show a difference that a share of people can taste.
struct Finding {
  int sharePm;         ///< 300, 500 or 800 of 1000
  double chance;       ///< the person as the unit
  double independent;  ///< as if every trial were a new person
};

/// How a verdict of *alike* stands.
struct AlikeOutlook {
  int limitPm;
  std::optional<int> largest;  ///< most right answers that still say alike; nothing when no count is few enough
  double chance;               ///< of ending alike when nobody can tell at all
};

/// Why a plan is small; said before anything is poured. None of these forbids but `limitTooWide`.
enum class TooSmall {
  practice,         ///< no count could reach the limit: even all right would prove nothing
  halfMissed,       ///< a difference that half can taste is found less than half the time
  alikeUnlikely,    ///< alike is sought and would not come out half the time even if nobody could tell
  limitTooWide,     ///< a limit above half of people: refused
  fewFriends,       ///< fewer than four: they will guess who wrote what
};

/// Ways to find more, in the order in which they are offered.
enum class Way {
  nameTheThing,    ///< a directional pair next time
  pourLess,        ///< less in each cup
  spit,            ///< spit cups; grams are still counted as if swallowed
  anotherEvening,  ///< the rounds spread over several evenings
  morePeople,
  moreRounds,
};

/// One way out with its numbers; what a way does not change is empty. It never goes beyond the ceiling in grams of one evening.
struct WayOut {
  Way way;
  std::optional<int> cupMl;
  std::optional<int> people;
  std::optional<int> rounds;
  std::optional<int> evenings;
  std::optional<int> needed;           ///< right answers needed then
  std::optional<double> chanceHalf;    ///< to show what half can taste
  std::optional<double> chanceAlike;   ///< to end alike when nobody can tell; only where a limit is set
  std::optional<double> grams;         ///< a person an evening
};

/// What a triangle with this panel and these rounds can find and would miss. Only people who count are counted.
struct Outlook {
  Claim claim = Claim::people;
  int people = 0;
  int trials = 0;
  std::optional<int> needed;
  double alphaActual = 0.0;       ///< chance to be shown by guessing alone
  std::vector<Finding> findings;  ///< for 300, 500 and 800 of 1000; chances 0 when no count reaches alpha
  std::optional<AlikeOutlook> alike;  ///< only where a limit is set
  std::vector<TooSmall> tooSmall;
  std::vector<WayOut> waysOut;    ///< empty when the plan does what is sought 8 times in 10
  bool countsOnly = true;         ///< fewer than 20 people: counts, never percent of people
};

/// Source: exact sums of chance-corrected beta-binomials (stats/power.h); the rules of "too small" are our own.
/// Problem outOfRange.
Outlook outlookFor(const Setup& setup);

}  // namespace oddglass::planning
