#pragma once

#include "figures/gaps.h"
#include "insight/points.h"

namespace oddglass::report {

/// A verdict as it is drawn.
figures::GapVerdict drawn(insight::GapVerdict verdict);

/// A verdict as files and the command line name it.
const char* nameOfVerdict(insight::GapVerdict verdict);

/// One limit of all rows is drawn through all of them; limits that differ stay with their rows.
void shareLimit(figures::GapPicture& picture);

}  // namespace oddglass::report
