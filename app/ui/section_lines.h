#pragma once
#include "words/came_out.h"

#include <QStringList>

namespace oddglass::ui {

/// What stands under a heading, a sentence a line; and its table, a row a line, where no figure shows it.
QStringList linesOf(const words::OutSection& section, bool withTable);

}  // namespace oddglass::ui
