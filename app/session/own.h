#pragma once

#include "domain/own.h"
#include "store/store.h"

namespace oddglass::session {

/// What the revealed sessions say of a person: those in which they sat as a maker before a score sheet with a drink of theirs and a reference, and, where
/// they are the brewer, those of this store (or the demo) whose plan holds an expectation. Read in one view, without the rest of the sessions.
/// Problem unknown for somebody who is not there, storeDamaged.
OwnTastings ownTastings(store::Store& store, const TasterId& who);

}  // namespace oddglass::session
