#pragma once

#include "stats/error.h"
#include "stats/long_rows.h"

#include <cstddef>

namespace oddglass::stats {

/// Throws BadInput that names the column unless it has so many rows, each with one of its levels.
inline void requireColumn(const char* name, const Factor& column, std::size_t rows) {
  if (column.of.size() != rows) throw BadInput(name, "must have as many rows as the answers");
  for (int level : column.of)
    if (level < 0 || level >= column.levels) throw BadInput(name, "holds a label that is not among its levels");
}

}  // namespace oddglass::stats
