#include "shelf/references.h"

#include "shelf/beverages.h"
#include "shelf/lots.h"

#include <algorithm>

namespace oddglass::shelf {

std::vector<Reference> references(store::Store& store, bool includeArchived) {
  std::vector<Reference> all;
  for (OnShelf& each : find(store, {}, includeArchived)) {
    if (each.beverage.origin != Origin::reference) continue;
    Reference reference;
    reference.lots = lotsOldestFirst(store, each.beverage.id);
    reference.beverage = std::move(each.beverage);
    all.push_back(std::move(reference));
  }
  return all;
}

}  // namespace oddglass::shelf
