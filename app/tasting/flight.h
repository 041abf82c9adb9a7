#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <optional>
#include <vector>

namespace oddglass::tasting {

struct FlightCup {
  Code code;
  Position position;
  bool isMarked = false;   ///< the one to compare with; it is not chosen
  bool operator==(const FlightCup&) const = default;
};

/// The cups one taster has before them, in their order from left to right, and what is asked. No lot, ever.
struct Flight {
  Place place;
  Round round;
  int rounds = 1;
  Method method = Method::triangle;
  std::string attribute;   ///< "more what", where the method asks for one
  std::vector<FlightCup> cups;
  std::vector<SheetItem> items;
  bool began = false;   ///< the taster has confirmed these cups
  int pauseSeconds = 0; ///< wait between two cups of a score sheet
  std::string cleanser; ///< the same for everybody; may be empty
};

/// The flight that a place has to taste next; nothing when all are locked or set aside. Problem placeEmpty, placeLeft, wrongState.
std::optional<Flight> nextFlight(store::Store& store, const SessionId& session, Place place);

/// The taster says that exactly these cups stand before them, left to right. The first one opens the table. Problem notThisRound, placeEmpty, placeLeft, wrongState.
void begin(store::Store& store, Clock& clock, const SessionId& session, Place place, Round round);

}  // namespace oddglass::tasting
