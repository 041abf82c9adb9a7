#pragma once

#include "canon/canonical.h"
#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <filesystem>
#include <vector>

namespace oddglass::exchange {

/// One session in the interchange form (demo_sessions/README.md), with the drinks it pours and the people who asked to be shown. Before the
/// reveal only its plan: nothing that depends on the key, and no answer. Problem unknown, notSealed.
canon::Json interchange(store::Store& store, Clock& clock, const SessionId& session);

/// The whole shelf and every session that is sealed or over.
canon::Json interchangeOfAll(store::Store& store, Clock& clock);

/// Writes it into a folder, which is made when it is not there, under a name that tells nothing ("oddglass-1a2b3c4d.json", "oddglass-all.json"). A file
/// of that name is replaced only after the new one is whole. Problem storeReadOnly, diskFull ("out").
std::filesystem::path exportJson(store::Store& store, Clock& clock, const SessionId& session, const std::filesystem::path& folder);
std::filesystem::path exportAllJson(store::Store& store, Clock& clock, const std::filesystem::path& folder);

/// The same as tables: answers (one answer a row), trials (one flight a row), cups, and a codebook that explains every column. Before the
/// reveal the cups of the plan only. Cells that begin with = + - or @ get an apostrophe, so that no spreadsheet works them out.
std::vector<std::filesystem::path> exportCsv(store::Store& store, const SessionId& session, const std::filesystem::path& folder);

}  // namespace oddglass::exchange
