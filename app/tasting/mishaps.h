#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace oddglass::tasting {

/// Something about the cups was said aloud. `heardBy` empty: by everybody. The words may be empty; they are shown after the reveal only.
void said(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::set<Place>& heardBy, const std::string& words);

/// A cup is lost: its spare code takes its place, and the flight starts again. Returns the spare code. Problem codeNotHere, noSpareLeft,
/// alreadySpilled, flightLocked.
Code spilled(store::Store& store, Clock& clock, const SessionId& session, Code code);

/// A cup is lost, whatever the routine: its spare code takes its place and is given; where hands hid the cups and nothing can be poured again unseen, the flight is set
/// aside (`cupLost`) and nothing is given. Problem as above, flightVoid.
std::optional<Code> lostCup(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Code code);

/// Sets a flight aside: it cannot count, and that is settled before the reveal. Words only with the reasons `other` and `misread`; with `misread` they are what was
/// written in place of a code, as it stands there. Problem noSuchPlace,
/// noSuchRound, flightVoid (already set aside), wrongState.
void setAside(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Place place, Round round, VoidReason reason,
              const std::string& words = {});

struct MatsSwapped {
  std::vector<Place> begunAgain;  ///< places that had not locked the round: they put the mats back and begin those cups again
  std::vector<Place> setAside;    ///< places that had: their flight does not count
};

/// Two places had each other's cups before them in a round. What somebody was filling in there is dropped. Problem noSuchPlace, placeEmpty, placeLeft, samePlace,
/// noSuchRound, notThisRound (neither has come to it), wrongState (nobody has begun yet: then the mats are just put back).
MatsSwapped matsSwapped(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Place one, Place other, Round round);

struct WrongPerson {
  bool freed = false;  ///< nothing was locked there: somebody else may sit down, and the person may sit elsewhere
  int setAside = 0;    ///< else: flights that do not count; the place stays as it is
};

/// The wrong person sat at a place. Problem noSuchPlace, placeEmpty, placeLeft, tableClosed.
WrongPerson wrongPerson(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Place place);

}  // namespace oddglass::tasting
