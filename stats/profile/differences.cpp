#include "stats/profile/differences.h"

#include "stats/alike/paired_alike.h"
#include "stats/estimated.h"
#include "stats/scores/comparisons.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

constexpr int fewestTasters = 3;

/// The tasters who scored a sample and the reference.
struct Pair {
  std::vector<double> differences;
  std::vector<int> tasters;  ///< in rising order
};

std::vector<Pair> pairsOf(const std::vector<Cell>& cells, int samples, int reference) {
  std::vector<Pair> pairs(static_cast<std::size_t>(samples));
  for (auto first = cells.begin(); first != cells.end();) {
    const auto end = std::find_if(first, cells.end(), [&](const Cell& cell) { return cell.row != first->row; });
    const auto mark = std::find_if(first, end, [&](const Cell& cell) { return cell.column == reference; });
    for (auto each = first; mark != end && each != end; ++each) {
      if (each == mark) continue;
      pairs[static_cast<std::size_t>(each->column)].differences.push_back(each->mean - mark->mean);
      pairs[static_cast<std::size_t>(each->column)].tasters.push_back(each->row);
    }
    first = end;
  }
  return pairs;
}

/// How many tasters two pairs share.
int shared(const Pair& one, const Pair& other) {
  return static_cast<int>(std::ranges::count_if(one.tasters, [&](int taster) { return std::ranges::binary_search(other.tasters, taster); }));
}

/// The pairs that are judged together, and the distribution of the largest of their t values.
const KnownDunnett& dunnettOf(const std::vector<const Pair*>& judged, double df, double level, DunnettTables& known) {
  const auto k = static_cast<Eigen::Index>(judged.size());
  Eigen::MatrixXd correlations = Eigen::MatrixXd::Identity(k, k);
  bool areEqual = true;
  for (Eigen::Index i = 0; i < k; ++i)
    for (Eigen::Index j = 0; j < i; ++j) {
      const Pair &one = *judged[static_cast<std::size_t>(i)], &other = *judged[static_cast<std::size_t>(j)];
      correlations(i, j) = correlations(j, i) = shared(one, other) / (2.0 * std::sqrt(static_cast<double>(one.tasters.size()) * static_cast<double>(other.tasters.size())));
      areEqual = areEqual && correlations(i, j) == 0.5;
    }
  const std::vector<double> loads = areEqual ? equalLoads(static_cast<int>(k)) : loadsNear(correlations);
  const auto at = known.find({loads, df});
  if (at != known.end()) return at->second;
  const DunnettTable table({loads, df, true});
  return known.emplace(std::pair(loads, df), KnownDunnett{table, table.critical(1.0 - level)}).first->second;
}

/// p and interval against no difference; the pair has its difference, and its n tasters have a spread.
void judge(ProfileDifference& found, double square, double df, const std::vector<const Pair*>& judged, double level, DunnettTables& known) {
  const double se = std::sqrt(2.0 * square / found.tasters);
  found.se = se;
  found.df = df;
  if (judged.size() == 1) {
    const Estimated student = byStudent(*found.difference, se, df, level);
    found.pValue = student.pValue;
    found.low = student.low;
    found.high = student.high;
    return;
  }
  const KnownDunnett& dunnett = dunnettOf(judged, df, level, known);
  found.pValue = dunnett.table.above(std::abs(*found.difference) / se);
  if (!dunnett.critical) return;
  found.low = *found.difference - *dunnett.critical * se;
  found.high = *found.difference + *dunnett.critical * se;
}

}  // namespace

std::vector<ProfileDifference> differencesFromReference(const std::vector<Cell>& cells, int tasters, int samples, const DifferenceQuestion& question, DunnettTables& known) {
  const std::vector<Pair> pairs = pairsOf(cells, samples, question.reference);
  std::vector<const Pair*> judged;
  for (const Pair& pair : pairs)
    if (pair.tasters.size() >= fewestTasters) judged.push_back(&pair);
  double size = 0.0;
  for (const Cell& cell : cells) size = std::max(size, std::abs(cell.mean));
  const auto fit = judged.empty() ? std::nullopt : additive(cells, tasters, samples);
  std::vector<ProfileDifference> all;
  for (int sample = 0; sample < samples; ++sample) {
    if (sample == question.reference) continue;
    const Pair& pair = pairs[static_cast<std::size_t>(sample)];
    ProfileDifference& found = all.emplace_back();
    found.sample = sample;
    found.tasters = static_cast<int>(pair.tasters.size());
    if (pair.tasters.empty()) {
      found.why = Reason::emptyCell;
      continue;
    }
    const auto [mean, sd] = meanAndSpread(pair.differences, size);
    found.difference = mean;
    if (found.tasters < fewestTasters) found.why = Reason::fewTasters;
    else if (!(*sd > 0.0) || !fit || fit->residualDf < 1) found.why = Reason::noSpread;
    if (found.why) continue;
    judge(found, fit->residualSquares / fit->residualDf, fit->residualDf, judged, question.level, known);
    if (!question.limit) continue;
    const Alike alike = pairedAlike(pair.differences, *question.limit, question.alpha);
    found.why = alike.why;
    if (found.why) continue;
    found.pLimit = alike.pValue;
    found.limitLow = alike.low;
    found.limitHigh = alike.high;
  }
  return all;
}

}  // namespace oddglass::stats
