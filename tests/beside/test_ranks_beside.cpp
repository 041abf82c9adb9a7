#include "beside/other.h"
#include "stats/pairs/bradley_terry.h"
#include "stats/ranked.h"
#include "stats/ranks/durbin.h"
#include "stats/ranks/friedman.h"
#include "stats/ranks/page.h"
#include "stats/ranks/pairs.h"
#include "stats/ranks/sign_flip.h"

#include <cmath>
#include <numeric>
#include <sstream>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// R (friedman.test, glm, lm, ptukey, p.adjust) and SciPy (friedmanchisquare, page_trend_test, permutation_test) in the same run.

namespace {

using Rows = std::vector<std::vector<double>>;

Rows drawnRows(beside::Seeded& chance, int tasters, int samples, int marks) {
  Rows rows(static_cast<std::size_t>(tasters));
  for (auto& row : rows)
    for (int i = 0; i < samples; ++i) row.push_back(marks > 0 ? chance.below(marks) : chance.normal() + 0.3 * i);
  return rows;
}

std::vector<double> flat(const Rows& rows) {
  std::vector<double> all;
  for (const auto& row : rows) all.insert(all.end(), row.begin(), row.end());
  return all;
}

std::string rowsForPython(const Rows& rows) {
  std::string text = "[";
  for (const auto& row : rows) text += beside::forPython(row) + ",";
  return text + "]";
}

}  // namespace

TEST_CASE("Friedman beside R and SciPy, with ties and without") {
  beside::Seeded chance(101);
  // The rounding times of Hollander and Wolfe 1973, p. 140, as in R's own example of friedman.test (from memory; R is given the same figures).
  std::vector<Rows> tables{{{5.40, 5.50, 5.55}, {5.85, 5.70, 5.75}, {5.20, 5.60, 5.50}, {5.55, 5.50, 5.40}, {5.90, 5.85, 5.70}, {5.45, 5.55, 5.60}, {5.40, 5.40, 5.35}, {5.45, 5.50, 5.35},
                            {5.25, 5.15, 5.00}, {5.85, 5.80, 5.70}, {5.25, 5.20, 5.10}, {5.65, 5.55, 5.45}, {5.60, 5.35, 5.45}, {5.05, 5.00, 4.95}, {5.50, 5.50, 5.40}, {5.45, 5.55, 5.50},
                            {5.55, 5.55, 5.35}, {5.45, 5.50, 5.55}, {5.50, 5.45, 5.25}, {5.65, 5.60, 5.40}, {5.70, 5.65, 5.55}, {6.30, 6.30, 6.25}}};
  for (const auto& [tasters, samples, marks] : {std::tuple{6, 4, 5}, {12, 8, 9}, {9, 3, 3}, {4, 5, 0}, {15, 6, 0}}) tables.push_back(drawnRows(chance, tasters, samples, marks));
  for (const Rows& rows : tables) {
    const Friedman ours = friedman(ranked(rows));
    if (beside::hasR()) {
      const auto theirs = beside::inR("t <- friedman.test(" + beside::matrixForR(rows) + "); out(list(q = unname(t$statistic), p = t$p.value))");
      CHECK_THAT(ours.statistic.value(), WithinRel(beside::numberIn(theirs.at("q")), 1e-10));
      CHECK_THAT(ours.pValue.value(), WithinRel(beside::numberIn(theirs.at("p")), 1e-9));
    }
    if (beside::hasPython() && rows[0].size() > 2) {
      const auto theirs = beside::inPython("import json, numpy as np, scipy.stats as s\nt = s.friedmanchisquare(*np.array(" + rowsForPython(rows) + ").T)\nprint(json.dumps([t.statistic, t.pvalue]))");
      CHECK_THAT(ours.statistic.value(), WithinRel(theirs.at(0).get<double>(), 1e-10));
      CHECK_THAT(ours.pValue.value(), WithinRel(theirs.at(1).get<double>(), 1e-9));
    }
  }
}

