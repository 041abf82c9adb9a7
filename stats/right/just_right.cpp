#include "stats/right/just_right.h"

#include "stats/binomial.h"
#include "stats/check.h"
#include "stats/column.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace oddglass::stats {
namespace {

enum Side : std::size_t { low, right, high };

/// The liking of one sample, by what was said.
using Likings = std::array<std::vector<double>, 3>;

void requireRightRows(const RightRows& rows) {
  if (rows.category.empty()) throw BadInput("category", "there are no answers");
  if (rows.liking.size() != rows.category.size()) throw BadInput("liking", "must have as many rows as the category");
  requireColumn("sample", rows.sample, rows.category.size());
  requireColumn("taster", rows.taster, rows.category.size());
  for (int category : rows.category)
    if (category < 1 || category > 5) throw BadInput("category", "must be from 1 to 5");
  for (double liking : rows.liking)
    if (!(std::abs(liking) <= 1e100)) throw BadInput("liking", "must be numbers of a size up to 1e100");
  std::set<std::pair<int, int>> seen;
  for (std::size_t row = 0; row < rows.category.size(); ++row)
    if (!seen.emplace(rows.taster.of[row], rows.sample.of[row]).second) throw BadInput("taster", "a taster answered for a sample twice");
}

std::optional<double> meanIn(const std::vector<double>& values) {
  if (values.empty()) return std::nullopt;
  return meanAndSpread(values).mean;
}

double largestIn(const std::vector<double>& values) {
  double largest = 0.0;
  for (double value : values) largest = std::max(largest, std::abs(value));
  return largest;
}

/// Why the drop has no interval and no p; nothing where it has.
std::optional<Reason> whyNotJudged(int side, int right, int answers) {
  if (leastSideOneIn * side < answers) return Reason::underFifth;
  if (side < leastSideAnswers || right < leastSideAnswers) return Reason::fewAnswers;
  return std::nullopt;
}

LikingDrop dropOf(const std::vector<double>& right, const std::vector<double>& side, int answers, double level) {
  LikingDrop found;
  found.answers = static_cast<int>(side.size());
  found.share = static_cast<double>(side.size()) / answers;
  if (side.empty() || right.empty()) {
    found.drop = nothing(Reason::emptyCell);
    found.whyNoSplit = Reason::emptyCell;
    return found;
  }
  const double scale = std::max(largestIn(right), largestIn(side));
  const MeanAndSpread ofRight = meanAndSpread(right, scale), ofSide = meanAndSpread(side, scale);
  const double drop = ofRight.mean - ofSide.mean, n1 = static_cast<double>(right.size()), n2 = static_cast<double>(side.size());
  found.penalty = found.share * drop;
  if (const auto why = whyNotJudged(found.answers, static_cast<int>(right.size()), answers)) {
    found.drop = alone(drop, *why);
    found.whyNoSplit = why;
    return found;
  }
  const double df = n1 + n2 - 2.0, variance = ((n1 - 1.0) * *ofRight.sd * *ofRight.sd + (n2 - 1.0) * *ofSide.sd * *ofSide.sd) / df;
  found.drop = byStudent(drop, std::sqrt(variance * (1.0 / n1 + 1.0 / n2)), df, level);
  std::vector<double> both = right;
  both.insert(both.end(), side.begin(), side.end());
  if (meanAndSpread(both).sd == 0.0) found.whyNoSplit = Reason::noSpread;
  else if (!(found.permuted = labelSplits(right, side))) found.whyNoSplit = Reason::tooLarge;
  return found;
}

RightSample sampleOf(int sample, const Likings& likings, double level) {
  RightSample found;
  found.sample = sample;
  std::vector<double> all;
  for (const auto& each : likings) all.insert(all.end(), each.begin(), each.end());
  found.answers = static_cast<int>(all.size());
  if (all.empty()) {
    for (LikingDrop* drop : {&found.low, &found.high}) {
      drop->drop = nothing(Reason::noTrials);
      drop->whyNoSplit = Reason::noTrials;
    }
    return found;
  }
  const auto share = [&](Side side) { return static_cast<double>(likings[side].size()) / found.answers; };
  found.lowShare = share(low);
  found.rightShare = share(right);
  found.highShare = share(high);
  found.meanLiking = meanIn(all);
  found.meanRight = meanIn(likings[right]);
  found.low = dropOf(likings[right], likings[low], found.answers, level);
  found.high = dropOf(likings[right], likings[high], found.answers, level);
  if (found.meanRight) found.totalPenalty = found.low.penalty.value_or(0.0) + found.high.penalty.value_or(0.0);
  const int lows = found.low.answers, sides = lows + found.high.answers;
  if (sides > 0) found.pSides = twoSidedHalf(lows, sides);
  return found;
}

}  // namespace

std::vector<RightSample> justRight(const RightRows& rows, double level) {
  requireOpenShare("level", level);
  requireRightRows(rows);
  std::vector<Likings> likings(static_cast<std::size_t>(rows.sample.levels));
  for (std::size_t row = 0; row < rows.category.size(); ++row) {
    const int category = rows.category[row];
    likings[static_cast<std::size_t>(rows.sample.of[row])][category < 3 ? low : category > 3 ? high : right].push_back(rows.liking[row]);
  }
  std::vector<RightSample> samples;
  for (std::size_t i = 0; i < likings.size(); ++i) samples.push_back(sampleOf(static_cast<int>(i), likings[i], level));
  return samples;
}

}  // namespace oddglass::stats
