#pragma once

#include "report/why.h"
#include "stats/scores/sample_scores.h"

#include <string>
#include <vector>

namespace oddglass::cli {

using report::why;

/// What the reader of a fit has to know, in one line; empty where there is nothing.
std::string notesOf(const std::vector<stats::ScoreNote>& notes);

}  // namespace oddglass::cli
