#pragma once

#include "session/look.h"
#include "words/voice.h"

#include <string>

namespace oddglass::cli {

/// An entry of a session's log in plain words.
std::string entryLine(const words::Voice& voice, const session::HistoryLine& line);

/// The latest entry of this kind, as it stands in the log.
session::HistoryLine lastEntry(store::Store& store, const SessionId& session, Event event);

}  // namespace oddglass::cli
