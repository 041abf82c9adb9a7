#pragma once

#include "words/seal.h"

namespace oddglass::words {

/// How a plan will be judged, sentence by sentence, as it stands before the seal.
std::vector<std::string> sealRule(const Voice& voice, const SealFacts& facts);

/// Adds that makers taste beside the panel, and who pours; nothing where there is neither.
void addPeopleBeside(const Voice& voice, int makers, const std::string& pourer, std::vector<std::string>& lines);

/// What will be done in an outcome, after its condition ("If they are told apart").
std::string promisedLine(const Voice& voice, const std::string& condition, const Promises& promises, Outcome outcome);

/// What the seal does.
std::string bindingLine(const Voice& voice, Routine routine);

}  // namespace oddglass::words
