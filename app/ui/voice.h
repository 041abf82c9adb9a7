#pragma once
#include "words/voice.h"

namespace oddglass::ui {

/// How the window speaks: Qt's translations, the reader's language, units, decimal mark and time zone. May be asked from any thread; what it gives stays
/// as it is for whoever holds it, also when the reader chooses otherwise meanwhile.
const words::Voice& voice();

/// From now on `voice()` tells amounts in these units and speaks this language (BCP 47), whose translations must have been installed.
void speak(const words::Units& units, const std::string& language);

/// Today by the computer's calendar, YYYY-MM-DD.
std::string today();

}  // namespace oddglass::ui
