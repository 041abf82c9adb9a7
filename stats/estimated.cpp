#include "stats/estimated.h"

#include "stats/check.h"

#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/students_t.hpp>

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

namespace policies = boost::math::policies;
/// What lies beyond all numbers comes back as infinity and is caught by the callers; nothing is thrown.
using Quiet = policies::policy<policies::domain_error<policies::ignore_error>, policies::overflow_error<policies::ignore_error>, policies::evaluation_error<policies::ignore_error>,
                               policies::promote_double<false>>;
using Student = boost::math::students_t_distribution<double, Quiet>;
using Fisher = boost::math::fisher_f_distribution<double, Quiet>;

}  // namespace

double studentTail(double t, double df) { return cdf(complement(Student(df), t)); }
double studentPoint(double tail, double df) { return quantile(complement(Student(df), tail)); }
double fisherTail(double f, double df1, double df2) { return cdf(complement(Fisher(df1, df2), f)); }
double fisherPoint(double tail, double df1, double df2) { return quantile(complement(Fisher(df1, df2), tail)); }

Estimated nothing(Reason why) {
  Estimated empty;
  empty.why = why;
  return empty;
}

Estimated alone(double estimate, Reason why) {
  Estimated only = nothing(why);
  if (std::isfinite(estimate)) only.estimate = estimate;
  return only;
}

Estimated byStudent(double estimate, double se, double df, double level) {
  requireOpenShare("level", level);
  if (!(se > 0.0) || !std::isfinite(se) || !(df > 0.0)) return alone(estimate, Reason::noSpread);
  const double reach = studentPoint((1.0 - level) / 2.0, df) * se;
  Estimated found;
  found.estimate = estimate;
  found.se = se;
  found.df = df;
  found.pValue = std::min(1.0, 2.0 * studentTail(std::fabs(estimate / se), df));
  if (std::isfinite(reach)) {
    found.low = estimate - reach;
    found.high = estimate + reach;
  } else {
    found.why = Reason::noSpread;
  }
  return found;
}

MeanAndSpread meanAndSpread(const std::vector<double>& values, double scale) {
  const double n = static_cast<double>(values.size());
  double sum = 0.0, largest = scale, squares = 0.0;
  for (double value : values) sum += value, largest = std::max(largest, std::fabs(value));
  const double mean = sum / n;
  bool isFlat = true;
  for (double value : values) {
    squares += (value - mean) * (value - mean);
    isFlat = isFlat && std::fabs(value - values.front()) <= 1e-12 * largest;
  }
  if (values.size() < 2) return {mean, std::nullopt};
  return {mean, isFlat ? 0.0 : std::sqrt(squares / (n - 1.0))};
}

Estimated meanOf(const std::vector<double>& values, double level, Reason tooFew, double scale) {
  if (values.empty()) return nothing(tooFew);
  const auto [mean, sd] = meanAndSpread(values, scale);
  if (!sd) return alone(mean, tooFew);
  return byStudent(mean, *sd / std::sqrt(static_cast<double>(values.size())), static_cast<double>(values.size()) - 1.0, level);
}

}  // namespace oddglass::stats
