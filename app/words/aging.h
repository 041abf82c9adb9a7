#pragma once

#include "planning/aging.h"
#include "words/voice.h"

namespace oddglass::words {

/// What a series would take and could show, before a bottle is put aside.
struct AgingWords {
  std::string headline;                 ///< bottles needed, and whether there are enough
  std::vector<std::string> lines;
  std::string cheaper;                  ///< empty where nothing cheaper is offered
};
AgingWords agingWords(const Voice& voice, const planning::AgingSetup& setup, const planning::AgingOutlook& outlook);

}  // namespace oddglass::words
