#pragma once

#include "domain/chance.h"
#include "domain/series.h"
#include "store/store.h"

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace oddglass::exchange {

/// Sittings of a series as all-day events of an iCalendar text (RFC 5545): lines end with CR LF and hold 75 bytes at most, text is escaped. `summaries` are the
/// titles of the events, one for each sitting; no score and no finding belongs in them. An event keeps its id however often it is written, so that a calendar
/// replaces it. `at` is when this was written.
std::string calendarOf(const Series& series, const std::vector<Sitting>& sittings, const std::vector<std::string>& summaries, Millis at);

/// Writes the sittings of a series that are still to come; returns how many these are. `titleOf` names one. Problem unknown ("series"), storeReadOnly, diskFull ("out").
int writeCalendar(store::Store& store, Clock& clock, const SeriesId& series, const std::function<std::string(const Series&, const Sitting&)>& titleOf, const std::filesystem::path& file);

}  // namespace oddglass::exchange
