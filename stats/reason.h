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
  oneTaster,       ///< a single taster: nothing can be said about people
  fewTasters,      ///< fewer tasters than this needs
  oneSession,      ///< a single session: nothing can be said about time or days
  fewSessions,     ///< fewer sessions than this needs
  oneAge,          ///< every session has the same age
  fewSamples,      ///< fewer samples than this needs
  noSpread,        ///< all answers alike: there is no variance to judge by
  noRepeats,       ///< nothing was answered twice
  allTied,         ///< ties everywhere: nothing was ranked apart
  emptyCell,       ///< a combination that is needed was never answered
  notConnected,    ///< the comparisons fall into parts that were never poured together
  noConvergence,   ///< the search for the best fit did not settle
  tooLarge,        ///< too many arrangements to count, and no approximation serves
  notGiven,        ///< what this needs was not given
  underFifth,      ///< fewer than 20 % of those who answered
  fewAnswers,      ///< fewer answers than this needs
  repeatedPeople,  ///< somebody answered more than once, and one person's answers are not independent
  confounded,      ///< two things always changed together and cannot be told apart
  separated,       ///< answers fall apart so cleanly that the best estimate would be infinite
  allOneWay,       ///< one of the two answers was never, or always, given: no finite distance
  atGuessing,      ///< at or below guessing: no standard error
};

}  // namespace oddglass::stats
