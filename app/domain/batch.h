#pragma once

#include "domain/about_lots.h"
#include "domain/shelf.h"
#include "domain/vocabulary.h"

#include <string>
#include <vector>

namespace oddglass {

/// A batch as it is set beside others.
struct Batch {
  Beverage beverage;
  std::string madeOn;           ///< its first dated note or bottling, YYYY-MM-DD; may be empty
  std::vector<Lot> lots;        ///< those put away too, the oldest bottling first
  std::vector<Note> changed;    ///< what was done otherwise than in the batch before, the first day first
};

/// Batches of one recipe, and how many there are.
struct Recipe {
  std::string name;
  int batches = 0;
};

/// What a tasting word that was asked once counts as today.
struct WordNow {
  std::string asked;                  ///< as it stands on the sheet
  std::string now;                    ///< the word it counts as; the same where the list does not know it
  std::vector<WordChange> changes;    ///< its renamings, merges and takings apart, the earliest first
};

/// What the panel said of the lots of some batches, and of whatever else stood beside them.
struct BatchTastings {
  AboutLots about;                    ///< its lots are `lots`
  std::vector<LotId> lots;            ///< the batches' own, batch by batch, then those that stood beside them
  std::vector<std::string> names;     ///< of `lots`: "Heather mead, bottled in May"
  std::vector<int> batchOf;           ///< of `lots`: place among the batches; -1 for what stood beside them
};

}  // namespace oddglass
