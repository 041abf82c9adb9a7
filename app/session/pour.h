#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::session {

/// A cup on the pourer's sheet. This type is the key in the open: it never reaches a page other than the sheet.
struct PourLine {
  Code code;
  Place place;
  Round round;
  Position position;
  int spare = 0;            ///< above 0: the code to use when the cup is spilled
  Slot slot;
  bool isPoured = false;    ///< ticked
  bool isSpilled = false;   ///< replaced by its spare code
  std::optional<std::optional<Slot>> really;  ///< what the pourer said went in: another lot, or "not sure" (nothing)
};

struct PourLot {
  Slot slot;
  std::string name;         ///< beverage and lot
  std::vector<PourLine> lines;
};

/// The pourer's sheet. Opening it is logged before it can be seen.
struct PourSheet {
  std::string guestTitle;
  std::string sealMark;
  int cupMl = 0;
  int rounds = 1;
  int cupsPerFlight = 3;
  int evenings = 1;
  int wave = 0;                        ///< how many places are served at a time; 0: all at once
  int places = 0;
  bool hasMarked = false;              ///< the first cup of each flight gets a mark beside its code
  int openings = 0;                    ///< this one included
  std::vector<PourLot> bottleByBottle; ///< pour order: round by round, one lot after the other
  std::vector<PourLine> placeByPlace;  ///< the second check; spare codes at the end
  std::string nameOf(Slot slot) const;
};

/// What is poured in one go: the cups of one lot in one round, for the places that are served together.
struct PourStep {
  Round round;
  int evening = 1;
  Place first, last;                   ///< the places of the wave
  std::string name;                    ///< of the lot
  std::vector<PourLine> lines;
};

/// Whether the places are served in more than one wave.
bool isInWaves(const PourSheet& sheet);

/// The steps in the order in which they are poured: round by round, wave by wave, one lot after the other. Spare codes are in none of them.
std::vector<PourStep> pourSteps(const PourSheet& sheet);

/// Problem wrongState (after the close), notSealed, keyByHand (where hands hide the key there is no sheet; so for all that follows but `slotNamed` and `sayPoured`).
PourSheet openPourSheet(store::Store& store, Clock& clock, const SessionId& session);

/// Ticks a cup as poured or takes the tick back. Kept with the key: ticks would betray the lots. Problem codeNotHere.
void tick(store::Store& store, Clock& clock, const SessionId& session, Code code, bool isPoured);

/// What really went into a cup: another lot, or nothing when the pourer is not sure (its flight is set aside). Sealed like the key. Problem codeNotHere, unknown.
void pouredReally(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Code code, std::optional<Slot> slot);

/// Several at once, all or none.
struct ReallyPoured {
  Code code;
  std::optional<Slot> slot;
};
void pouredReallyAll(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::vector<ReallyPoured>& all);

/// The slot of a lot of this session, named by lot id, lot name, "beverage, lot" or its number in the plan. Needs no key. Problem unknown, ambiguous.
Slot slotNamed(store::Store& store, const SessionId& session, const std::string& lot);

/// The pourer says that everything stands ready.
void sayPoured(store::Store& store, Clock& clock, const SessionId& session);

}  // namespace oddglass::session
