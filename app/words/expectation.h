#pragma once

#include "domain/expectation.h"
#include "words/voice.h"

namespace oddglass::words {

/// What a plan is expected about, as far as its words need it.
struct ExpectationFacts {
  Method method = Method::triangle;
  std::vector<PlannedLot> lots;
  std::optional<Slot> marked;
  std::vector<SheetItem> items;   ///< of a score sheet
};
ExpectationFacts expectationFacts(const Plan& plan);

/// The question before the seal: "How likely is it, do you think, that they are told apart?" Empty where nothing can be expected.
std::string expectationAsked(const Voice& voice, const ExpectationFacts& facts);

/// What goes with the field: its ends, that it may stay empty, and who sees it.
std::string expectationHint(const Voice& voice);

/// What was written, as it stands on the seal: "Written beforehand: 70 in 100 that they are told apart."
std::string expectationLine(const Voice& voice, const ExpectationFacts& facts, int percent);

/// What is expected, after "that": "they are told apart", "Heather mead stands above Bought mead in liking".
std::string expectedEvent(const Voice& voice, const ExpectationFacts& facts);

}  // namespace oddglass::words
