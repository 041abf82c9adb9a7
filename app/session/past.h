#pragma once

#include "domain/revealed.h"
#include "domain/shelf.h"
#include "session/drafts.h"
#include "store/store.h"

#include <vector>

namespace oddglass::session {

/// Who counts as the panel of a draft.
std::vector<TasterId> panelOf(const DraftFacts& facts);

/// Revealed score sheets of this store that mostly the same people filled in, the newest first: of the panel that sat at least half are among `tasters`, and of
/// `tasters` at least half sat (own rule). Demo evenings, broken seals and archived sessions do not count. At most `most`.
std::vector<RevealedSession> pastSheets(store::Store& store, const std::vector<TasterId>& tasters, int most = 6);

}  // namespace oddglass::session
