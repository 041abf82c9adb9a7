#pragma once

#include "insight/reading.h"
#include "stats/methods.h"
#include "stats/replicated.h"

#include <vector>

namespace oddglass::insight {

/// The method as statistics name it. For the methods with a guessing chance, and for a preference.
stats::Method statsMethod(Method method);

/// Right answers and trials of each person, in the order of places.
std::vector<stats::PersonCount> countsByPerson(const std::vector<Trial>& trials);

/// Readings of the three kinds of question; see readTrials.
Reading readChoices(const std::vector<Trial>& trials, const Plan& plan, const OtherPairs& others, Depth depth);
Reading readSequential(const std::vector<Trial>& trials, const Plan& plan);
Reading readVotes(const std::vector<Trial>& trials, const Plan& plan);
Reading readSignal(const std::vector<Trial>& trials, const Plan& plan, Depth depth);

}  // namespace oddglass::insight
