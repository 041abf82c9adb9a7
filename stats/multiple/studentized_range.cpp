#include "stats/multiple/studentized_range.h"

#include "stats/check.h"
#include "stats/multiple/quantile.h"
#include "stats/multiple/spread.h"
#include "stats/normal.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace oddglass::stats {
namespace {

/// k times the integral of `inner(z)` over the largest value z, by the trapezoidal rule.
template <class Inner>
double overLargest(double low, double high, int groups, const Inner& inner) {
  const double step = groups > 50 ? 0.1 : 0.22;
  double sum = 0.0;
  for (int i = 0; low + i * step <= high; ++i) sum += inner(low + i * step);
  return std::min(1.0, sum * step * groups);
}

/// The range of `groups` standard normal values is above w: the others lie below the largest, and not all within w of it.
double rangeAbove(double w, int groups) {
  if (w < 1e-20) return 1.0;
  if (w > 60.0) return 0.0;  // below the smallest number
  const double others = groups - 1.0;
  return overLargest(w / 2.0 - 6.5, std::sqrt(80.0 + w * w / 2.0), groups, [&](double z) {
    const double all = normalBelow(z), far = normalBelow(z - w);
    return normalDensity(z) * std::pow(all, others) * -std::expm1(others * std::log1p(-std::min(1.0, far / all)));
  });
}

/// All others lie within w below the largest.
double rangeBelow(double w, int groups) {
  if (w > 60.0) return 1.0;
  return overLargest(-9.5, 9.5 + std::min(w, 9.5), groups, [&](double z) {
    // The difference is taken in the tail where both are small.
    const double within = z > w / 2.0 ? normalBelow(w - z) - normalBelow(-z) : normalBelow(z) - normalBelow(z - w);
    return within > 0.0 ? normalDensity(z) * std::pow(within, groups - 1.0) : 0.0;
  });
}

void requireRange(double value, int groups, double df) {
  if (!(value >= 0.0) || std::isinf(value)) throw BadInput("value", "must be a number from 0 upwards");
  if (groups < 2 || groups > 1000) throw BadInput("groups", "must be from 2 to 1000");
  if (!(df >= fewestDf)) throw BadInput("df", "must be 0.1 or more");
}

}  // namespace

double studentizedRangeAbove(double value, int groups, double df) {
  requireRange(value, groups, df);
  return meanOverSpread(df, static_cast<std::size_t>(groups), false, [&](double s) { return rangeAbove(value * s, groups); });
}

double studentizedRangeBelow(double value, int groups, double df) {
  requireRange(value, groups, df);
  return meanOverSpread(df, static_cast<std::size_t>(groups), true, [&](double s) { return rangeBelow(value * s, groups); });
}

std::optional<double> studentizedRangeCritical(double above, int groups, double df) {
  requireOpenShare("above", above);
  requireRange(0.0, groups, df);
  return whereUpperTailIs(above, false, [&](double q) { return studentizedRangeAbove(q, groups, df); }, [&](double q) { return studentizedRangeBelow(q, groups, df); });
}

}  // namespace oddglass::stats
