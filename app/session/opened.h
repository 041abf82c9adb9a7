#pragma once

#include "blinding/key.h"
#include "domain/logged.h"
#include "session/found.h"
#include "session/plan_now.h"

#include <map>
#include <optional>

namespace oddglass::session {

/// Steps of the opening, inside a transaction; shared by the reveal, the breaking of a seal and the reading in of a record.

/// Opens the key of the vault and writes it out. True when the commitment holds.
bool openKey(SQLite::Database& db, std::int64_t session, const PlanNow& now, const Logged& entry);

/// Writes an open key's rows, of a key that hands hid by what was read off. True when the commitment holds.
bool writeOpened(SQLite::Database& db, std::int64_t session, const PlanNow& now, const blinding::KeyContents& key, const Logged& entry,
                 const std::map<Code, std::optional<Slot>>& really, const std::vector<FoundFlight>& readOff);

/// Cuts the link from loose tasters to their answers.
void forgetLoose(SQLite::Database& db, std::int64_t session);

}  // namespace oddglass::session
