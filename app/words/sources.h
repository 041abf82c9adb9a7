#pragma once

#include "planning/outlook.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// Where the sums of a page come from, for those who ask: the method with its standard or source, how it is worked out, what is our own. In words; each
/// source as the code that does it names it.

/// Of a plan that compares: the method, how its chances are worked out, and the rule of a plan with looks.
std::vector<std::string> planSources(const Voice& voice, Method method, const planning::Outlook& outlook, int gammaPm);
/// Of a plan of score sheets with these questions.
std::vector<std::string> sheetPlanSources(const Voice& voice, const std::vector<SheetItem>& items);
/// Of going on or stopping after whole rounds.
std::string stoppingSource(const Voice& voice);
/// Of a series, of batches side by side, and of a person beside the room.
std::vector<std::string> overTimeSources(const Voice& voice);
std::vector<std::string> sideBySideSources(const Voice& voice);
std::vector<std::string> roomSources(const Voice& voice);

}  // namespace oddglass::words
