#pragma once

#include "domain/numbers.h"
#include "words/voice.h"

#include <vector>

namespace oddglass::words {

/// What to do after the wrong person sat at a place: it is free again, or flights were set aside and the place stays as it is.
std::string wrongPersonLine(const Voice& voice, Place place, bool isFreed, int setAside);

/// What to do after two places had each other's cups: who begins again, and whose round was set aside.
std::string matsSwappedLine(const Voice& voice, const std::vector<Place>& beginAgain, const std::vector<Place>& setAside);

/// Said before answers are taken back: by name or as "place 4".
std::string takeBackQuestion(const Voice& voice, const std::string& who);

}  // namespace oddglass::words
