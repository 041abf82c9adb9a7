#pragma once

#include "domain/chance.h"
#include "store/store.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <functional>
#include <vector>

namespace oddglass::store {

/// What this program writes into `PRAGMA application_id`: the bytes of "OdGl".
inline constexpr int applicationId = 1331972972;

/// The newest shape of the file that this program knows.
int newestVersion();

/// The version of the file: 0 for an empty one.
int versionOf(SQLite::Database& db);

/// One step to the next version, run in a transaction of its own together with the version bump. A step that rebuilds a table makes its triggers again.
using Step = std::function<void(SQLite::Database&, Clock&, Chance&)>;

/// The steps from an empty file to the newest version.
const std::vector<Step>& steps();

/// Runs the steps that the file has not had. A file that holds something is copied first (keepCopy); when that or a step fails, the file stands at the
/// last version it reached whole.
void bringUp(Store& store, const std::vector<Step>& steps, Clock& clock, Chance& chance);

}  // namespace oddglass::store