TEST_CASE("Page's L beside SciPy: exact and normal") {
  if (!beside::hasPython()) return;
  beside::Seeded chance(102);
  for (const auto& [tasters, samples] : {std::pair{4, 3}, {8, 4}, {12, 5}, {6, 7}}) {
    const Rows rows = drawnRows(chance, tasters, samples, 0);
    std::vector<int> order(static_cast<std::size_t>(samples));
    std::iota(order.begin(), order.end(), 0);
    const Page ours = page(ranked(rows), order);
    const auto theirs = beside::inPython("import json, numpy as np, scipy.stats as s\nx = np.array(" + rowsForPython(rows) +
                                         ")\ne = s.page_trend_test(x, method='exact')\na = s.page_trend_test(x, method='asymptotic')\nprint(json.dumps([e.statistic, e.pvalue, a.pvalue]))");
    CHECK_THAT(ours.l, WithinRel(theirs.at(0).get<double>(), 1e-12));
    CHECK_THAT(ours.pExact.value(), WithinRel(theirs.at(1).get<double>(), 1e-9));
    CHECK_THAT(ours.pValue.value(), WithinRel(theirs.at(2).get<double>(), 1e-9));
  }
}

TEST_CASE("pairs of ranks beside R: the studentized range, and t on the ranks' own residual with Holm") {
  if (!beside::hasR()) return;
  beside::Seeded chance(103);
  for (const auto& [tasters, samples, marks] : {std::tuple{8, 4, 6}, {12, 5, 0}}) {
    const Rows rows = drawnRows(chance, tasters, samples, marks);
    const RankPairs ours = rankPairs(ranked(rows));
    // The residual of ranks on taster and sample, by R's own linear model.
    const auto theirs = beside::inR("x <- " + beside::matrixForR(rows) + R"(
r <- t(apply(x, 1, rank)); n <- nrow(r); k <- ncol(r); R <- colSums(r)
d <- data.frame(r = as.vector(r), who = factor(as.vector(row(r))), what = factor(as.vector(col(r))))
m <- lm(r ~ who + what, d); s2 <- deviance(m) / df.residual(m)
i <- combn(k, 2)
D <- R[i[1, ]] - R[i[2, ]]
out(list(nemenyi = ptukey(abs(D) / sqrt(n * k * (k + 1) / 12), k, Inf, lower.tail = FALSE),
         conover = p.adjust(2 * pt(abs(D) / sqrt(2 * n * s2), df.residual(m), lower.tail = FALSE), "holm"))))");
    REQUIRE(theirs.at("nemenyi").size() == ours.pairs.size());
    for (std::size_t i = 0; i < ours.pairs.size(); ++i) {
      CHECK_THAT(ours.pairs[i].pNemenyi.value(), WithinAbs(theirs.at("nemenyi").at(i).get<double>(), 1e-8));
      CHECK_THAT(ours.pairs[i].pConoverHolm.value(), WithinRel(theirs.at("conover").at(i).get<double>(), 1e-8));
    }
  }
}

TEST_CASE("ranks with answers missing, beside R's own matrices") {
  if (!beside::hasR()) return;
  beside::Seeded chance(104);
  std::vector<double> values, who, what;
  Factor sample{{}, 5}, taster{{}, 8};
  for (int i = 0; i < 8; ++i)
    for (int k = 0; k < 5; ++k)
      if ((i + 2 * k) % 4 != 0) {
        values.push_back(chance.below(6));
        sample.of.push_back(k);
        taster.of.push_back(i);
        what.push_back(k + 1);
        who.push_back(i + 1);
      }
  const Durbin ours = durbin(rankBlocks(values, sample, taster));
  CHECK_FALSE(ours.blocks.isBalanced);
  const auto theirs = beside::inR("y <- " + beside::forR(values) + "; who <- " + beside::forR(who) + "; what <- " + beside::forR(what) + R"(
A <- rep(0, 5); V <- matrix(0, 5, 5)
for (i in unique(who)) {
  at <- what[who == i]; r <- rank(y[who == i]); k <- length(r)
  A[at] <- A[at] + r - (k + 1) / 2
  V[at, at] <- V[at, at] + var(r) * (diag(k) - 1 / k)
}
out(list(q = drop(A[-1] %*% solve(V[-1, -1], A[-1])))))");
  CHECK_THAT(ours.statistic.value(), WithinRel(beside::numberIn(theirs.at("q")), 1e-9));
}

