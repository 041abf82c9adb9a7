#pragma once

#include "session/record.h"

#include <optional>
#include <vector>

namespace oddglass::session {

/// The first entry that cannot have been written by the steps of this program under this plan: a body with other keys or kinds of value than its event has, a place,
/// round or code that the plan lacks, a place taken twice, an answer of nobody, a spare code out of turn. `bodies` are those of the log, parsed.
/// Nothing when all entries can.
std::optional<Seq> impossibleStep(const Plan& plan, const std::vector<store::LogEntry>& log, const std::vector<canon::Json>& bodies);

/// The first hand-in whose replies the sheet would not have taken then: a question missing, twice or unknown, a value out of range, a code that did not
/// stand in that flight, another time than its entry's, or two hand-ins of one entry. Call it for logs without an impossible step.
std::optional<Seq> impossibleAnswer(const SessionRecord& record, const std::vector<canon::Json>& bodies);

/// True when a plan keeps to the ranges that the program plans within.
bool isPossible(const Plan& plan);

}  // namespace oddglass::session
