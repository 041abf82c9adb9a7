#pragma once

#include "domain/plan.h"
#include "planning/gap.h"
#include "words/seal.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// What the page before the seal is told of a score sheet. Lots are those of the draft as they stand on the shelf, with their roles.
struct SheetSealFacts {
  Draft draft;
  std::vector<PlannedLot> lots;
  planning::SheetOutlook outlook;
  Claim claim = Claim::people;
  int makers = 0;      ///< makers who taste beside a panel
  std::string pourer;  ///< empty when nobody is named
};

/// The promise of a score sheet on one page: what is asked about which drink, how it will be judged, what will be done.
SealPage sheetSealPage(const Voice& voice, const SheetSealFacts& facts);

/// The question that a sheet answers, with its drinks by name: "What is Heather mead like, and what does it lack next to Bought mead?"
std::string sheetQuestion(const Voice& voice, Question question, const std::vector<PlannedLot>& lots);

}  // namespace oddglass::words
