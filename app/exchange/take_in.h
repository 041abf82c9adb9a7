#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "session/record.h"
#include "store/store.h"

#include <filesystem>
#include <vector>

namespace oddglass::exchange {

/// What a file brought into the store.
struct Brought {
  int beverages = 0, lots = 0, notes = 0, tasters = 0;  ///< new on the shelf
  int words = 0;                        ///< own tasting words that are new here
  int mergedWords = 0, retiredWords = 0; ///< words that were merged or retired by the file
  int series = 0;                       ///< aging series that are new here
  int alreadyThere = 0;                 ///< records whose id was known; they stay as they are here
  std::vector<SessionId> sessions;      ///< sessions that came whole
  std::vector<SessionId> leftOut;       ///< sessions whose key was never opened where the file was written: a plan alone cannot be carried on here
};

/// Puts beverages, lots, notes, tasters and words of an interchange file onto the shelf: the whole file or nothing of it. A file with sessions is
/// refused (notAChoice, "sessions"): it wants `importFile`. All Problems name the file, the line and the path.
Brought put(store::Store& store, Clock& clock, const std::filesystem::path& file);

/// Takes in an interchange file with its sessions: everything is checked first (form, references, the chain of each session, plan,
/// commitment, orders and codes from the seed, digests), then the whole file is written or nothing of it.
/// Problem fileNewer, brokenReference, doesNotVerify, sessionThere and those of `readDocument`.
Brought importFile(store::Store& store, Clock& clock, Chance& chance, const std::filesystem::path& file, CameFrom as = CameFrom::import);

/// A session of a file, and what a check of it found.
struct CheckedSession {
  SessionId id;
  std::string title;
  bool isSealedPlan = false;  ///< only its plan stands in the file: nothing to check yet
  session::Verification found;
};

/// Checks an interchange file without a store. The form must be right (Problems as above); what the record proves is in the answer.
std::vector<CheckedSession> verifyFile(const std::filesystem::path& file);

}  // namespace oddglass::exchange
