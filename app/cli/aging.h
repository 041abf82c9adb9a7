#pragma once

#include "cli/desk.h"
#include "domain/series.h"

namespace oddglass::cli {

/// The series whose id begins as typed. Problems empty, unknown, ambiguous.
SeriesId seriesOf(store::Store& store, const Given& given);

}  // namespace oddglass::cli
