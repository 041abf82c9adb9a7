#pragma once
#include "words/voice.h"

namespace oddglass::ui {

/// How the window speaks: Qt's translations, the system's decimal mark and time zone.
const words::Voice& voice();

/// Today by the computer's calendar, YYYY-MM-DD.
std::string today();

}  // namespace oddglass::ui
