#pragma once

#include "domain/plan.h"

#include <optional>
#include <vector>

namespace oddglass::planning {

/// The ways out that a give-away has, the mildest first. What can be seen before tasting can be hidden or made alike; fizz cannot be hidden in the mouth, so mending it
/// means to degas all alike or to match them. Colour, haze, foam and fizz can be what is asked: on a score sheet, or where two lots are compared. That somebody had one
/// of the drinks before can only be gone on with; the other way is to leave that person out (common practice; vessel, amount and temperature alike: ISO 4120:2021).
std::vector<oddglass::WayOut> waysOf(GiveAway check, Method method, std::size_t lots);

/// The first check whose way out is none of `waysOf`, or that is to be asked and is not: a comparison has to ask for more of one thing, of one check only; a score
/// sheet has to ask something before the first sip, about fizz something with a word. Nothing where all fit, or nobody has looked.
std::optional<GiveAway> firstUnfit(const Draft& draft);

/// The same for a sealed plan, which may have come from a file.
std::optional<GiveAway> firstUnfit(const Plan& plan);

}  // namespace oddglass::planning
