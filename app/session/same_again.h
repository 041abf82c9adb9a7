#pragma once

#include "session/drafts.h"

namespace oddglass::session {

/// The set-up of a sealed session as a new plan: the same question, way of asking, drinks, amounts, sheet and people, those who were loose too. What was
/// promised, and the care that was read aloud, belong to their own evening. People who were forgotten or put away are left out.
/// The id is empty. Problem notSealed.
Draft sameAgain(store::Store& store, const SessionId& session);

/// The same, begun and saved.
SessionId planAgain(store::Store& store, Clock& clock, Chance& chance, const SessionId& session);

/// The questions of a sealed sheet, as they are planned anew.
std::vector<SheetItem> questionsOf(const Plan& plan);

/// A new plan of a score sheet for these lots, references among them as such; of references alone the first one. Begun and saved. `sheet` are its questions.
/// Problem unknown (a lot that is not there).
SessionId planSheet(store::Store& store, Clock& clock, Chance& chance, const std::string& title, const std::vector<LotId>& lots, std::vector<SheetItem> sheet);

}  // namespace oddglass::session
