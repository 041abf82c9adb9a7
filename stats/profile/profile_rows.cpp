#include "stats/profile/profile_rows.h"

#include "stats/column.h"

#include <cmath>

namespace oddglass::stats {

void requireSound(const ProfileRows& rows) {
  requireSound(rows.scores);
  requireColumn("descriptor", rows.descriptor, rows.scores.response.size());
  if (rows.scores.sample.levels > 200) throw BadInput("sample", "must not be more than 200");
  if (rows.descriptor.levels > 500) throw BadInput("descriptor", "must not be more than 500");
  for (double value : rows.scores.response)
    if (std::abs(value) > 1e100) throw BadInput("response", "must not be above 1e100");
}

std::vector<ScoreRows> byDescriptor(const ProfileRows& rows) {
  ScoreRows empty;
  empty.sample.levels = rows.scores.sample.levels;
  empty.taster.levels = rows.scores.taster.levels;
  if (rows.scores.round) empty.round = Factor{{}, rows.scores.round->levels};
  std::vector<ScoreRows> parts(static_cast<std::size_t>(rows.descriptor.levels), empty);
  for (std::size_t row = 0; row < rows.descriptor.of.size(); ++row) {
    ScoreRows& part = parts[static_cast<std::size_t>(rows.descriptor.of[row])];
    part.response.push_back(rows.scores.response[row]);
    part.sample.of.push_back(rows.scores.sample.of[row]);
    part.taster.of.push_back(rows.scores.taster.of[row]);
    if (part.round) part.round->of.push_back(rows.scores.round->of[row]);
  }
  return parts;
}

}  // namespace oddglass::stats
