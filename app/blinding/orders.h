#pragma once

#include "blinding/stream.h"
#include "domain/numbers.h"

#include <vector>

namespace oddglass::blinding {

/// Which lot stands at each position of one taster's flight, from the first position on. Part of the key.
struct FlightOrder {
  Place place;
  Round round;
  std::vector<Slot> slots;
  bool operator==(const FlightOrder&) const = default;
};

/// Deals the six triangle orders over the places, for each round by itself: places 1 to 6 get each order once, 7 to 12 get
/// each once, and so on; a last block that is not full gets orders that differ from each other. Real places have the lowest
/// numbers, so they fill whole blocks first.
/// Rule: for each round, for each block of six places, the indices 0 to 5 of stats::triangleOrders are shuffled, and the
/// places take them in turn. Result: ordered by place, then round. `places` and `rounds` are 1 or more, else Problem(outOfRange).
std::vector<FlightOrder> dealTriangles(int places, int rounds, Stream& orders);

}  // namespace oddglass::blinding
