#pragma once

#include "planning/too_early.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// *Too early?*, for a batch: what its readings and bottles say. It never says that a drink is ready, nor that a bottle is safe.
struct TooEarlyWords {
  std::string headline;
  std::vector<std::string> lines;     ///< what the notes say, and what they leave open
  std::vector<std::string> bottles;   ///< after one gushed: where the others stand, a lot a line
  std::vector<std::string> cautions;  ///< pressure, then where the rules and numbers come from
  bool isUrgent = false;              ///< a bottle gushed

  /// What is read under the headline, in its order: after a gusher where the others stand and how to handle them come before all else.
  std::vector<std::string> body() const;
  /// What follows in small print.
  std::vector<std::string> smallPrint() const;
};
TooEarlyWords tooEarlyWords(const Voice& voice, const Beverage& drink, const std::vector<Lot>& lots, const planning::TooEarly& early);

}  // namespace oddglass::words
