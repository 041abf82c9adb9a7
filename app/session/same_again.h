#pragma once

#include "session/drafts.h"

namespace oddglass::session {

/// The set-up of a sealed session as a new plan: the same question, way of asking, drinks, amounts, sheet and people, those who were loose too. What was
/// promised, and the care that was read aloud, belong to their own evening. People who were forgotten or put away are left out.
/// The id is empty. Problem notSealed.
Draft sameAgain(store::Store& store, const SessionId& session);

/// The same, begun and saved.
SessionId planAgain(store::Store& store, Clock& clock, Chance& chance, const SessionId& session);

}  // namespace oddglass::session
