#pragma once

#include "domain/batch.h"
#include "store/store.h"

#include <string>
#include <vector>

namespace oddglass::shelf {

/// Recipes of own batches, those put away too, by name. Names that differ only in case are one.
std::vector<Recipe> recipes(store::Store& store);

/// The batches of a recipe, the oldest first; none where nothing is made by it. A recipe is found by its name, compared folded.
std::vector<Batch> batchesOf(store::Store& store, const std::string& recipe);

/// These batches, the oldest first, each once. Problem unknown ("beverage"); notAChoice for a reference.
std::vector<Batch> batches(store::Store& store, const std::vector<BeverageId>& beverages);

/// What was meant by names as they were typed: one recipe, or one batch, which brings all batches of its recipe; or several batches, just these.
/// A batch is meant by its id or its name. Problems naming `argument`: empty, unknown, ambiguous.
std::vector<Batch> batchesMeant(store::Store& store, const std::vector<std::string>& typed, const char* argument);

/// What these words count as today, in their order.
std::vector<WordNow> wordsNow(store::Store& store, const std::vector<std::string>& asked);

}  // namespace oddglass::shelf
