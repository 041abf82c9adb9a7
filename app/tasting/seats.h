#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <string>

namespace oddglass::tasting {

/// Somebody takes a place, once a session. Everything asked here is asked before the first cup.
struct SitDown {
  Place place;
  TasterId taster;
  ShownAs as = ShownAs::signedName;
  bool ofAge = false;
  bool careHeard = false;          ///< heard or read the cautions and the list of what the cups may hold
  bool consents = false;
  bool heardAboutCups = false;     ///< a latecomer who has heard something: recorded as said in their hearing
};

/// Problem noSuchPlace, placeTaken, alreadySeated, notOfAge, careNotHeard, noConsent, pourerSits, unknown, wrongState.
void sit(store::Store& store, Clock& clock, const SessionId& session, const SitDown& who);

/// Whoever sits at a place stops here. Flights not locked are counted as missing; nobody is asked why. Problem placeEmpty, placeLeft.
void stopHere(store::Store& store, Clock& clock, const SessionId& session, Place place);

}  // namespace oddglass::tasting
