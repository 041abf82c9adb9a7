#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

namespace oddglass::session {

/// What a look after a whole round says: no count, no side, only whether to go on.
struct LookedAfter {
  Round round;
  bool goOn = true;
};

/// Looks at a sequential plan once everybody who sits has locked the rounds that are open, and opens the next round or says stop. The opening
/// of the key is logged, and so is what was said; nothing else of it is shown or kept. Problem notSequential, wrongState, roundOpen (with the
/// place that has not locked), nothingAnswered.
LookedAfter lookAfterRound(store::Store& store, Clock& clock, const SessionId& session);

}  // namespace oddglass::session
