#pragma once

#include "domain/plan.h"
#include "session/drafts.h"

#include <vector>

namespace oddglass::session {

/// The set-up of a sealed session as a new plan: the same question, way of asking, drinks, amounts, sheet and people, those who were loose too. What was
/// promised, and the care that was read aloud, belong to their own evening. People who were forgotten or put away are left out.
/// The id is empty. Problem notSealed.
Draft sameAgain(store::Store& store, const SessionId& session);

/// The same, begun and saved.
SessionId planAgain(store::Store& store, Clock& clock, Chance& chance, const SessionId& session);

/// What is set up otherwise than it was: two evenings can be compared only as far as they are alike.
enum class SetupPart { method, sheet, cupMl, rounds, cupsAtOnce, pause, cleanser, ceiling, markedCup, duplicate };

/// In the order of the enumeration; empty for the same table.
std::vector<SetupPart> setupDifferences(const Plan& before, const Plan& now);

}  // namespace oddglass::session
