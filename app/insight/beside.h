#pragma once

#include "insight/findings.h"

#include <optional>
#include <vector>

namespace oddglass::insight {

/// Right answers by sureness, all three levels; empty where no trial has one.
std::vector<SureLine> surenessOf(const std::vector<Trial>& trials);

/// Right answers by what told, all six clues; empty where no trial has one.
std::vector<ClueLine> cluesOf(const std::vector<Trial>& trials);

/// A third or more of the right answers by look or fizz; never without a right answer. Own threshold.
bool mostlyByLookOrFizz(int rightByLookOrFizz, int right);

/// The place check over wrong answers; see stats/positions.h.
std::optional<PlaceHabit> habitOf(const std::vector<Trial>& trials, int alphaPm);

/// The test of overdispersion over people; nothing where nobody tasted twice or fewer than two people answered.
std::optional<PeopleDiffer> peopleDifferOf(const std::vector<Trial>& trials);

/// Right answers by person, in the order of places.
std::vector<PersonLine> personLines(const std::vector<Trial>& trials);

/// What went otherwise than planned, in the order of DeviationKind. `missing` and `voided` are those of everybody who sat.
std::vector<Deviation> deviationsOf(const RevealedSession& session);

}  // namespace oddglass::insight