TEST_CASE("Bradley-Terry beside R's glm, with and without an effect of the place") {
  if (!beside::hasR()) return;
  beside::Seeded chance(105);
  for (const bool isOneWay : {true, false}) {
    constexpr int samples = 5;
    std::vector<PairedChoice> choices;
    std::vector<double> left, right, won;
    for (int n = 0; n < 90; ++n) {
      int a = chance.below(samples), b = (a + 1 + chance.below(samples - 1)) % samples;
      if (isOneWay && a > b) std::swap(a, b);
      const bool isLeft = chance.uniform() < 1.0 / (1.0 + std::exp(-0.4 * (a - b) - 0.3));
      choices.push_back({a, b, isLeft ? Choice::left : Choice::right});
      left.push_back(a + 1);
      right.push_back(b + 1);
      won.push_back(isLeft);
    }
    const BradleyTerry ours = bradleyTerry(choices, samples);
    REQUIRE_FALSE(ours.isRegularised);
    REQUIRE(ours.order.has_value() != isOneWay);
    const auto theirs = beside::inR("l <- " + beside::forR(left) + "; r <- " + beside::forR(right) + "; y <- " + beside::forR(won) + R"(
X <- matrix(0, length(l), 5); X[cbind(seq_along(l), l)] <- 1; X[cbind(seq_along(r), r)] <- -1; X <- X[, -1]
tight <- glm.control(epsilon = 1e-14, maxit = 100)
m <- glm(y ~ X, family = binomial, control = tight); m0 <- glm(y ~ 0 + X, family = binomial, control = tight); e <- glm(y ~ 1, family = binomial, control = tight)
one <- function(m, at) list(b = unname(coef(m)[at]), se = unname(sqrt(diag(vcov(m)))[at]))
out(list(order = one(m, 1), worth = one(m, 2:5), plain = one(m0, 1:4), lr = deviance(e) - deviance(m), lr0 = 2 * length(y) * log(2) - deviance(m0), lo = deviance(m0) - deviance(m), ll = as.numeric(logLik(m)), ll0 = as.numeric(logLik(m0)))))");
    const auto& worth = theirs.at(isOneWay ? "plain" : "worth");
    for (int i = 1; i < samples; ++i) {
      CHECK_THAT(ours.worth[static_cast<std::size_t>(i)] - ours.worth[0], WithinAbs(worth.at("b").at(static_cast<std::size_t>(i - 1)).get<double>(), 1e-8));
      CHECK_THAT(ours.se(0, i), WithinRel(worth.at("se").at(static_cast<std::size_t>(i - 1)).get<double>(), 1e-6));
    }
    CHECK_THAT(ours.equal.value().statistic, WithinRel(beside::numberIn(theirs.at(isOneWay ? "lr0" : "lr")), 1e-8));
    CHECK_THAT(ours.logLikelihood, WithinRel(beside::numberIn(theirs.at(isOneWay ? "ll0" : "ll")), 1e-9));
    if (isOneWay) continue;
    CHECK_THAT(ours.order.value(), WithinAbs(beside::numberIn(theirs.at("order").at("b")), 1e-8));
    CHECK_THAT(ours.orderSe.value(), WithinRel(beside::numberIn(theirs.at("order").at("se")), 1e-6));
    CHECK_THAT(ours.noOrder.value().statistic, WithinAbs(beside::numberIn(theirs.at("lo")), 1e-8));
  }
}

