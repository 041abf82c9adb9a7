#pragma once

#include "stats/right/just_right.h"

#include <vector>

/// Just-about-right answers for one sample, a taster each.
inline oddglass::stats::RightRows rightRows(const std::vector<int>& category, const std::vector<double>& liking) {
  oddglass::stats::RightRows rows{category, liking, {std::vector<int>(category.size(), 0), 1}, {{}, static_cast<int>(category.size())}};
  for (int i = 0; i < rows.taster.levels; ++i) rows.taster.of.push_back(i);
  return rows;
}
