#include "stats/size.h"

#include "stats/binomial.h"
#include "stats/check.h"
#include "stats/power_curve.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {

Sizes sizeFor(Method method, double pc, double power, double alpha) {
  if (method == Method::preference) throw BadInput("method", "a preference has no right answer");
  const double guess = guessing(method);
  requireOpenShare("power", power);
  constexpr int last = 100'000;
  Sizes sizes;
  for (PowerWalk walk(guess, pc, alpha); walk.trials() <= last; walk.oneMoreTrial()) {
    const int n = walk.trials();
    const auto exactly = [&] { return walk.critical() ? upperTail(*walk.critical(), n, pc) : 0.0; };
    const bool isNear = std::abs(walk.power() - power) < 1e-9;
    if ((isNear ? exactly() : walk.power()) < power) {
      sizes.stable.reset();
      continue;
    }
    if (!sizes.first) sizes.first = Size{n, *walk.critical(), exactly()};
    if (!sizes.stable) sizes.stable = Size{n, *walk.critical(), exactly()};
    if (n >= sizes.stable->trials + std::max(100, sizes.stable->trials / 2)) return sizes;
  }
  sizes.stable.reset();
  sizes.why = Reason::beyondSearch;
  return sizes;
}

}  // namespace oddglass::stats
