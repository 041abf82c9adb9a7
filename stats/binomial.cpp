#include "stats/binomial.h"

#include "stats/check.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/special_functions/beta.hpp>

#include <algorithm>
#include <cmath>

namespace oddglass::stats {

namespace {

void requireInterval(int successes, int trials, double level) {
  requireCount("successes", successes, trials);
  if (trials == 0) throw BadInput("trials", "must be at least 1 for an interval");
  requireOpenShare("level", level);
}

}  // namespace

bool atMost(double p, double alpha) { return p <= alpha * (1.0 + 1e-12); }

double binomialMass(int x, int trials, double p) {
  requireTrials("trials", trials);
  requireShare("p", p);
  if (x < 0 || x > trials) return 0.0;
  if (p == 0.0) return x == 0 ? 1.0 : 0.0;
  if (p == 1.0) return x == trials ? 1.0 : 0.0;
  // The density of Beta(x + 1, n - x + 1) at p is n + 1 times the mass.
  return boost::math::ibeta_derivative(x + 1.0, trials - x + 1.0, p) / (trials + 1.0);
}

double upperTail(int x, int trials, double p) {
  requireTrials("trials", trials);
  requireShare("p", p);
  if (x <= 0) return 1.0;
  if (x > trials) return 0.0;
  return boost::math::ibeta(static_cast<double>(x), trials - x + 1.0, p);
}

double lowerTail(int x, int trials, double p) {
  requireTrials("trials", trials);
  requireShare("p", p);
  if (x < 0) return 0.0;
  if (x >= trials) return 1.0;
  return boost::math::ibetac(x + 1.0, static_cast<double>(trials - x), p);
}

double twoSidedHalf(int x, int trials) {
  requireCount("successes", x, trials);
  return std::min(1.0, 2.0 * upperTail(std::max(x, trials - x), trials, 0.5));
}

std::optional<int> criticalNumber(int trials, double guess, double alpha) {
  requireTrials("trials", trials);
  requireOpenShare("guess", guess);
  requireOpenShare("alpha", alpha);
  if (trials == 0 || !atMost(upperTail(trials, trials, guess), alpha)) return std::nullopt;
  int fails = 0, reaches = trials;  // P(X >= 0) is 1 and fails for every alpha below 1
  while (reaches - fails > 1) {
    const int middle = fails + (reaches - fails) / 2;
    (atMost(upperTail(middle, trials, guess), alpha) ? reaches : fails) = middle;
  }
  return reaches;
}

std::optional<int> criticalLargerSide(int trials, double alpha) {
  requireOpenShare("alpha", alpha);
  return criticalNumber(trials, 0.5, alpha / 2.0);
}

Interval clopperPearson(int successes, int trials, double level) {
  requireInterval(successes, trials, level);
  const double tail = (1.0 - level) / 2.0;
  const double x = successes, n = trials;
  return {successes == 0 ? 0.0 : boost::math::ibeta_inv(x, n - x + 1.0, tail),
          successes == trials ? 1.0 : boost::math::ibetac_inv(x + 1.0, n - x, tail)};
}

Interval wilson(int successes, int trials, double level) {
  requireInterval(successes, trials, level);
  const double z = boost::math::quantile(boost::math::complement(boost::math::normal(), (1.0 - level) / 2.0));
  const double n = trials, share = successes / n, z2 = z * z;
  const double middle = (share + z2 / (2.0 * n)) / (1.0 + z2 / n);
  const double half = z * std::sqrt(share * (1.0 - share) / n + z2 / (4.0 * n * n)) / (1.0 + z2 / n);
  return {successes == 0 ? 0.0 : middle - half, successes == trials ? 1.0 : middle + half};
}

Interval jeffreys(int successes, int trials, double level) {
  requireInterval(successes, trials, level);
  const double tail = (1.0 - level) / 2.0;
  const double a = successes + 0.5, b = trials - successes + 0.5;
  return {successes == 0 ? 0.0 : boost::math::ibeta_inv(a, b, tail),
          successes == trials ? 1.0 : boost::math::ibetac_inv(a, b, tail)};
}

}  // namespace oddglass::stats
