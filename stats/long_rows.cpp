#include "stats/long_rows.h"

#include "stats/column.h"

#include <cmath>

namespace oddglass::stats {

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
