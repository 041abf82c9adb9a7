#pragma once

#include "exchange/node.h"
#include "exchange/take_in.h"

#include <set>

namespace oddglass::exchange {

/// The keys of a file's top level, and what they must be: format "oddglass", version 1. Problem badFile, fileNewer.
void requireForm(const Node& file);

/// The beginning of a file: format, version, who wrote it and when.
canon::Json heading(Clock& clock);

/// Which part of a shelf goes into a file: everything, or these lots and people.
struct ShelfPart {
  bool everything = false;
  std::set<LotId> lots;
  std::map<TasterId, Taster> people;  ///< as they are to be written
};

/// Adds "beverages", "lots", "notes" and "tasters" to `file`; with everything also the vocabulary as it differs from the program's own.
void writeShelf(store::Store& store, const ShelfPart& part, canon::Json& file);

/// Reads these lists of `file` and puts them onto the shelf; counts them in `brought`. Part of the caller's transaction.
void bringShelf(store::Store& store, Clock& clock, const Node& file, Brought& brought);

/// Reads them without a store, for the form alone.
void requireShelf(const Node& file);

}  // namespace oddglass::exchange
