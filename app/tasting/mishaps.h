#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <optional>
#include <set>
#include <string>

namespace oddglass::tasting {

/// Something about the cups was said aloud. `heardBy` empty: by everybody. The words may be empty; they are shown after the reveal only.
void said(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::set<Place>& heardBy, const std::string& words);

/// A cup is lost: its spare code takes its place, and the flight starts again. Returns the spare code. Problem codeNotHere, noSpareLeft,
/// alreadySpilled, flightLocked.
Code spilled(store::Store& store, Clock& clock, const SessionId& session, Code code);

/// A cup is lost, whatever the routine: its spare code takes its place and is given; where hands hid the cups and nothing can be poured again unseen, the flight is set
/// aside (`cupLost`) and nothing is given. Problem as above, flightVoid.
std::optional<Code> lostCup(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Code code);

/// Sets a flight aside: it cannot count, and that is settled before the reveal. Words only with the reason `other`. Problem noSuchPlace,
/// noSuchRound, flightVoid (already set aside), wrongState.
void setAside(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Place place, Round round, VoidReason reason,
              const std::string& words = {});

}  // namespace oddglass::tasting
