#include "stats/checks/cochran.h"

#include "stats/binomial.h"
#include "stats/check.h"

#include <boost/math/distributions/chi_squared.hpp>

#include <algorithm>
#include <numeric>

namespace oddglass::stats {
namespace {

void requireTable(const CheckTable& table) {
  for (const auto& row : table) {
    if (row.size() != table.front().size()) throw BadInput("table", "must have rows of one length");
    if (row.size() < 2) throw BadInput("sample", "a comparison needs two samples or more");
    for (int cell : row)
      if (cell != 0 && cell != 1) throw BadInput("checked", "must be 0 or 1");
  }
}

int checksIn(const std::vector<int>& row) { return std::accumulate(row.begin(), row.end(), 0); }

bool tells(const std::vector<int>& row) {
  const int checks = checksIn(row);
  return checks > 0 && checks < static_cast<int>(row.size());
}

double sumOfSquares(const std::vector<int>& sums) {
  double total = 0.0;
  for (int sum : sums) total += static_cast<double>(sum) * sum;
  return total;
}

/// The checks of those who tell samples apart, to be dealt as ranks are: a check counts one, and the sums are the checks of each sample.
RankBlocks dealtChecks(const CheckTable& table) {
  RankBlocks blocks{static_cast<int>(table.front().size()), {}};
  std::vector<int> samples(table.front().size());
  std::iota(samples.begin(), samples.end(), 0);
  for (const auto& row : table)
    if (tells(row)) blocks.blocks.push_back({samples, row});
  return blocks;
}

/// The p of all arrangements; where they are too many, of drawn ones if that is wanted.
ArrangedP arrangedChecks(const RankBlocks& blocks, bool mayDraw) {
  if (mayDraw) return arrangedP(blocks, sumOfSquares);
  const double seen = sumOfSquares(doubledRankSums(blocks));
  double p = 0.0;
  if (!eachRankSums(blocks, mostArrangements, [&](const std::vector<int>& sums, double chance) { p += sumOfSquares(sums) >= seen ? chance : 0.0; })) return {};
  return {std::min(p, 1.0), std::nullopt};
}

}  // namespace

int tellers(const CheckTable& table) { return static_cast<int>(std::ranges::count_if(table, tells)); }

CochranQ cochranQ(const CheckTable& table, bool mayDraw) {
  requireTable(table);
  CochranQ result;
  if (table.empty()) {
    result.why = Reason::emptyCell;
    return result;
  }
  const double k = static_cast<double>(table.front().size());
  result.df = static_cast<int>(table.front().size()) - 1;
  if (tellers(table) == 0) result.why = Reason::allTied;
  else if (table.size() < 2) result.why = Reason::oneTaster;
  if (result.why) return result;
  std::vector<int> ofSample(table.front().size(), 0), ofTaster;
  for (const auto& row : table) {
    ofTaster.push_back(checksIn(row));
    for (std::size_t i = 0; i < row.size(); ++i) ofSample[i] += row[i];
  }
  const double total = std::accumulate(ofTaster.begin(), ofTaster.end(), 0.0);
  result.statistic = (k - 1.0) * (k * sumOfSquares(ofSample) - total * total) / (k * total - sumOfSquares(ofTaster));
  result.pValue = boost::math::cdf(boost::math::complement(boost::math::chi_squared(result.df), *result.statistic));
  result.arranged = arrangedChecks(dealtChecks(table), mayDraw);
  return result;
}

double mcNemar(int onlyOne, int onlyOther) {
  requireTrials("onlyOne", onlyOne);
  requireTrials("onlyOther", onlyOther);
  return onlyOne + onlyOther == 0 ? 1.0 : twoSidedHalf(onlyOne, onlyOne + onlyOther);
}

}  // namespace oddglass::stats
