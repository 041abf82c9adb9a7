#include "stats/long_rows.h"

#include "stats/column.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {

std::vector<int> levelsIn(const Factor& factor) {
  std::vector<int> levels = factor.of;
  std::ranges::sort(levels);
  levels.erase(std::unique(levels.begin(), levels.end()), levels.end());
  return levels;
}

Factor occurring(const Factor& factor) {
  const std::vector<int> levels = levelsIn(factor);
  Factor found{{}, static_cast<int>(levels.size())};
  found.of.reserve(factor.of.size());
  for (int level : factor.of) found.of.push_back(static_cast<int>(std::ranges::lower_bound(levels, level) - levels.begin()));
  return found;
}

void requireSound(const ScoreRows& rows) {
  if (rows.response.empty()) throw BadInput("response", "there are no answers");
  for (double value : rows.response)
    if (!std::isfinite(value)) throw BadInput("response", "must be finite numbers");
  requireColumn("sample", rows.sample, rows.response.size());
  requireColumn("taster", rows.taster, rows.response.size());
  if (rows.round) requireColumn("round", *rows.round, rows.response.size());
  if (rows.session) requireColumn("session", *rows.session, rows.response.size());
  if (rows.position) requireColumn("position", *rows.position, rows.response.size());
  if (rows.sample.levels < 2) throw BadInput("sample", "a comparison needs two samples or more");
}

}  // namespace oddglass::stats
