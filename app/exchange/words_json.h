#pragma once

#include "exchange/node.h"
#include "exchange/take_in.h"

namespace oddglass::exchange {

/// Adds "words" (own tasting words), "merged_words" and "retired_words" to `file`.
void writeWords(store::Store& store, canon::Json& file);

/// Reads these three lists and puts them into the vocabulary; counts own words in `brought`. Part of the caller's transaction.
void bringWords(store::Store& store, Clock& clock, const Node& file, Brought& brought);

/// Reads them without a store, for the form alone.
void requireWords(const Node& file);

}  // namespace oddglass::exchange
