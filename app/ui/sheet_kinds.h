#pragma once
#include "domain/sheet.h"

#include <QString>
#include <vector>

namespace oddglass::ui {

/// What a sheet may ask, in the order in which it is offered.
const std::vector<ItemKind>& sheetKinds();

/// "before anything is smelled", "by smell alone", "when it is tasted" and so on.
QString partWord(Part part);

/// The gap that is offered first as too small to matter, in the question's own points.
int usualLimit(ItemKind kind);

}  // namespace oddglass::ui
