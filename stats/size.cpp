#include "stats/size.h"

#include "stats/binomial.h"
#include "stats/check.h"

#include <algorithm>

namespace oddglass::stats {

Sizes sizeFor(Method method, double pc, double power, double alpha) {
  if (method == Method::preference) throw BadInput("method", "a preference has no right answer");
  const double guess = guessing(method);
  requireOpenShare("power", power);
  requireOpenShare("alpha", alpha);
  if (!(pc > guess && pc <= 1.0)) throw BadInput("pc", "must be above guessing and at most 1");
  constexpr int last = 100'000;
  Sizes sizes;
  int critical = 1;  // never falls as trials are added, so the search goes on from the last one
  for (int n = 1; n <= last; ++n) {
    while (critical <= n && !atMost(upperTail(critical, n, guess), alpha)) ++critical;
    const double here = critical <= n ? upperTail(critical, n, pc) : 0.0;
    if (here < power) {
      sizes.stable.reset();
      continue;
    }
    if (!sizes.first) sizes.first = Size{n, critical, here};
    if (!sizes.stable) sizes.stable = Size{n, critical, here};
    if (n >= sizes.stable->trials + std::max(100, sizes.stable->trials / 2)) return sizes;
  }
  sizes.stable.reset();
  sizes.why = Reason::beyondSearch;
  return sizes;
}

}  // namespace oddglass::stats
