#pragma once

#include "stats/long_rows.h"

#include <vector>

namespace oddglass::stats {

/// Answers of a descriptive profile in long form: scores, and which descriptor each row is about. Rows may be missing or repeated in any pattern.
struct ProfileRows {
  ScoreRows scores;
  Factor descriptor;
};

/// Throws BadInput that names the column: as `requireSound` of scores; `descriptor` of another length or with a label outside its levels;
/// more than 200 samples or 500 descriptors; a score beyond 1e100.
void requireSound(const ProfileRows& rows);

/// The answers of each descriptor, labels numbered as in the whole. Rows must be sound.
std::vector<ScoreRows> byDescriptor(const ProfileRows& rows);

}  // namespace oddglass::stats
