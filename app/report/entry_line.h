#pragma once

#include "session/look.h"
#include "words/voice.h"

#include <string>

namespace oddglass::report {

/// One entry of a session's log as the history tells it; without what was said or written where `showsWords` is false.
std::string entryLine(const words::Voice& voice, const session::HistoryLine& line, bool showsWords = true);

}  // namespace oddglass::report
