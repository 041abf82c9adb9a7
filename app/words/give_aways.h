#pragma once

#include "domain/plan.h"
#include "words/voice.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::words {

/// One of the nine checks: "Colour"; and what to look at: "Hold two cups to the light."
std::string checkName(const Voice& voice, GiveAway check);
std::string checkHint(const Voice& voice, GiveAway check);

/// A way out on its button: "Mend it".
std::string wayOutName(const Voice& voice, WayOut way);

/// What a way out means for a check: how it is mended, what is asked then, what the verdict says then.
std::string wayOutHint(const Voice& voice, GiveAway check, WayOut way, Method method);

/// What is asked about when a give-away is: the word of a question on a sheet, "more what" in a comparison ("dark"); empty for those that cannot be asked.
std::string askedWord(const Voice& voice, GiveAway check);

/// What was settled about give-aways, as everybody is told: nothing found, mended and how, asked instead, gone on with by any means. Empty where nobody looked.
std::vector<std::string> giveAwayLines(const Voice& voice, const std::optional<GiveAways>& giveAways);

/// The same for a report, which also says that nobody looked.
std::vector<std::string> maskingLines(const Voice& voice, const Plan& plan);

/// A verdict's headline where any means were settled before the seal: "They were told apart, by anything, look and fizz included."
std::string byAnyMeansHeadline(const Voice& voice, std::string headline, Method method);

}  // namespace oddglass::words
