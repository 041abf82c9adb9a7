#pragma once

#include "blinding/stream.h"
#include "domain/numbers.h"
#include "domain/plan.h"

#include <optional>
#include <vector>

namespace oddglass::blinding {

/// Which lot stands at each position of one taster's flight, from the first position on. Part of the key.
struct FlightOrder {
  Place place;
  Round round;
  std::vector<Slot> lots;
  bool operator==(const FlightOrder&) const = default;
};

/// What the orders of a score sheet depend on.
struct SheetDeal {
  std::vector<std::vector<int>> orders;  ///< of samples from 1 on, all equally long; see SheetPlan::orders
  std::vector<Slot> coded;               ///< the lots that are coded, in the plan's order
  std::vector<Slot> mayDouble;           ///< those of them of which one is poured twice; empty: none is
};

/// What the orders of a plan depend on.
struct Deal {
  Method method = Method::triangle;
  std::optional<Slot> expected{};  ///< the lot that a 3-AFC shows once; 1 or 2
  std::optional<Slot> marked{};    ///< the lot of the marked cup; nothing: either
  int comparisons = 1;           ///< 1, or 3 for three lots in pairs
  int places = 1;                ///< 1 or more
  int rounds = 1;                ///< flights of each taster in all, a multiple of `comparisons`
  std::optional<SheetDeal> sheet{};  ///< of a score sheet, and then always

  int cupsPerFlight() const;     ///< the marked one among them
};

/// The orders of a method as lots 1 and 2, from the first cup on; a marked cup is the first one. They are those of
/// stats/design/servings.h, in that order:
/// triangle 122 212 221 112 121 211; tetrad 1122 1212 1221 2112 2121 2211; pair and preference 12 21; same-different 11 22 12 21;
/// two-out-of-five 11222 ... 22211, then 11122 ... 22111, each in rising order; duo-trio 112 121 212 221, of which a constant reference
/// leaves those that begin with its lot; 3-AFC 122 212 221 for lot 1, 112 121 211 for lot 2; A-not-A 11 12 for lot 1, 22 21 for lot 2.
std::vector<std::vector<Slot>> ordersOf(const Deal& deal);

/// Deals the orders over the places, for each round by itself. With k orders places 1 to k get each order once, k + 1 to 2k get each once,
/// and so on; a last block that is not full gets orders that differ from each other. Real places have the lowest numbers, so they fill whole
/// blocks first.
/// Rule: for each round, for each block of k places, the indices 0 to k - 1 of `ordersOf` are shuffled, and the places take them in turn.
/// With three lots a round is three flights, one for each pair of lots (1 2, 1 3, 2 3), dealt one after the other by that rule with the lower
/// lot as 1; then, for each block of six places, the indices of the six sequences 123 132 213 231 312 321 are shuffled, and each place tastes the
/// pairs in the sequence it takes.
/// A score sheet: where a lot is poured twice, a number below the count of lots that may be says which. The coded lots, and at the end that one
/// once more, are shuffled: the first is then sample 1 of `orders`, and so on. The orders are dealt by the rule above; a marked cup comes first.
/// Result: ordered by place, then round. Problem(outOfRange), naming the argument, for what is impossible.
std::vector<FlightOrder> dealOrders(const Deal& deal, Stream& orders);

}  // namespace oddglass::blinding
