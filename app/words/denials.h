#pragma once

#include "words/voice.h"

#include <vector>

namespace oddglass::words {

/// Words that claim more than a blind tasting can: no headline holds one of them, in any case.
const std::vector<std::string>& forbiddenInHeadlines();

/// The only sentences of findings and plans that may hold a forbidden word: each of them denies it. Sources as marked for translation.
const std::vector<const char*>& denyingSentences();

/// The first forbidden word that stands in the text as a word of its own, whatever its case; empty when there is none.
std::string forbiddenWordIn(std::string_view text);

}  // namespace oddglass::words
