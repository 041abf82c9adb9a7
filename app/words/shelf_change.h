#pragma once

#include "domain/shelf_change.h"
#include "words/voice.h"

namespace oddglass::words {

/// What was done, in one sentence: "“Heather mead” was put away."
std::string shelfChangeLine(const Voice& voice, const ShelfChange& change);

}  // namespace oddglass::words
