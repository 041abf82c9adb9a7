#pragma once

#include "domain/sheet.h"

#include <vector>

namespace oddglass {

/// True for kinds whose answers are points on a scale that means are taken of. Only these have gaps, and gaps that are too small to matter.
bool hasPoints(ItemKind kind);

/// The parts of a sheet in which a kind may be asked, the usual one first: all cups together in the last part, one cup in any other.
std::vector<Part> partsOf(ItemKind kind);

/// True for kinds that may be asked about a word.
bool takesWord(ItemKind kind);

}  // namespace oddglass
