#pragma once

#include "cli/desk.h"
#include "domain/series.h"

namespace oddglass::cli {

/// The series whose id begins as typed. Problems empty, unknown, ambiguous.
SeriesId seriesOf(store::Store& store, const Given& given);

/// The questions of a sheet that is ready to be used, by its name; none where none was given. Problem notAChoice.
std::vector<SheetItem> sheetNamed(const words::Voice& voice, const Given& given);

}  // namespace oddglass::cli
