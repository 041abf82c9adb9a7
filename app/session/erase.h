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
  bool bytesGone = true;                           ///< false when another program reads the file just now: the bytes go when the store is opened to write next time
};

/// Destroys a person's name and words, or all their answers too, in every session; their bytes are gone from the file, the chains still hold. The taster leaves the
/// shelf in both cases. `sure` must be true: askTwice. Answers given loose cannot be found after the close. Problem unknown.
Erased erase(store::Store& store, Clock& clock, Chance& chance, const TasterId& taster, ErasureKind kind, bool sure);

/// Takes all answers of one place back while the table is open: they are destroyed, the place is left, and nobody is asked why. Works for everybody who sits there, named or
/// not. `sure` must be true: askTwice. Problem noSuchPlace, placeEmpty, tooLateToTakeBack (after the close). Returns false while another program reads the file: the
/// bytes go when the store is opened to write next time.
bool takeBack(store::Store& store, Clock& clock, const SessionId& session, Place place, bool sure);

/// Backups of this store that hold this taster. One that cannot be read, or whose folder is not there just now, may hold them and is named.
std::vector<std::filesystem::path> copiesHolding(store::Store& store, Clock& clock, Chance& chance, const TasterId& taster);

}  // namespace oddglass::session
