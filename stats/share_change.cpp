#include "stats/share_change.h"

#include "stats/check.h"
#include "stats/estimated.h"
#include "stats/posterior.h"

#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace oddglass::stats {
namespace {

/// P(after - before <= change). What stood before is gone over in even panels; beyond 1 - change it always holds.
double atMostChange(const SharePosterior& before, const SharePosterior& after, double change) {
  constexpr int panels = 8;
  const double from = std::max(0.0, -change), to = std::min(1.0, 1.0 - change), width = (to - from) / panels;
  const auto both = [&](double share) { return before.density(share) * (1.0 - after.above(std::clamp(share + change, 0.0, 1.0))); };
  double sum = before.above(to);
  for (int panel = 0; panel < panels; ++panel) sum += boost::math::quadrature::gauss<double, 20>::integrate(both, from + panel * width, from + (panel + 1) * width);
  return sum;
}

double changeAt(const SharePosterior& before, const SharePosterior& after, double probability) {
  const auto beyond = [&](double change) { return atMostChange(before, after, change) - probability; };
  std::uintmax_t steps = 60;
  const auto [low, high] = boost::math::tools::toms748_solve(beyond, -1.0, 1.0, -probability, 1.0 - probability, boost::math::tools::eps_tolerance<double>(40), steps);
  return 0.5 * (low + high);
}

}  // namespace

std::optional<ChangeOfShare> changeOfShare(PersonCount before, PersonCount after, double guess, double level) {
  requireOpenShare("level", level);
  const auto first = SharePosterior::of(before.correct, before.trials, guess), last = SharePosterior::of(after.correct, after.trials, guess);
  if (before.trials == 0 || after.trials == 0 || !first || !last) return std::nullopt;
  const double tail = 0.5 * (1.0 - level);
  return ChangeOfShare{changeAt(*first, *last, 0.5), changeAt(*first, *last, tail), changeAt(*first, *last, 1.0 - tail)};
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
