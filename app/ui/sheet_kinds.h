#pragma once
#include "domain/sheet.h"

#include <QString>
#include <vector>

namespace oddglass::ui {

/// What a sheet may ask, in the order in which it is offered.
const std::vector<ItemKind>& sheetKinds();

/// When such a question may be asked: all cups together in the last part, one cup in any other.
std::vector<Part> partsOf(ItemKind kind);

/// "before anything is smelled", "by smell alone", "when it is tasted" and so on.
QString partWord(Part part);

/// True for kinds whose points have a gap that is too small to matter.
bool hasLimit(ItemKind kind);

/// True for kinds that may be asked about a word.
bool takesWord(ItemKind kind);

/// The gap that is offered first as too small to matter, in the question's own points.
int usualLimit(ItemKind kind);

}  // namespace oddglass::ui
