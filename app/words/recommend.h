#pragma once

#include "planning/recommend.h"
#include "words/voice.h"

#include <vector>

namespace oddglass::words {

/// One reason of a choice, as a sentence that speaks for it, or against it.
std::string reasonLine(const Voice& voice, planning::Because because);

/// A method with its reasons: what it is, then one sentence for each reason. `attribute` is "more what"; "…" stands where nothing is named yet.
std::vector<std::string> choiceLines(const Voice& voice, const planning::Choice& choice, const std::string& attribute);

/// What it would find: one and the same difference for every method, so that choices can be compared.
std::string choiceChance(const Voice& voice, const planning::Choice& choice, Claim claim);

/// What it costs: "12 cups, 180 mL a person; up to 17.1 g of alcohol in an evening. 72 cups in all."
std::string choicePrice(const Voice& voice, const planning::Choice& choice);

/// Whether the way that is taken was chosen, and if so whether another would be better, and why; else that it follows the recommendation.
std::string pickedLine(const Voice& voice, const planning::Recommendation& recommendation, Method taken, bool isChosen);

/// Three lots, such as a batch and two of the reference: what the third is for, and what each way costs and needs. Their slots are 1, 2 and 3.
struct WayToCompare {
  std::vector<int> lots;           ///< which of the three are poured, from 0
  std::string name;
  std::vector<std::string> lines;
};
struct ReferencesWords {
  std::string headline;
  std::string advice;              ///< which way is recommended, and why
  std::vector<WayToCompare> ways;  ///< one pair or the other (any of three pairs, unless just one lot is a batch), then the three comparisons
};
ReferencesWords referencesWords(const Voice& voice, const planning::TwoReferences& references, Claim claim, const std::vector<PlannedLot>& lots);

/// Holm's needed numbers in turn: "The clearest of the three needs 6 of 6 right answers, each of the others 5 of 6."
std::string neededInTurnLine(const Voice& voice, const std::vector<std::optional<int>>& needed, int trials);
/// The same for alike: "The pair with the fewest right answers counts as alike up to 2 of 18, then the next up to 3, then the last up to 4."
std::string alikeInTurnLine(const Voice& voice, const std::vector<std::optional<int>>& largest, int trials);

}  // namespace oddglass::words
