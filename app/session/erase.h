#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <filesystem>
#include <string>
#include <vector>

namespace oddglass::session {

struct Erased {
  int sessions = 0;                                ///< sessions in which something was destroyed
  std::vector<std::filesystem::path> copies;       ///< backups that still hold the person: they must be deleted by hand
};

/// Destroys a person's name and words, or all their answers too, in every session; their bytes are gone from the file, the chains still hold. The taster leaves the
/// shelf in both cases. `sure` must be true: askTwice. Answers given loose cannot be found after the close. Problem unknown.
Erased erase(store::Store& store, Clock& clock, Chance& chance, const TasterId& taster, ErasureKind kind, bool sure);

/// Backups of this store that hold this taster, as far as they can be read.
std::vector<std::filesystem::path> copiesHolding(store::Store& store, Clock& clock, Chance& chance, const TasterId& taster);

}  // namespace oddglass::session
