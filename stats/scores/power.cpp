#include "stats/scores/power.h"

#include "stats/check.h"
#include "stats/estimated.h"

#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace oddglass::stats {
namespace {

constexpr double farthest = 1e8;  // noncentrality

void requirePlan(const ScorePlan& plan, double difference, double alpha, double wanted) {
  if (plan.tasters < 1 || plan.tasters > 10'000) throw BadInput("tasters", "must be from 1 to 10,000");
  if (plan.samples < 2 || plan.samples > 500) throw BadInput("samples", "must be from 2 to 500");
  if (plan.rounds < 1 || plan.rounds > 1'000) throw BadInput("rounds", "must be from 1 to 1,000");
  if (!(plan.sdInteraction >= 0.0 && plan.sdInteraction <= 1e9)) throw BadInput("sdInteraction", "must be 0 or more");
  if (!(plan.sdRepeat >= 0.0 && plan.sdRepeat <= 1e9)) throw BadInput("sdRepeat", "must be 0 or more");
  if (!(std::abs(difference) <= 1e12)) throw BadInput("difference", "must be a number");
  requireOpenShare("alpha", alpha);
  requireOpenShare("wanted", wanted);
  if (!(alpha < wanted)) throw BadInput("wanted", "must be above alpha");
}

}  // namespace

double noncentralFisherTail(double f, double df1, double df2, double noncentrality) {
  if (!(f >= 0.0) || !std::isfinite(f)) throw BadInput("f", "must be 0 or more");
  if (!(df1 > 0.0 && df2 > 0.0) || !std::isfinite(df1 + df2)) throw BadInput("df", "must be above 0");
  if (!(noncentrality >= 0.0 && noncentrality <= farthest)) throw BadInput("noncentrality", "must be from 0 to 1e8");
  const double x = df1 * f / (df1 * f + df2), half = noncentrality / 2.0;
  if (half == 0.0) return boost::math::ibetac(df1 / 2.0, df2 / 2.0, x);
  // From the likeliest count outwards, until nothing is added.
  const double middle = std::floor(half);
  double sum = 0.0, weight = 0.0;
  const auto add = [&](double j) {
    const double chance = boost::math::gamma_p_derivative(j + 1.0, half);
    sum += chance * boost::math::ibetac(df1 / 2.0 + j, df2 / 2.0, x);
    weight += chance;
    return chance;
  };
  for (double j = middle; add(j) > 1e-18; ++j) continue;
  for (double j = middle - 1.0; j >= 0.0 && add(j) > 1e-18; --j) continue;
  return std::min(1.0, sum / std::max(weight, 1e-300));
}

ScorePower scorePower(const ScorePlan& plan, double difference, double alpha, double wanted) {
  requirePlan(plan, difference, alpha, wanted);
  if (plan.tasters < 2) return {{}, {}, Reason::oneTaster};
  const double variance = plan.rounds * plan.sdInteraction * plan.sdInteraction + plan.sdRepeat * plan.sdRepeat;
  if (!(variance > 0.0)) return {{}, {}, Reason::noSpread};
  const double df1 = plan.samples - 1.0, df2 = df1 * (plan.tasters - 1.0), critical = fisherPoint(alpha, df1, df2);
  if (!std::isfinite(critical)) return {{}, {}, Reason::fewTasters};
  const double perSquare = static_cast<double>(plan.tasters) * plan.rounds / (2.0 * variance);
  const auto powerAt = [&](double noncentrality) { return noncentralFisherTail(critical, df1, df2, std::min(noncentrality, farthest)); };
  ScorePower found;
  found.power = powerAt(perSquare * difference * difference);
  double low = 0.0, high = 1.0;
  while (high < farthest && powerAt(high) < wanted) low = high, high *= 4.0;
  high = std::min(high, farthest);
  if (powerAt(high) < wanted) {
    found.why = Reason::fewTasters;
    return found;
  }
  std::uintmax_t steps = 200;
  const auto ends = boost::math::tools::toms748_solve([&](double each) { return powerAt(each) - wanted; }, low, high, boost::math::tools::eps_tolerance<double>(45), steps);
  found.smallestDifference = std::sqrt((ends.first + ends.second) / 2.0 / perSquare);
  return found;
}

}  // namespace oddglass::stats
