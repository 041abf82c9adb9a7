#pragma once

#include "domain/chance.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace oddglass::store {

/// What this program writes into `PRAGMA application_id`: the bytes of "OdGl".
inline constexpr int applicationId = 1331972972;

/// The newest shape of the file that this program knows.
int newestVersion();

/// The version of the file: 0 for an empty one.
int versionOf(SQLite::Database& db);

/// Brings the file to the newest version, one transaction a step, each with its version bump inside.
void migrate(SQLite::Database& db, Clock& clock, Chance& chance);

/// Brings the file to `version` only; for tests of later steps.
void migrateTo(SQLite::Database& db, int version, Clock& clock, Chance& chance);

}  // namespace oddglass::store
