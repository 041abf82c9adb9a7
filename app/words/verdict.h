#pragma once

#include "words/came_out.h"

namespace oddglass::words {

/// The verdict alone in words.
struct Spoken {
  Shape shape = Shape::dash;
  std::string word, headline, under, notSaid, next;
};
Spoken speak(const Voice& voice, const insight::Findings& findings);
/// Whether the reading that weakened the verdict had another one of its own, so that the two contradict each other.
bool pointsBothWays(const insight::Findings& findings);

/// Why there is no verdict, as it ends "No verdict: ...".
std::string noVerdictReason(const Voice& voice, insight::NoVerdict why);

/// "half of such people can taste", "3 in 10 of such people can taste"; alone "you can taste half the time".
std::string canTell(const Voice& voice, Claim claim, int sharePm);

}  // namespace oddglass::words
