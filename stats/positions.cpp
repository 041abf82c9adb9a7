#include "stats/positions.h"

#include "stats/check.h"

#include <boost/math/distributions/chi_squared.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace oddglass::stats {

namespace {

double pearson(const std::vector<int>& counts, const std::vector<double>& expected) {
  double sum = 0.0;
  for (std::size_t k = 0; k < counts.size(); ++k)
    if (expected[k] > 0.0) sum += (counts[k] - expected[k]) * (counts[k] - expected[k]) / expected[k];
  return sum;
}

bool asLarge(double statistic, double seen) { return statistic >= seen * (1.0 - 1e-12) - 1e-12; }

// In how many ways the choices can fall on the places.
double outcomes(int total, std::size_t places) {
  double ways = 1.0;
  for (std::size_t k = 1; k < places; ++k) ways *= (total + static_cast<double>(k)) / static_cast<double>(k);
  return ways;
}

// Sums the multinomial chances of all ways to fill the places from `place` on whose statistic is as large as the one seen.
double chanceAsLarge(std::vector<int>& counts, std::size_t place, int left, double logChance, const std::vector<double>& expected, double seen) {
  if (place + 1 == counts.size()) {
    counts[place] = left;
    return asLarge(pearson(counts, expected), seen) ? std::exp(logChance - std::lgamma(left + 1.0)) : 0.0;
  }
  double sum = 0.0;
  for (int here = 0; here <= left; ++here) {
    counts[place] = here;
    sum += chanceAsLarge(counts, place + 1, left - here, logChance - std::lgamma(here + 1.0), expected, seen);
  }
  return sum;
}

}  // namespace

PositionCheck positionCheck(const std::vector<int>& counts) {
  if (counts.size() < 2) throw BadInput("counts", "needs at least two places");
  for (const int count : counts) requireTrials("counts", count);
  const int total = std::accumulate(counts.begin(), counts.end(), 0);
  requireTrials("counts", total);
  if (total == 0) throw BadInput("counts", "needs at least one choice");
  const double places = static_cast<double>(counts.size()), even = total / places;
  const std::vector<double> expected(counts.size(), even);
  PositionCheck check{pearson(counts, expected), static_cast<int>(counts.size()) - 1, 1.0, std::nullopt, counts};
  check.pValue = boost::math::cdf(boost::math::complement(boost::math::chi_squared(check.df), check.statistic));
  if (even < 5.0 && outcomes(total, counts.size()) <= 3e6) {
    auto fill = counts;
    const double whole = std::lgamma(total + 1.0) - total * std::log(places);
    check.pExact = std::min(1.0, chanceAsLarge(fill, 0, total, whole, expected, check.statistic));
  }
  return check;
}

std::optional<HabitCheck> habitCheck(const std::vector<WrongChoice>& wrong) {
  HabitCheck check{0.0, 1.0, std::vector<int>(3, 0), std::vector<double>(3, 0.0)};
  for (const auto& [chosen, odd] : wrong) {
    if (chosen < 0 || chosen > 2) throw BadInput("chosen", "must be a place from 0 to 2");
    if (odd < 0 || odd > 2 || odd == chosen) throw BadInput("odd", "must be a place from 0 to 2, and not the one chosen");
    ++check.counts[static_cast<std::size_t>(chosen)];
    for (std::size_t place = 0; place < 3; ++place)
      if (static_cast<int>(place) != odd) check.expected[place] += 0.5;
  }
  const std::size_t n = wrong.size();
  if (n == 0 || n > 300) return std::nullopt;
  check.statistic = pearson(check.counts, check.expected);
  // chance[i][k]: i of the wrong answers so far fell on the first place and k on the second.
  std::vector<std::vector<double>> chance(n + 1, std::vector<double>(n + 1, 0.0));
  chance[0][0] = 1.0;
  for (std::size_t seen = 0; seen < n; ++seen) {
    std::vector<std::vector<double>> next(n + 1, std::vector<double>(n + 1, 0.0));
    for (std::size_t i = 0; i <= seen; ++i)
      for (std::size_t k = 0; i + k <= seen; ++k) {
        const double half = chance[i][k] / 2.0;
        if (wrong[seen].odd != 0) next[i + 1][k] += half;
        if (wrong[seen].odd != 1) next[i][k + 1] += half;
        if (wrong[seen].odd != 2) next[i][k] += half;
      }
    chance.swap(next);
  }
  check.pExact = 0.0;
  for (std::size_t i = 0; i <= n; ++i)
    for (std::size_t k = 0; i + k <= n; ++k)
      if (chance[i][k] > 0.0 &&
          asLarge(pearson({static_cast<int>(i), static_cast<int>(k), static_cast<int>(n - i - k)}, check.expected), check.statistic))
        check.pExact += chance[i][k];
  check.pExact = std::min(1.0, check.pExact);
  return check;
}

}  // namespace oddglass::stats
