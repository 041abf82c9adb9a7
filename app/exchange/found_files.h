#pragma once

#include "session/found.h"
#include "store/store.h"

#include <filesystem>
#include <vector>

namespace oddglass::exchange {

/// What hands hid, read from CSV. `lot` is an id, a name or a number of the plan; empty: it cannot be read. `code` is a cup's code, or `aside` for the cup that was
/// set aside. Problem badFile with line and column. Whether the session takes it is for session/found.h.

/// Columns place, round, code, lot: what stood under the cups, or what the list says.
std::vector<session::FoundFlight> readFound(store::Store& store, const SessionId& session, const std::filesystem::path& file);

/// A couple's two sheets, columns place, round, mark, lot and place, round, mark, code, joined by their marks. A mark that the first sheet lacks is named in the
/// second by its line.
std::vector<session::FoundFlight> readTwoSheets(store::Store& store, const SessionId& session, const std::filesystem::path& first, const std::filesystem::path& second);

/// Whole bottles, columns bottle, lot: `bottle` is a letter, or its number.
std::vector<session::Peeled> readPeeled(store::Store& store, const SessionId& session, const std::filesystem::path& file);

}  // namespace oddglass::exchange
