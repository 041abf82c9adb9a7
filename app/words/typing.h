#pragma once

#include "domain/plan.h"
#include "words/voice.h"

#include <string>

namespace oddglass::words {

/// How a question of a paper sheet is asked of whoever types it in.
struct TypedQuestion {
  std::string label;   ///< what it is about, short
  std::string hint;    ///< what is typed for what stands on the paper
};

/// `codes`: those that stand in the flight, in one text; `cups`: how many of them are coded.
TypedQuestion typedQuestion(const Voice& voice, Method method, const std::string& attribute, const SheetItem& item, const std::string& codes, int cups);

}  // namespace oddglass::words
