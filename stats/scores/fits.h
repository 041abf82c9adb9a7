#pragma once

#include "stats/scores/balanced.h"
#include "stats/scores/sample_scores.h"

namespace oddglass::stats {

/// The two ways to judge samples; arguments were checked by `scoresOf`.
SampleScores classicalScores(const BalancedTable& table, const ScoreQuestion& question);
SampleScores mixedScores(const ScoreRows& rows, const ScoreQuestion& question);

}  // namespace oddglass::stats
