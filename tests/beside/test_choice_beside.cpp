#include "beside/other.h"

#include "stats/binomial.h"
#include "stats/choice.h"
#include "stats/power.h"
#include "stats/psychometric.h"
#include "stats/signal/plan.h"
#include "stats/signal/r_index.h"
#include "stats/signal/yes_no.h"
#include "stats/votes/preference_plan.h"

#include <cmath>
#include <sstream>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// R (binom.test, qbinom, pbinom, fisher.test, glm) and SciPy (binomtest, hypergeom, mannwhitneyu) in the same run
// as ours, on a grid of methods and trials.

namespace {

constexpr Method methods[]{Method::triangle, Method::duoTrio, Method::tetrad, Method::twoOutOfFive, Method::pair, Method::threeAfc};
constexpr int trials[]{1, 3, 5, 6, 12, 18, 24, 60, 200, 1000};

std::vector<double> guesses() {
  std::vector<double> all;
  for (const Method method : methods) all.push_back(guessing(method));
  return all;
}

std::vector<double> trialsAsNumbers() { return {std::begin(trials), std::end(trials)}; }

/// Cells of 2 x 2 tables.
std::vector<YesNo> tables() {
  beside::Seeded seeded(42);
  std::vector<YesNo> all{{18, 6, 9, 15}, {8, 2, 3, 7}, {45, 15, 15, 45}, {0, 5, 5, 0}, {5, 0, 0, 5}};
  for (int i = 0; i < 60; ++i) {
    const int most = i % 2 ? 12 : 150;
    all.push_back({1 + seeded.below(most), 1 + seeded.below(most), 1 + seeded.below(most), 1 + seeded.below(most)});
  }
  return all;
}

std::string column(const std::vector<YesNo>& all, int YesNo::* cell) {
  std::vector<double> values;
  for (const YesNo& each : all) values.push_back(each.*cell);
  return beside::forR(values);
}

}  // namespace

TEST_CASE("p, interval, critical number and power of every method and number of trials, beside R") {
  if (!beside::hasR()) return;
  std::ostringstream script;
  script << "g <- " << beside::forR(guesses()) << "; n <- " << beside::forR(trialsAsNumbers()) << R"(
res <- list()
for (guess in g) for (k in n) {
  x <- ceiling(0.6 * k)
  t <- binom.test(x, k, guess, alternative = 'greater')
  i <- binom.test(x, k)$conf.int
  q <- qbinom(0.05, k, guess, lower.tail = FALSE) + 1
  pc <- guess + 0.4 * (1 - guess)
  res[[length(res) + 1]] <- c(t$p.value, i[1], i[2], q, if (q <= k) pbinom(q - 1, k, pc, lower.tail = FALSE) else 0, binom.test(x, k, 0.5)$p.value)
}
out(res))";
  const auto theirs = beside::inR(script.str());
  std::size_t at = 0;
  for (const Method method : methods)
    for (const int n : trials) {
      const auto& row = theirs.at(at++);
      INFO(static_cast<int>(method) << ' ' << n);
      const int x = static_cast<int>(std::ceil(0.6 * n));
      CHECK_THAT(pValue(method, x, n), WithinRel(row[0].get<double>(), 1e-10));
      const Interval interval = clopperPearson(x, n, 0.95);
      CHECK_THAT(interval.low, WithinAbs(row[1].get<double>(), 1e-9));
      CHECK_THAT(interval.high, WithinAbs(row[2].get<double>(), 1e-9));
      const auto needed = neededNumber(method, n, 0.05);
      CHECK(needed.has_value() == (row[3].get<int>() <= n));
      if (needed) CHECK(*needed == row[3].get<int>());
      CHECK_THAT(powerOf(method, n, rightAnswersOfShare(method, 0.4), 0.05).power, WithinAbs(row[4].get<double>(), 1e-10));
      CHECK_THAT(pValue(Method::preference, x, n), WithinRel(row[5].get<double>(), 1e-10));
    }
  CHECK(at == theirs.size());
}

TEST_CASE("p of every method and number of trials beside SciPy") {
  if (!beside::hasPython()) return;
  const auto theirs = beside::inPython("import json, math, scipy.stats as s\nr = []\nfor g in " + beside::forPython(guesses()) + ":\n  for n in " + beside::forPython(trialsAsNumbers()) +
                                       ":\n    r.append(s.binomtest(math.ceil(0.6 * n), int(n), g, alternative='greater').pvalue)\nprint(json.dumps(r))");
  std::size_t at = 0;
  for (const Method method : methods)
    for (const int n : trials) CHECK_THAT(pValue(method, static_cast<int>(std::ceil(0.6 * n)), n), WithinRel(theirs.at(at++).get<double>(), 1e-10));
}

TEST_CASE("right answers of a difference, integrated by R") {
  if (!beside::hasR()) return;
  // Each from its definition by quadrature: 3-AFC and tetrad over the weakest cup, triangle as a noncentral F (David and Trivedi 1962).
  const auto theirs = beside::inR(R"(
d <- c(0, 0.25, 0.5, 1, 1.5, 2, 3, 4)
afc <- sapply(d, function(k) integrate(function(z) dnorm(z - k) * pnorm(z)^2, -Inf, Inf, rel.tol = 1e-11)$value)
tri <- sapply(d, function(k) pf(3, 1, 1, ncp = 2 * k^2 / 3, lower.tail = FALSE))
tet <- sapply(d, function(k) 1 - 2 * integrate(function(z) dnorm(z) * (2 * pnorm(z) * pnorm(z - k) - pnorm(z - k)^2), -Inf, Inf, rel.tol = 1e-11)$value)
out(list(d = d, afc = afc, tri = tri, tet = tet)))");
  for (std::size_t i = 0; i < theirs.at("d").size(); ++i) {
    const double d = theirs.at("d")[i];
    INFO(d);
    CHECK_THAT(rightAnswers(Method::threeAfc, d), WithinAbs(theirs.at("afc")[i].get<double>(), 1e-8));
    CHECK_THAT(rightAnswers(Method::triangle, d), WithinAbs(theirs.at("tri")[i].get<double>(), 1e-8));
    CHECK_THAT(rightAnswers(Method::tetrad, d), WithinAbs(theirs.at("tet")[i].get<double>(), 1e-8));
  }
}

