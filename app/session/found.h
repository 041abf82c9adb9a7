#pragma once

#include "canon/canonical.h"
#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace oddglass::session {

/// What hands hid is read off here, once a flight. Before the reveal it lies closed up like the key, and nothing but what is void depends on it.

/// What stood under one cup.
struct FoundLine {
  Code code;                 ///< 0: the cup that was set aside
  std::optional<Slot> slot;  ///< nothing: it cannot be read
  bool operator==(const FoundLine&) const = default;
};

/// What was read off of one flight, cup by cup.
struct FoundFlight {
  Place place;
  Round round;
  std::vector<FoundLine> lines;
  bool operator==(const FoundFlight&) const = default;
};

/// A flight that is to be read off, or was. No lot.
struct ToRead {
  Place place;
  Round round;
  std::vector<std::pair<Position, Code>> cups;  ///< without the marked one, which is open
  bool hasAside = false;   ///< one more cup stands aside
  bool isVoid = false;     ///< set aside: it may be read off, and need not
  bool isRead = false;
  bool mayRead = false;    ///< it may be read off now
};

/// The flights of taken places that were locked or set aside, by round, then place. Problem keyDrawn where the program drew the key.
std::vector<ToRead> toRead(store::Store& store, const SessionId& session);

/// Keeps what was read off of a flight, and sets the flight aside where a cup could not be read or where it does not add up: each lot as often as hands
/// poured it, the cup that was set aside counted. Whatever was set aside here is given. Alone it may be done once the flight is locked or set aside, in every
/// other routine after the close; never after the reveal. Problem keyDrawn, placeEmpty, noSuchRound, notTastedYet, tableOpen, alreadyRead, cupsNotTold, codeNotHere,
/// unknown (a lot), wrongState.
std::optional<VoidReason> readOff(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const FoundFlight& found, ReadBy by);

/// Several flights, all or none.
std::vector<std::optional<VoidReason>> readOffAll(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::vector<FoundFlight>& all, ReadBy by);

/// A couple's two sheets: whoever poured wrote which mark is which lot, whoever put the codes on wrote which mark got which.
struct MarkedLot {
  Place place;
  Round round;
  std::string mark;
  std::optional<Slot> slot;
};
struct MarkedCode {
  Place place;
  Round round;
  std::string mark;
  Code code;  ///< 0: the cup that was set aside
};

/// Joins both sheets by their marks. Problem markNotThere, alreadyThere (a mark twice on one sheet), naming the argument `mark`.
std::vector<FoundFlight> joined(const std::vector<MarkedLot>& first, const std::vector<MarkedCode>& second);

/// Whole bottles: what stood under the label of each letter, 1 for A. Every flight that was locked is read off by it, in one go. Problem bottlesNotTold,
/// unknown, keyDrawn, tableOpen, alreadyRead.
struct Peeled {
  int bottle = 1;
  std::optional<Slot> slot;
};
std::vector<std::optional<VoidReason>> peel(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::vector<Peeled>& all, ReadBy by);

/// The text that the log's digest of a read flight is made of: canonical {"lines": [[code, slot or null], ...], "place", "round"}.
std::string foundText(const FoundFlight& found);

/// Why a flight cannot count by what was read off of it; nothing when it adds up.
std::optional<VoidReason> whyNotCounted(const Plan& plan, const FoundFlight& found);

/// The lots of a flight's cups by what was read off, the marked cup by what everybody was told; nothing for a cup that cannot be read.
std::vector<std::pair<Code, std::optional<Slot>>> linesOf(const Plan& plan, const FoundFlight& found);

}  // namespace oddglass::session
