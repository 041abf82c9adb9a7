#pragma once

#include "domain/plan.h"
#include "words/voice.h"

#include <utility>

namespace oddglass::words {

/// A lot of a sealed plan as it is called in a sentence: the drink's name, with the lot's where two lots are of drinks of one name.
std::string lotNamed(const Voice& voice, const Plan& plan, Slot slot);

/// The two lots of a comparison by name, lower slot first.
struct TwoNames {
  std::string one, other;
};
TwoNames namesOf(const Voice& voice, const Plan& plan, std::pair<Slot, Slot> lots);

/// What is known of a known difference: "Known beforehand: Heather mead has more of “butter” (half a drop a litre)."
std::string knownLine(const Voice& voice, const std::string& lot, const std::string& word, const std::string& dose);
std::string knownLine(const Voice& voice, const Plan& plan);

}  // namespace oddglass::words