TEST_CASE("Fisher's p, and d' with its error as a probit model, beside R") {
  if (!beside::hasR()) return;
  const auto all = tables();
  std::ostringstream script;
  script << "h <- " << column(all, &YesNo::hits) << "; m <- " << column(all, &YesNo::misses) << "; f <- " << column(all, &YesNo::falseAlarms) << "; c <- " << column(all, &YesNo::correctRejections) << R"(
p <- mapply(function(a, b, x, y) fisher.test(matrix(c(a, x, b, y), 2), alternative = 'greater')$p.value, h, m, f, c)
fit <- function(a, b, x, y) {
  if (min(a, b, x, y) == 0) return(c(NA, NA))
  g <- glm(cbind(c(a, x), c(b, y)) ~ c(1, 0), family = binomial('probit'), control = list(epsilon = 1e-14, maxit = 100))
  summary(g)$coefficients[2, 1:2]
}
e <- mapply(fit, h, m, f, c)
out(list(p = p, d = e[1, ], se = e[2, ])))";
  const auto theirs = beside::inR(script.str());
  for (std::size_t i = 0; i < all.size(); ++i) {
    INFO(all[i].hits << ' ' << all[i].misses << ' ' << all[i].falseAlarms << ' ' << all[i].correctRejections);
    const SignalFound found = aNotA(all[i]);
    CHECK_THAT(found.pValue.value(), WithinRel(theirs.at("p")[i].get<double>(), 1e-9));
    REQUIRE(found.dPrime.has_value() == theirs.at("d")[i].is_number());
    if (!found.dPrime) continue;
    CHECK_THAT(*found.dPrime, WithinAbs(theirs.at("d")[i].get<double>(), 1e-6));
    CHECK_THAT(found.standardError.value(), WithinRel(theirs.at("se")[i].get<double>(), 1e-3));
  }
}

TEST_CASE("Fisher's p beside SciPy, and R as Mann and Whitney's U") {
  if (!beside::hasPython()) return;
  const auto theirs = beside::inPython(R"(
import json, numpy as np, scipy.stats as s
p = [s.hypergeom.sf(a - 1, a + b + c + d, a + b, a + c) for a, b, c, d in [(18, 6, 9, 15), (7, 3, 2, 8), (120, 30, 100, 50), (3, 9, 5, 2)]]
def u(x, y):
    x = np.repeat(range(len(x)), x); y = np.repeat(range(len(y)), y)
    return s.mannwhitneyu(-x, -y).statistic / (len(x) * len(y))
r = [u(x, y) for x, y in [([6, 3, 2, 1], [2, 2, 3, 5]), ([1, 0, 4], [3, 3, 1]), ([10, 20, 30, 5, 1, 0], [3, 9, 12, 20, 20, 4])]]
print(json.dumps({"p": p, "r": r})))");
  const YesNo four[]{{18, 6, 9, 15}, {7, 3, 2, 8}, {120, 30, 100, 50}, {3, 9, 5, 2}};
  for (std::size_t i = 0; i < 4; ++i) CHECK_THAT(fisherGreater(four[i]), WithinRel(theirs.at("p")[i].get<double>(), 1e-9));
  const std::pair<std::vector<int>, std::vector<int>> three[]{{{6, 3, 2, 1}, {2, 2, 3, 5}}, {{1, 0, 4}, {3, 3, 1}}, {{10, 20, 30, 5, 1, 0}, {3, 9, 12, 20, 20, 4}}};
  for (std::size_t i = 0; i < 3; ++i) CHECK_THAT(rIndexOf(three[i].first, three[i].second, 0.95)->rIndex, WithinRel(theirs.at("r")[i].get<double>(), 1e-12));
}

TEST_CASE("power of Fisher's test and of a preference, summed by R") {
  if (!beside::hasR()) return;
  const auto theirs = beside::inR(R"(
fisher <- function(n, d) {
  h <- pnorm(d / 2); f <- pnorm(-d / 2)
  s <- 0
  for (a in 0:n) for (x in 0:n) if (fisher.test(matrix(c(a, x, n - a, n - x), 2), alternative = 'greater')$p.value <= 0.05 * (1 + 1e-12)) s <- s + dbinom(a, n, h) * dbinom(x, n, f)
  s
}
votes <- function(n, share) { p <- sapply(0:n, function(x) binom.test(x, n)$p.value); sum(dbinom(0:n, n, share)[p <= 0.05 * (1 + 1e-12)]) }
out(list(f = c(fisher(6, 1), fisher(12, 1.5), fisher(20, 1)), v = c(votes(12, 0.7), votes(40, 0.7), votes(15, 0.9)))))");
  const std::pair<int, double> plans[]{{6, 1.0}, {12, 1.5}, {20, 1.0}}, votes[]{{12, 0.7}, {40, 0.7}, {15, 0.9}};
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK_THAT(fisherPower(plans[i].first, plans[i].first, aNotARates(plans[i].second, 0.0), 0.05).power, WithinRel(theirs.at("f")[i].get<double>(), 1e-9));
    CHECK_THAT(preferencePower(votes[i].first, votes[i].second, 0.05).power, WithinRel(theirs.at("v")[i].get<double>(), 1e-9));
  }
}
