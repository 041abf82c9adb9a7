#pragma once

#include "domain/plan.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// "swallowed", "spat out", "as each one likes".
std::string mouthfulName(const Voice& voice, Mouthful mouthful);

/// How the drinks are served, as far as it is on record: vessel, temperature, what becomes of a mouthful.
std::vector<std::string> servedLines(const Voice& voice, const Serving& serving);

/// What a test report should hold and this record does not.
std::string notRecordedLine(const Voice& voice, const Serving& serving);

}  // namespace oddglass::words
