#include "beside/other.h"
#include "stats/share_change.h"

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// How a share and a spread change, beside SciPy's truncated beta distribution with its own quadrature, and R's quantiles of F.

namespace {

const char* changeInPython = R"py(
import json
from scipy import integrate, optimize, stats
def density(p, x, n, guess):
    beta = stats.beta(x + 1, n - x + 1)
    return beta.pdf(guess + (1 - guess) * p) * (1 - guess) / beta.sf(guess)
def below(p, x, n, guess):
    beta = stats.beta(x + 1, n - x + 1)
    return 1 - beta.sf(guess + (1 - guess) * min(max(p, 0), 1)) / beta.sf(guess)
def at_most(d):
    peak = min(max((X1 / N1 - G) / (1 - G), 0.001), 0.999)
    return integrate.quad(lambda p: below(p + d, X2, N2, G) * density(p, X1, N1, G), 0, 1, points=[peak, min(max(-d, 0), 1), min(max(1 - d, 0), 1)], limit=400, epsabs=1e-12)[0]
print(json.dumps([optimize.brentq(lambda d: at_most(d) - q, -1, 1, xtol=1e-11) for q in (0.5, 0.025, 0.975)]))
)py";

}  // namespace

TEST_CASE("a change of a share is what SciPy integrates", "[beside]") {
  if (!beside::hasPython()) return;
  struct Case {
    PersonCount before, after;
    double guess;
  };
  const Case of = GENERATE(Case{{3, 6}, {6, 6}, 0.5}, Case{{0, 3}, {9, 9}, 1.0 / 3}, Case{{5, 12}, {4, 12}, 1.0 / 3}, Case{{30, 40}, {35, 40}, 0.1}, Case{{1, 1}, {0, 1}, 0.5});
  const std::string given = "X1, N1, X2, N2, G = " + std::to_string(of.before.correct) + ", " + std::to_string(of.before.trials) + ", " + std::to_string(of.after.correct) + ", " +
                            std::to_string(of.after.trials) + ", " + beside::forPython({of.guess}) + "[0]\n";
  const beside::Json theirs = beside::inPython(given + changeInPython);
  const auto ours = changeOfShare(of.before, of.after, of.guess, 0.95);
  REQUIRE(ours);
  CHECK_THAT(ours->median, WithinAbs(beside::numberIn(theirs, 0), 2e-6));
  CHECK_THAT(ours->low, WithinAbs(beside::numberIn(theirs, 1), 2e-6));
  CHECK_THAT(ours->high, WithinAbs(beside::numberIn(theirs, 2), 2e-6));
}

TEST_CASE("a ratio of spreads has the limits of R's F", "[beside]") {
  if (!beside::hasR()) return;
  const beside::Json theirs = beside::inR("f <- (3.5 / 4) / (7.2 / 6)\nout(c(sqrt(f), sqrt(f / qf(.975, 4, 6)), sqrt(f / qf(.025, 4, 6))))");
  const auto ours = ratioOfSpreads(7.2, 6, 3.5, 4, 0.95);
  REQUIRE(ours);
  CHECK_THAT(ours->ratio, WithinRel(beside::numberIn(theirs, 0), 1e-12));
  CHECK_THAT(ours->low, WithinRel(beside::numberIn(theirs, 1), 1e-9));
  CHECK_THAT(ours->high, WithinRel(beside::numberIn(theirs, 2), 1e-9));
}
