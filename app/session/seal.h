#pragma once

#include "blinding/draw.h"
#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <string>

namespace oddglass::session {

struct Sealed {
  std::string sealMark;    ///< four syllables and a digit, to be said aloud to everybody
  std::string commitment;  ///< 64 hex digits
};

/// Freezes the plan as it is now, draws orders and codes for all places, commits to them and holds the bottles, in one transaction.
/// The seed comes from `chance` and from nothing else. Throws what `requireReady` throws, alreadySealed, tooManyCups.
Sealed seal(store::Store& store, Clock& clock, Chance& chance, const SessionId& session);

/// The same with the two streams given apart, for the test that varies one of them. No page, command or file leads here.
Sealed sealDrawnFrom(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const blinding::Seed& seed, blinding::Streams streams);

}  // namespace oddglass::session
