#pragma once

#include "domain/sheet.h"
#include "words/voice.h"

#include <string>

namespace oddglass::words {

/// One answer of a score sheet, with what it was about: "sweet 40", "liking 7", "body: too little", "butter". Empty for a word that was not ticked.
std::string answeredTo(const Voice& voice, const SheetItem& item, int value);

}  // namespace oddglass::words
