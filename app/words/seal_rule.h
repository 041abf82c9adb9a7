#pragma once

#include "words/seal.h"

namespace oddglass::words {

/// How a plan will be judged, sentence by sentence, as it stands before the seal.
std::vector<std::string> sealRule(const Voice& voice, const SealFacts& facts);

}  // namespace oddglass::words
