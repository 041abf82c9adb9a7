#pragma once

#include "stats/reason.h"
#include "stats/scores/sample_scores.h"

#include <string>
#include <vector>

namespace oddglass::cli {

/// Why a number cannot be had, for the "why" beside a null.
std::string why(stats::Reason reason);
/// What the reader of a fit has to know, in one line; empty where there is nothing.
std::string notesOf(const std::vector<stats::ScoreNote>& notes);

}  // namespace oddglass::cli
