#pragma once

#include "words/came_out.h"

namespace oddglass::words {

/// "12 of 18 tastings were right; guessing gives about 6, and 12 or more about 4 times in 1,000." Of the reading that the printed verdict rests on.
std::string countLine(const Voice& voice, const Plan& plan, const insight::Findings& findings);

/// What was counted, as it goes on after a colon or begins a sentence: "12 of 18 tastings were right", "in 9 of 18 tastings the two groups were found".
std::string countedAs(const Voice& voice, const Plan& plan, const insight::Findings& findings, const insight::Reading& reading);

/// How many of people like these can tell, or prefer one; how far apart signal and noise are. Empty without a verdict.
std::string rangeLine(const Voice& voice, const Plan& plan, const insight::Findings& findings);

/// What would have come out how often; only where nothing is shown.
std::string missedLine(const Voice& voice, const Plan& plan, const insight::Findings& findings);

/// Why the printed verdict is weaker than that of all answers; or that leaving some out changes nothing. Empty where nothing was left out.
std::string weakerLine(const Voice& voice, const Plan& plan, const insight::Findings& findings);

/// "Of 12 right answers, 8 came from taste, smell or feel in the mouth, 3 from look or fizz, 1 was a guess."
std::string howKnewLine(const Voice& voice, const insight::Findings& findings);

/// "Right: 5 of 6 who were sure, 4 of 7 fairly sure, 3 of 5 guesses."
std::string surenessLine(const Voice& voice, const insight::Findings& findings);

/// What stands beside the verdict and is no part of it: votes not counted, steadiness, what those who were right liked, sureness as an index.
std::vector<std::string> besideLines(const Voice& voice, const Plan& plan, const insight::Findings& findings);

/// The test, its source and its settings.
std::string methodLine(const Voice& voice, const Plan& plan, const insight::Findings& findings);

/// The standards that a plan follows, as far as they fit: "ISO 4120:2021", of a sequential plan "ISO 16820:2019" too; of a score sheet that of the profile where words have
/// lines, that of ranking where cups are ranked. Empty where it is common practice only.
std::vector<std::string> standardsOf(const Plan& plan);

std::optional<IntervalWords> intervalWords(const Voice& voice, const Plan& plan, const insight::Findings& findings);

}  // namespace oddglass::words
