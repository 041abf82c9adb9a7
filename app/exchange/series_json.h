#pragma once

#include "exchange/node.h"
#include "exchange/take_in.h"

namespace oddglass::exchange {

/// Adds "series": all of them, the archived ones too.
void writeSeries(store::Store& store, canon::Json& file);

/// Reads this list and keeps its series; counts new ones in `brought`. Part of the caller's transaction, after the sessions.
void bringSeries(store::Store& store, Clock& clock, const Node& file, Brought& brought);

/// Reads it without a store, for the form alone.
void requireSeries(const Node& file);

}  // namespace oddglass::exchange
