#pragma once

#include "domain/plan.h"

#include <vector>

namespace oddglass {

/// What is set up otherwise than it was: two evenings can be compared only as far as they are alike.
enum class SetupPart { method, sheet, cupMl, rounds, cupsAtOnce, pause, cleanser, ceiling, markedCup, duplicate, vessel, temperature, mouthful };

/// In the order of the enumeration; empty for the same table.
std::vector<SetupPart> setupDifferences(const Plan& before, const Plan& now);

/// Most cups before one person on a score sheet; 0 for other methods.
int cupsAtOnceOf(const Plan& plan);

}  // namespace oddglass
