#pragma once

#include "domain/revealed.h"

namespace oddglass::session {

/// Adds one answer of a flight without a score sheet to it. `codes` are those that stood before the taster, by position; what cannot be is left out.
void addReply(RevealedFlight& flight, const Plan& plan, Item item, int value, const std::vector<Code>& codes);

}  // namespace oddglass::session
