#pragma once

#include "domain/plan.h"
#include "words/voice.h"

#include <string>

namespace oddglass::words {

/// The name of a method in a sentence: "triangle", "3-AFC".
std::string methodName(const Voice& voice, Method method);

/// What it is, in one or two sentences: the cups, and what is asked. `attribute` is "more what", for methods that name a thing.
std::string methodLine(const Voice& voice, Method method, const std::string& attribute);

/// Whether a marked lot is always the same one (constant reference) or drawn (balanced), for methods with a marked cup; else empty.
std::string markedLine(const Voice& voice, const Plan& plan);

/// The question of a plan: "Can anyone tell them apart?" `alone`: of somebody who tastes alone.
std::string questionLine(const Voice& voice, Question question, const std::string& attribute, bool alone = false);

/// What a taster is asked before their cups, and the short hint under it: how many to pick, and that a guess is welcome.
std::string prompt(const Voice& voice, Method method, const std::string& attribute);
std::string promptHint(const Voice& voice, Method method, bool mayHaveNone);

/// The words of the two answers of a same-different or A-not-A flight.
std::string sameWord(const Voice& voice, Method method, bool isSame);

}  // namespace oddglass::words
