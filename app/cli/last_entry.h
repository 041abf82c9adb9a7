#pragma once

#include "report/entry_line.h"

namespace oddglass::cli {

using report::entryLine;

/// The latest entry of this kind, as it stands in the log.
session::HistoryLine lastEntry(store::Store& store, const SessionId& session, Event event);

}  // namespace oddglass::cli
