#pragma once

#include "print/pages.h"

namespace oddglass::print {

/// A figure as vectors and the table behind it, which `tableLine` names. It is laid out for `figureWidth` and with figureMeasure().
void figureAndTable(Pages& pages, const figures::Figure& figure, const std::string& tableLine);

}  // namespace oddglass::print
