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

/// Two lots of the reference: what the second is for, what each way costs and needs. Headline, then one block a way.
struct WayToCompare {
  std::string name;
  std::vector<std::string> lines;
  bool isRecommended = false;
};
struct ReferencesWords {
  std::string headline;
  std::vector<WayToCompare> ways;  ///< one target; three comparisons
};
ReferencesWords referencesWords(const Voice& voice, const planning::TwoReferences& references, Claim claim);

/// Holm's needed numbers in turn: "The clearest of the three needs 6 of 6 right answers, each of the others 5 of 6."
std::string neededInTurnLine(const Voice& voice, const std::vector<std::optional<int>>& needed, int trials);

}  // namespace oddglass::words
