#pragma once

#include "blinding/orders.h"

namespace oddglass::blinding {

/// Deals the flights of a score sheet by the rule in blinding/orders.h, ordered by place, then round. Problem(outOfRange) naming the argument for
/// orders that are empty, not equally long, longer than 40 cups, or that hold other samples than there are.
std::vector<FlightOrder> dealSheet(const Deal& deal, Stream& orders);

}  // namespace oddglass::blinding
