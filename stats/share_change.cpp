#include "stats/share_change.h"

#include "stats/check.h"
#include "stats/estimated.h"
#include "stats/posterior.h"

#include <boost/math/quadrature/gauss.hpp>

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace oddglass::stats {
namespace {

/// The shares before, with the weight of each: Gauss's rule over their quantiles, in panels that shorten towards both ends, where the quantiles bend most.
std::vector<std::pair<double, double>> weighed(const SharePosterior& before) {
  static constexpr double ends[]{0.0, 1e-4, 1e-2, 0.1, 0.5, 0.9, 0.99, 0.9999, 1.0};
  using Rule = boost::math::quadrature::gauss<double, 20>;
  std::vector<std::pair<double, double>> shares;
  for (std::size_t i = 1; i < std::size(ends); ++i) {
    const double middle = 0.5 * (ends[i] + ends[i - 1]), half = 0.5 * (ends[i] - ends[i - 1]);
    for (std::size_t node = 0; node < Rule::abscissa().size(); ++node)
      for (const double side : {-1.0, 1.0}) shares.emplace_back(before.quantile(middle + side * half * Rule::abscissa()[node]), half * Rule::weights()[node]);
  }
  return shares;
}

double changeAt(const std::vector<std::pair<double, double>>& before, const SharePosterior& after, double probability) {
  const auto atMostChange = [&](double change) {
    double sum = 0.0;
    for (const auto& [share, weight] : before) sum += weight * (1.0 - after.above(std::clamp(share + change, 0.0, 1.0)));
    return sum;
  };
  double low = -1.0, high = 1.0;
  for (int step = 0; step < 40; ++step) {
    const double middle = 0.5 * (low + high);
    (atMostChange(middle) < probability ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

}  // namespace

std::optional<ChangeOfShare> changeOfShare(PersonCount before, PersonCount after, double guess, double level) {
  requireOpenShare("level", level);
  const auto first = SharePosterior::of(before.correct, before.trials, guess), last = SharePosterior::of(after.correct, after.trials, guess);
  if (before.trials == 0 || after.trials == 0 || !first || !last) return std::nullopt;
  const auto shares = weighed(*first);
  const double tail = 0.5 * (1.0 - level);
  return ChangeOfShare{changeAt(shares, *last, 0.5), changeAt(shares, *last, tail), changeAt(shares, *last, 1.0 - tail)};
}

std::optional<RatioOfSpreads> ratioOfSpreads(double squaresBefore, double dfBefore, double squaresAfter, double dfAfter, double level) {
  requireOpenShare("level", level);
  if (!(squaresBefore >= 0.0)) throw BadInput("squares_before", "must be 0 or more");
  if (!(squaresAfter >= 0.0)) throw BadInput("squares_after", "must be 0 or more");
  if (dfBefore < 1.0 || dfAfter < 1.0 || squaresBefore == 0.0 || squaresAfter == 0.0) return std::nullopt;
  const double f = squaresAfter / dfAfter / (squaresBefore / dfBefore), tail = 0.5 * (1.0 - level);
  return RatioOfSpreads{std::sqrt(f), std::sqrt(f / fisherPoint(tail, dfAfter, dfBefore)), std::sqrt(f * fisherPoint(tail, dfBefore, dfAfter))};
}

}  // namespace oddglass::stats
