#pragma once

#include <vector>

namespace oddglass::planning {

/// What the run of an evening follows from. Nothing in it depends on the key.
struct RunFacts {
  int places = 0;
  int wave = 0;              ///< how many places are served at a time; 0: all at once
  int rounds = 1;            ///< of all evenings
  int evenings = 1;
  int cupsInFlight = 0;
  bool isSheet = false;      ///< everybody fills in at once; otherwise one screen is passed round
  int codedCups = 0;         ///< of a score sheet, those that are asked about
  int pauseSeconds = 0;
  int questionsACup = 0;     ///< of a score sheet, about each cup
};

enum class RunStepKind { settle, pour, taste, close };

/// A step of an evening. Minutes count from sitting down, rounded up.
struct RunStep {
  RunStepKind kind = RunStepKind::settle;
  int fromMinute = 0, toMinute = 0;
  int round = 0;             ///< of pouring and tasting
  int firstPlace = 0, lastPlace = 0;
  int cups = 0;              ///< poured in this step
};

/// One evening after the other, each with its steps in order: settle; for each round and each wave pour and taste; close. Rounds are spread as evenly as they go, the first evenings take what is left over.
/// Paces: planning/pace.h. Problem outOfRange ("places", "rounds", "evenings", "cups") when a number is below 1.
std::vector<std::vector<RunStep>> runList(const RunFacts& facts);

}  // namespace oddglass::planning
