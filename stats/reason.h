#pragma once

namespace oddglass::stats {

/// Why a number cannot be had from these data. It stands beside an empty optional, never in place of an error.
enum class Reason {
  noTrials,        ///< nothing was answered
  allRight,        ///< every trial right: the estimate has no finite value, only a lower limit
  noGuessing,      ///< the method has no guessing model (a preference)
  oneRound,        ///< everybody tasted once: differences between people cannot be told from chance
  onePerson,       ///< a single taster: nothing can be said about people
  tooFarBelow,     ///< so far below guessing that the figure is smaller than any number
  beyondSearch,    ///< the answer lies above the largest number of trials that is looked at
  neverAlike,      ///< guessing itself is above the limit, or no count is small enough
};

}  // namespace oddglass::stats
