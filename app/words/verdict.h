#pragma once

#include "words/came_out.h"

namespace oddglass::words {

/// The verdict alone in words.
struct Spoken {
  Shape shape = Shape::dash;
  std::string word, headline, under, notSaid, next;
};
/// One verdict, whatever the method; for three lots what is said of all pairs together.
Spoken speak(const Voice& voice, const Plan& plan, const insight::Findings& findings);

/// One of three pairs in a few words: "Heather mead and the bought one: told apart."
std::string pairHeadline(const Voice& voice, const Plan& plan, const insight::Findings& pair);

/// Whether the reading that weakened the verdict had another one of its own, so that the two contradict each other.
bool pointsBothWays(const insight::Findings& findings);

/// Why there is no verdict, as it ends "No verdict: ...".
std::string noVerdictReason(const Voice& voice, const insight::Findings& findings, insight::NoVerdict why);

/// "half of such people can taste", "3 in 10 of such people can taste"; alone "you can taste half the time".
std::string canTell(const Voice& voice, Claim claim, int sharePm);

/// The verdict in a word or two: "shown", "not shown", "alike".
std::string verdictWord(const Voice& voice, insight::Verdict verdict);

}  // namespace oddglass::words
