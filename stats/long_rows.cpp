#include "stats/long_rows.h"

#include "stats/error.h"

#include <cmath>

namespace oddglass::stats {

void requireColumn(const char* name, const Factor& column, std::size_t rows) {
  if (column.of.size() != rows) throw BadInput(name, "must have as many rows as the answers");
  for (int level : column.of)
    if (level < 0 || level >= column.levels) throw BadInput(name, "holds a label that is not among its levels");
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
