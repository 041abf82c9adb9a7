#include "stats/psychometric.h"

#include "stats/check.h"
#include "stats/normal.h"
#include "stats/two_out_of_five.h"

#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace oddglass::stats {

namespace {

constexpr double root2 = std::numbers::sqrt2, root3 = std::numbers::sqrt3, root6 = root2 * root3;

// Integrates a smooth function that a normal density damps; panels of width 3 hold it to the last digits.
template <class F>
double integrate(F&& f, double low, double high) {
  const int count = static_cast<int>(std::ceil((high - low) / 3.0));
  const double width = (high - low) / count;
  double sum = 0.0;
  for (int k = 0; k < count; ++k)
    sum += boost::math::quadrature::gauss<double, 20>::integrate(f, low + k * width, low + (k + 1) * width);
  return sum;
}

double triangle(double d) {
  const double shift = d * root2 / root3;
  const auto f = [=](double z) { return (normalBelow(-z * root3 + shift) + normalBelow(-z * root3 - shift)) * normalDensity(z); };
  return 2.0 * integrate(f, 0.0, 9.0);
}

double tetrad(double d) {
  const auto f = [=](double z) { return normalDensity(z) * (2.0 * normalBelow(z) * normalBelow(z - d) - normalBelow(z - d) * normalBelow(z - d)); };
  return 1.0 - 2.0 * integrate(f, -9.0, 9.0);
}

double threeAfc(double d) {
  const auto f = [=](double z) { return normalDensity(z) * normalBelow(z + d) * normalBelow(z + d); };
  return integrate(f, -9.0, 9.0);
}

double duoTrio(double d) {
  const double a = normalBelow(d / root2), b = normalBelow(d / root6);
  return 1.0 - a - b + 2.0 * a * b;
}

void requireDPrime(Method method, double dPrime) {
  if (method == Method::preference) throw BadInput("method", "a preference has no right answer");
  if (!std::isfinite(dPrime) || dPrime < 0.0) throw BadInput("d_prime", "must be 0 or more");
}

}  // namespace

double rightAnswers(Method method, double dPrime) {
  requireDPrime(method, dPrime);
  const auto value = [&] {
    switch (method) {
      case Method::triangle: return triangle(dPrime);
      case Method::duoTrio: return duoTrio(dPrime);
      case Method::tetrad: return tetrad(dPrime);
      case Method::pair: return normalBelow(dPrime / root2);
      case Method::threeAfc: return threeAfc(dPrime);
      case Method::twoOutOfFive: return twoOutOfFive(std::min(dPrime, 40.0)).pc;
      case Method::preference: break;
    }
    throw BadInput("method", "unknown");
  };
  return std::clamp(value(), guessing(method), 1.0);
}

double rightAnswersSlope(Method method, double d) {
  requireDPrime(method, d);
  switch (method) {
    case Method::triangle: return root2 / root3 * normalDensity(d / root6) * (2.0 * normalBelow(d / root2) - 1.0);
    case Method::duoTrio:
      return normalDensity(d / root2) / root2 * (2.0 * normalBelow(d / root6) - 1.0) + normalDensity(d / root6) / root6 * (2.0 * normalBelow(d / root2) - 1.0);
    case Method::tetrad: return 2.0 * root2 * normalDensity(d / root2) * (2.0 * normalBelow(d / root6) - 1.0);
    case Method::pair: return normalDensity(d / root2) / root2;
    case Method::threeAfc: return root2 * normalDensity(d / root2) * normalBelow(d / root6);
    case Method::twoOutOfFive: return d == 0.0 ? 0.0 : twoOutOfFive(std::min(d, 40.0)).slope;
    case Method::preference: break;
  }
  throw BadInput("method", "unknown");
}

std::optional<double> dPrimeOf(Method method, double pc) {
  requireDPrime(method, 0.0);
  requireShare("pc", pc);
  if (pc <= guessing(method)) return 0.0;
  double high = 1.0;
  while (rightAnswers(method, high) < pc) {
    high *= 2.0;
    if (high > 32.0) return std::nullopt;
  }
  if (1.0 - pc < 1e-13) return std::nullopt;
  const auto gap = [&](double d) { return rightAnswers(method, d) - pc; };
  const double gapAtZero = guessing(method) - pc, gapAtHigh = gap(high);
  if (gapAtHigh == 0.0) return high;
  std::uintmax_t steps = 200;
  const auto [low, top] =
      boost::math::tools::toms748_solve(gap, 0.0, high, gapAtZero, gapAtHigh, boost::math::tools::eps_tolerance<double>(46), steps);
  return low + (top - low) / 2.0;
}

double rightAnswersOfShare(Method method, double pd) {
  if (method == Method::preference) throw BadInput("method", "a preference has no right answer");
  requireShare("pd", pd);
  return guessing(method) + (1.0 - guessing(method)) * pd;
}

double shareOf(Method method, double pc) {
  if (method == Method::preference) throw BadInput("method", "a preference has no right answer");
  requireShare("pc", pc);
  return std::max(0.0, (pc - guessing(method)) / (1.0 - guessing(method)));
}

}  // namespace oddglass::stats
