#pragma once

#include <optional>
#include <vector>

namespace oddglass {

/// Where a session stands. `broken` (the seal was broken early) and `abandoned` stay on record for good.
enum class State { draft, sealed, tasting, closed, revealed, broken, abandoned };

/// What the log of a session can say.
enum class Event {
  sealed,           ///< the first entry: commitment and hash of the plan
  pourSheetOpened,  ///< somebody looked at the pourer's sheet
  poured,           ///< the pourer said that everything stands ready
  asPoured,         ///< the pourer said what really went into a cup; only a salted digest
  placeTaken, placeLeft, spilled, voided, said,
  matsSwapped,      ///< two places had each other's cups before them for a round
  placeFreed,       ///< the wrong person sat there and had locked nothing; somebody else may sit down
  found,            ///< what stood under the cups of a flight was read off, where no key was drawn; only a salted digest
  opened,           ///< the table is open: the first flight began
  began,            ///< a taster confirmed their cups
  answered,         ///< a hand-in, locked; only a salted digest
  looked,           ///< the key of a sequential plan was opened after a whole round, for *go on* or *stop* only
  judged,           ///< which of the two it was
  closed, revealed, broken, abandoned,
  decided,          ///< what the brewer will do; only a salted digest
  erased,
};

/// One allowed step: in `state`, `event` may be written and leads to `after`.
struct Transition {
  State state;
  Event event;
  State after;
  bool operator==(const Transition&) const = default;
};

/// The transition table. The store holds the same rows and enforces them; a test compares the two.
const std::vector<Transition>& transitions();

/// The state after `event` in `state`, or nothing when it is not allowed there.
std::optional<State> stateAfter(State state, Event event);

}  // namespace oddglass
