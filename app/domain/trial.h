#pragma once

#include "domain/revealed.h"

#include <optional>
#include <utility>

namespace oddglass {

/// What a revealed flight says, by what was really poured. Nothing is answered where the pourer was not sure of a cup, or where what was
/// poured is no flight of the method (three alike in a triangle).

/// The two lots that stood in a flight, lower slot first. A same-different or A-not-A flight may hold one lot only: then both are it.
std::optional<std::pair<Slot, Slot>> comparedIn(const RevealedFlight& flight);

/// The positions that are the right answer, rising: the odd cup, the cup like the marked one, one of the two groups of a tetrad (the one
/// with the first cup), the two of a two-out-of-five, the cup with more. Empty for the methods that are answered in words and for a preference.
std::optional<std::vector<Position>> rightCups(const Plan& plan, const RevealedFlight& flight);

/// True when both lots of the compared ones are one and the same (same-different), or the coded cup holds the marked lot (A-not-A).
std::optional<bool> isSame(const Plan& plan, const RevealedFlight& flight);

/// Whether the answer was right; nothing when nothing was answered, for a preference, and where there is no right answer.
std::optional<bool> isRight(const Plan& plan, const RevealedFlight& flight);

/// The lot of the cup that was liked better; nothing when none was, or the pourer was not sure of it.
std::optional<Slot> preferredLot(const RevealedFlight& flight);

}  // namespace oddglass
