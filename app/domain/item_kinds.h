#pragma once

#include "domain/sheet.h"

#include <vector>

namespace oddglass {

/// True for kinds whose answers are points on a scale that means are taken of. Only these have gaps, and gaps that are too small to matter.
bool hasPoints(ItemKind kind);

/// True for the question of overall liking, on nine points: what leans, hints and a series without a word are worked out from.
/// Asked of anything that names its question by `kind`, `part` and `word`.
inline constexpr auto isOverallLiking = [](const auto& asked) { return asked.kind == ItemKind::liking && asked.part == Part::main && asked.word.empty(); };

/// The parts of a sheet in which a kind may be asked, the usual one first: all cups together in the last part, one cup in any other.
std::vector<Part> partsOf(ItemKind kind);

/// True for kinds that may be asked about a word.
bool takesWord(ItemKind kind);

}  // namespace oddglass
