#pragma once

#include "stats/trend/visits.h"

#include <cstddef>
#include <vector>

namespace visits {

/// A table with a taster in each row and a session in each column, at these ages.
inline oddglass::stats::TimeRows table(const std::vector<double>& age, const std::vector<std::vector<double>>& scores) {
  oddglass::stats::TimeRows rows;
  rows.age = age;
  rows.taster.levels = static_cast<int>(scores.size());
  rows.session.levels = static_cast<int>(age.size());
  for (std::size_t t = 0; t < scores.size(); ++t)
    for (std::size_t s = 0; s < age.size(); ++s) {
      rows.response.push_back(scores[t][s]);
      rows.taster.of.push_back(static_cast<int>(t));
      rows.session.of.push_back(static_cast<int>(s));
    }
  return rows;
}

}  // namespace visits
