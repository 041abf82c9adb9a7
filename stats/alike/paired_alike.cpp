#include "stats/alike/paired_alike.h"

#include "stats/binomial.h"
#include "stats/check.h"
#include "stats/estimated.h"
#include "stats/panel/cells.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {

Alike pairedAlike(const std::vector<double>& differences, double limit, double alpha) {
  if (!(limit > 0.0) || !std::isfinite(limit)) throw BadInput("limit", "must be above 0");
  if (!(alpha > 0.0 && alpha < 0.5)) throw BadInput("alpha", "must lie between 0 and 0.5");
  for (double value : differences)
    if (!std::isfinite(value)) throw BadInput("differences", "must be finite numbers");
  Alike found;
  found.tasters = static_cast<int>(differences.size());
  if (differences.empty()) {
    found.why = Reason::fewTasters;
    return found;
  }
  const auto [mean, sd] = meanAndSpread(differences, limit);
  found.difference = mean;
  if (!sd) {
    found.why = Reason::oneTaster;
    return found;
  }
  const double n = static_cast<double>(differences.size()), se = *sd / std::sqrt(n);
  if (!(se > 0.0)) {
    found.why = Reason::noSpread;
    found.pValue = std::fabs(mean) < limit ? std::exp2(-n) : 1.0;
  } else {
    const double reach = studentPoint(alpha, n - 1.0) * se;
    found.low = mean - reach;
    found.high = mean + reach;
    found.pValue = std::max(studentTail((mean + limit) / se, n - 1.0), studentTail((limit - mean) / se, n - 1.0));
  }
  found.isAlike = atMost(*found.pValue, alpha);
  return found;
}

std::vector<double> differencesByTaster(const ScoreRows& rows, int batch, int reference) {
  requireSound(rows);
  if (batch < 0 || batch >= rows.sample.levels) throw BadInput("batch", "is not among the samples");
  if (reference < 0 || reference >= rows.sample.levels) throw BadInput("reference", "is not among the samples");
  if (batch == reference) throw BadInput("reference", "must be another sample than the batch");
  std::vector<double> differences;
  const std::vector<Cell> cells = cellsOf(rows.response, rows.taster, rows.sample);
  for (std::size_t i = 0; i < cells.size();) {
    const Cell *own = nullptr, *other = nullptr;
    const int taster = cells[i].row;
    for (; i < cells.size() && cells[i].row == taster; ++i) {
      if (cells[i].column == batch) own = &cells[i];
      if (cells[i].column == reference) other = &cells[i];
    }
    if (own && other) differences.push_back(own->mean - other->mean);
  }
  return differences;
}

}  // namespace oddglass::stats
