#pragma once

#include "domain/series.h"
#include "store/step.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>

namespace oddglass::shelf {

/// Cleans a series and numbers its sittings by their day. Problems as `save` of a series says.
void checkSeries(Series& series);

/// A twin is of the same drink, a reference is not; neither is the batch itself. Problem unknown (batch, control), sameLotTwice, notAChoice, empty (control).
void checkControl(SQLite::Database& db, const Series& series);

/// Writes a new series without its sittings; its row.
std::int64_t insertSeries(SQLite::Database& db, const Series& series, Millis at);
void bindControl(SQLite::Statement& row, int index, const Series& series);

/// A series with its sittings.
Series seriesAt(SQLite::Database& db, std::int64_t row);

}  // namespace oddglass::shelf
