#include "beside/other.h"
#include "stats/checks/checked.h"
#include "stats/checks/correspondence.h"

#include <cmath>
#include <numeric>

using namespace oddglass::stats;
using beside::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Checks beside R (friedman.test, mcnemar.test, binom.test, p.adjust, svd, chisq.test) and SciPy in the same run, on open data that come with R and on seeded
// random data.

namespace {

CheckTable drawnTable(beside::Seeded& chance, int tasters, int samples) {
  CheckTable table(static_cast<std::size_t>(tasters), std::vector<int>(static_cast<std::size_t>(samples)));
  for (auto& row : table)
    for (int i = 0; i < samples; ++i) row[static_cast<std::size_t>(i)] = chance.uniform() < 0.25 + 0.5 * i / samples;
  return table;
}

}  // namespace

TEST_CASE("Cochran's Q beside R: by its formula, by friedman.test, and every way to deal the checks") {
  if (!beside::hasR()) return;
  beside::Seeded chance(301);
  for (const auto& [tasters, samples] : {std::pair{6, 3}, {7, 4}, {12, 2}, {15, 5}, {40, 6}}) {
    const CheckTable table = drawnTable(chance, tasters, samples);
    const CochranQ ours = cochranQ(table);
    REQUIRE(ours.statistic.has_value());
    const Json theirs = beside::inR("x <- " + beside::matrixForR(table) + R"(
k <- ncol(x); C <- colSums(x); R <- rowSums(x); q <- (k - 1) * (k * sum(C^2) - sum(x)^2) / (k * sum(x) - sum(R^2))
f <- friedman.test(x)
m <- x[R > 0 & R < k, , drop = FALSE]; exact <- NA_real_
if (prod(choose(k, rowSums(m))) <= 3e5) {
  sums <- matrix(0, 1, k)
  for (i in seq_len(nrow(m))) { w <- t(apply(combn(k, sum(m[i, ])), 2, function(j) tabulate(j, k))); sums <- do.call(rbind, lapply(seq_len(nrow(w)), function(j) sweep(sums, 2, w[j, ], "+"))) }
  exact <- mean(rowSums(sums^2) >= sum(colSums(m)^2))
}
out(list(q = q, f = unname(f$statistic), p = pchisq(q, k - 1, lower.tail = FALSE), exact = exact)))");
    INFO(tasters << " tasters, " << samples << " samples");
    CHECK_THAT(*ours.statistic, WithinRel(beside::numberIn(theirs.at("q")), 1e-10));
    CHECK_THAT(*ours.statistic, WithinRel(beside::numberIn(theirs.at("f")), 1e-10));
    CHECK_THAT(ours.pValue.value(), WithinRel(beside::numberIn(theirs.at("p")), 1e-9));
    if (tasters < 8) REQUIRE_FALSE(theirs.at("exact").at(0).is_null());
    if (!theirs.at("exact").at(0).is_null()) CHECK_THAT(ours.arranged.exact.value(), WithinRel(beside::numberIn(theirs.at("exact")), 1e-9));
  }
}

TEST_CASE("McNemar's exact p with Holm beside binom.test and p.adjust; Q of two samples beside mcnemar.test") {
  if (!beside::hasR()) return;
  beside::Seeded chance(302);
  const CheckTable table = drawnTable(chance, 14, 4);
  CheckRows rows{{}, {{}, 4}, {{}, 14}, {{}, 1}};
  for (std::size_t t = 0; t < table.size(); ++t)
    for (std::size_t s = 0; s < 4; ++s) {
      rows.checked.push_back(table[t][s]);
      rows.taster.of.push_back(static_cast<int>(t));
      rows.sample.of.push_back(static_cast<int>(s));
      rows.descriptor.of.push_back(0);
    }
  const CheckedDescriptor ours = checkedDescriptors(rows).at(0);
  const Json theirs = beside::inR("x <- " + beside::matrixForR(table) + R"(
i <- combn(4, 2); b <- colSums(x[, i[1, ]] > x[, i[2, ]]); c <- colSums(x[, i[1, ]] < x[, i[2, ]])
p <- mapply(function(b, c) if (b + c == 0) 1 else binom.test(b, b + c)$p.value, b, c)
m <- mcnemar.test(table(factor(x[, 1], 0:1), factor(x[, 4], 0:1)), correct = FALSE)
out(list(p = p, holm = p.adjust(p, "holm"), q = unname(m$statistic), mp = m$p.value)))");
  REQUIRE(ours.pairs.size() == theirs.at("p").size());
  for (std::size_t i = 0; i < ours.pairs.size(); ++i) {
    CHECK_THAT(ours.pairs[i].pMcNemar.value(), WithinRel(theirs.at("p").at(i).get<double>(), 1e-10));
    CHECK_THAT(ours.pairs[i].pHolm.value(), WithinRel(theirs.at("holm").at(i).get<double>(), 1e-10));
  }
  CheckTable two;
  for (const auto& row : table) two.push_back({row[0], row[3]});
  CHECK_THAT(cochranQ(two).statistic.value(), WithinRel(beside::numberIn(theirs.at("q")), 1e-10));
  CHECK_THAT(cochranQ(two).pValue.value(), WithinRel(beside::numberIn(theirs.at("mp")), 1e-9));
}