TEST_CASE("Davidson's ties beside R: a log-linear model of the three outcomes by glm") {
  if (!beside::hasR()) return;
  beside::Seeded chance(106);
  constexpr int samples = 4;
  std::vector<PairedChoice> choices;
  for (int n = 0; n < 120; ++n) {
    const int a = chance.below(samples), b = (a + 1 + chance.below(samples - 1)) % samples, came = chance.below(10);
    choices.push_back({a, b, came < 2 ? Choice::tie : came < 6 + (a > b) ? Choice::left : Choice::right});
  }
  const BradleyTerry ours = bradleyTerry(choices, samples);
  // Poisson counts with a free mean for each ordered pair have the same maximum (Fienberg 1979, Biometrics 35:479).
  std::vector<double> cell, count, tie, place, worth;
  const auto counts = countPairs(choices, samples);
  for (std::size_t i = 0; i < counts.size(); ++i)
    for (int outcome = 0; outcome < 3; ++outcome) {
      cell.push_back(static_cast<double>(i));
      count.push_back(outcome == 0 ? counts[i].leftWins : outcome == 1 ? counts[i].rightWins : counts[i].ties);
      tie.push_back(outcome == 2);
      place.push_back(outcome == 0 ? 0.5 : outcome == 1 ? -0.5 : 0.0);
      for (int k = 1; k < samples; ++k) worth.push_back(outcome == 2 ? 0.5 * ((counts[i].left == k) + (counts[i].right == k)) : (outcome == 0 ? counts[i].left : counts[i].right) == k);
    }
  const auto theirs = beside::inR("W <- matrix(" + beside::forR(worth) + ", ncol = 3, byrow = TRUE); m <- glm(" + beside::forR(count) + " ~ 0 + factor(" + beside::forR(cell) + ") + W + " + "I(" + beside::forR(tie) + ") + I(" +
                                  beside::forR(place) + R"(), family = poisson, control = glm.control(epsilon = 1e-14, maxit = 100))
k <- length(coef(m)); at <- (k - 4):k
out(list(b = unname(coef(m)[at]), se = unname(sqrt(diag(vcov(m)))[at]))))");
  const auto& b = theirs.at("b");
  for (int i = 1; i < samples; ++i) {
    CHECK_THAT(ours.worth[static_cast<std::size_t>(i)] - ours.worth[0], WithinAbs(b.at(static_cast<std::size_t>(i - 1)).get<double>(), 1e-7));
    CHECK_THAT(ours.se(0, i), WithinRel(theirs.at("se").at(static_cast<std::size_t>(i - 1)).get<double>(), 1e-6));
  }
  CHECK_THAT(std::log(ours.tie.value()), WithinAbs(b.at(3).get<double>(), 1e-7));
  CHECK_THAT(ours.order.value(), WithinAbs(b.at(4).get<double>(), 1e-7));
  CHECK_THAT(ours.orderSe.value(), WithinRel(theirs.at("se").at(4).get<double>(), 1e-6));
}

TEST_CASE("sign flips beside SciPy's permutation test of a paired mean") {
  if (!beside::hasPython()) return;
  beside::Seeded chance(107);
  for (int n : {4, 7, 11}) {
    std::vector<double> differences;
    for (int i = 0; i < n; ++i) differences.push_back(chance.below(9) / 2.0 - 1.5);
    const auto theirs = beside::inPython("import json, numpy as np, scipy.stats as s\nd = np.array(" + beside::forPython(differences) +
                                         ")\nf = lambda x, axis: np.mean(x, axis=axis)\np = [s.permutation_test((d,), f, permutation_type='samples', vectorized=True, n_resamples=np.inf, alternative=a).pvalue for a in ['two-sided', 'greater']]\nprint(json.dumps(p))");
    const SignFlip ours = signFlip(differences);
    CHECK_THAT(ours.pTwoSided, WithinAbs(std::min(1.0, theirs.at(0).get<double>()), 1e-9));
    CHECK_THAT(ours.pGreater, WithinAbs(theirs.at(1).get<double>(), 1e-9));
  }
}
