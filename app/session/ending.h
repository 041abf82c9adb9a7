#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "domain/problem.h"
#include "store/store.h"

#include <filesystem>
#include <optional>
#include <string>

namespace oddglass::session {

struct Closed {
  int answered = 0;
  int missing = 0;   ///< flights of taken places without an answer, void ones apart
  int voided = 0;
};

/// Ends the tasting. Missing answers stay missing and are counted. The link from loose tasters to their names goes now.
Closed close(store::Store& store, Clock& clock, const SessionId& session);

struct Revealed {
  bool commitmentHolds = false;      ///< false is shown first and for good; the session opens all the same
  std::filesystem::path backup;      ///< the copy made afterwards; empty when none could be made
  std::optional<Problem> backupProblem;  ///< why not
};

/// Opens the key, checks the commitment, books what was poured, in one transaction; then makes a backup. Problem wrongState before the close; notReadOff, naming the place and the round,
/// while a flight that counts has not been read off where hands hid the key: read it off, or set it aside.
Revealed reveal(store::Store& store, Clock& clock, const SessionId& session);

/// Ends a session by looking early: the key is open, no verdict can come of it, and it stays on record for good. `sure` must be true: askTwice. A reason is asked for: empty.
void breakSeal(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::string& reason, bool sure);

/// Gives a sealed session up without opening the key. Stays on record for good.
void abandon(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::string& reason, bool sure);

/// One line on what will be done. The last one counts. Problem empty, tooLong (500), wrongState.
void decide(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::string& text);

}  // namespace oddglass::session
