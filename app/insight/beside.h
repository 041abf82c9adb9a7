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

/// The place check where one cup is chosen: over wrong answers, for a preference over all; see stats/positions.h. Nothing for other methods
/// and without such answers.
std::optional<PlaceHabit> habitOf(const std::vector<Trial>& trials, const Plan& plan);

/// The test of overdispersion over people; nothing where nobody tasted twice, fewer than two people answered, or the method has no guessing chance.
std::optional<PeopleDiffer> peopleDifferOf(const std::vector<Trial>& trials, Method method);

/// Right answers and preferences by person, in the order of places. `lots`: whom a preference is counted for.
std::vector<PersonLine> personLines(const std::vector<Trial>& trials, std::pair<Slot, Slot> lots);

/// What went otherwise than planned, in the order of DeviationKind. `missing` and `voided` are those of everybody who sat.
std::vector<Deviation> deviationsOf(const RevealedSession& session);

/// True when the seal was broken before the reveal: nothing of the session is a blind result.
bool sealBroken(const RevealedSession& session);

}  // namespace oddglass::insight
