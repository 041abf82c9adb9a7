#pragma once

#include "domain/plan.h"
#include "planning/gap.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// What a score sheet can find, before anything is poured.
struct SheetPlanWords {
  std::string headline;             ///< the smallest gap that would show, in one sentence
  std::vector<std::string> lines;   ///< what it rests on, and how the cups are shared out
  std::vector<std::string> cautions;  ///< what this panel cannot say, and that few friends will be guessed
};
SheetPlanWords sheetPlanWords(const Voice& voice, const planning::SheetOutlook& outlook);

/// One question in a list of them: "a line, 0 to 100: sweet (limit 10; one of those the plan is about)".
std::string sheetItemLine(const Voice& voice, const SheetItem& item);

/// The kind of a question by name: "a line", "too little, too much", "tick the words".
std::string kindName(const Voice& voice, ItemKind kind);

/// What a lot is in the plan: "compared", "held against", "flawed on purpose", "warm-up cup".
std::string roleName(const Voice& voice, LotRole role);

}  // namespace oddglass::words