TEST_CASE("McNemar's exact p beside SciPy") {
  if (!beside::hasPython()) return;
  const Json theirs = beside::inPython("import json, scipy.stats as s\nprint(json.dumps([s.binomtest(b, b + c).pvalue for b in range(1, 12) for c in range(0, 12, 3)]))");
  std::size_t i = 0;
  for (int b = 1; b < 12; ++b)
    for (int c = 0; c < 12; c += 3) CHECK_THAT(mcNemar(b, c), WithinRel(theirs.at(i++).get<double>(), 1e-10));
}

// Hair and eyes of students (Snee 1974, The American Statistician 28:9), passengers by class and end (Dawson 1995, J. Stat.
// Educ. 3:3) and admissions (Bickel et al. 1975, Science 187:398) are in R itself.
TEST_CASE("the map beside R's svd on open data and random counts") {
  if (!beside::hasR()) return;
  beside::Seeded chance(303);
  std::vector<std::vector<double>> drawn(6, std::vector<double>(9));
  for (auto& row : drawn)
    for (double& cell : row) cell = chance.below(10);
  drawn[2][3] += 1;
  const Json tables = beside::inR("t <- list(margin.table(HairEyeColor, 1:2), t(apply(Titanic, c(1, 4), sum)), apply(UCBAdmissions, c(3, 1), sum), " + beside::matrixForR(drawn) + R"R()
out(lapply(t, function(x) {
  x <- unclass(as.matrix(x)); dimnames(x) <- NULL; P <- x / sum(x); r <- rowSums(P); c <- colSums(P)
  s <- svd((P - r %o% c) / sqrt(r %o% c)); k <- min(dim(x)) - 1; d <- s$d[1:k]
  F <- (s$u / sqrt(r))[, 1:k, drop = FALSE] %*% diag(d, k); G <- (s$v / sqrt(c))[, 1:k, drop = FALSE] %*% diag(d, k)
  sign <- apply(G, 2, function(g) sign(g[which.max(abs(g))])); F <- F %*% diag(sign, k); G <- G %*% diag(sign, k)
  list(x = x, inertia = d^2, rows = F, columns = G, chi = unname(suppressWarnings(chisq.test(x, correct = FALSE)$statistic)))
})))R");
  REQUIRE(tables.size() == 4);
  for (const Json& each : tables) {
    const auto counts = each.at("x").get<std::vector<std::vector<double>>>();
    const Correspondence ours = correspondence(counts);
    REQUIRE(ours.inertia.size() == each.at("inertia").size());
    double all = 0.0, total = 0.0;
    for (const auto& row : counts) all = std::accumulate(row.begin(), row.end(), all);
    for (std::size_t axis = 0; axis < ours.inertia.size(); ++axis) {
      total += ours.inertia[axis];
      CHECK_THAT(ours.inertia[axis], WithinAbs(each.at("inertia").at(axis).get<double>(), 1e-12));
      for (std::size_t i = 0; i < counts.size(); ++i) CHECK_THAT(ours.rows[i].value()[axis], WithinAbs(each.at("rows").at(i).at(axis).get<double>(), 1e-8));
      for (std::size_t j = 0; j < counts[0].size(); ++j) CHECK_THAT(ours.columns[j].value()[axis], WithinAbs(each.at("columns").at(j).at(axis).get<double>(), 1e-8));
    }
    CHECK_THAT(total * all, WithinRel(beside::numberIn(each.at("chi")), 1e-9));
  }
}
