#include "beside/other.h"
#include "stats/open_table.h"
#include "stats/profile/components.h"
#include "stats/profile/profile.h"
#include "stats/profile/rv.h"
#include "stats/profiles.h"

#include <cmath>

using namespace oddglass::stats;
using beside::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Profiles beside R (base, lmerTest, multcomp) and NumPy/SciPy in the same run, on seeded random data and on open tables.

namespace {

/// The rows as a data frame `d` with y, w (descriptor), t, s.
std::string frame(const ProfileRows& rows) {
  return "d <- data.frame(y = " + beside::forR(rows.scores.response) + ", w = factor(" + beside::forR(beside::doubles(rows.descriptor.of)) + "), t = factor(" + beside::forR(beside::doubles(rows.scores.taster.of)) +
         "), s = factor(" + beside::forR(beside::doubles(rows.scores.sample.of)) + "))\n";
}

ProfileRows profilePanelOf(unsigned seed, const profiles::Drawn& plan) {
  simulated::Chance chance(seed);
  return profiles::drawn(chance, plan);
}

ProfileQuestion against(int reference, double limit) {
  ProfileQuestion question;
  question.reference = reference;
  question.limit = limit;
  return question;
}

/// Samples in rows, descriptors in columns, from a table of one answer a cell.
ProfileRows ofColumns(const open_data::Table& table, const std::vector<std::string>& columns) {
  ProfileRows rows;
  for (std::size_t d = 0; d < columns.size(); ++d) {
    const auto values = table.numbers(columns[d]);
    for (std::size_t s = 0; s < values.size(); ++s) profiles::add(rows, static_cast<int>(d), 0, static_cast<int>(s), values[s]);
  }
  return rows;
}

void requireComponents(const ProfileComponents& ours, const Json& theirs, double tolerance) {
  REQUIRE(ours.variances.size() <= theirs.at("variance").size());
  for (std::size_t axis = 0; axis < ours.variances.size(); ++axis) {
    CHECK_THAT(ours.variances[axis], WithinRel(beside::numberIn(theirs.at("variance"), axis), 1e-9));
    const auto column = static_cast<Eigen::Index>(axis);
    // R leaves the sign open: ours makes the largest loading positive.
    double sign = 0.0, largest = 0.0;
    for (Eigen::Index d = 0; d < ours.descriptors.rows(); ++d)
      if (std::abs(ours.descriptors(d, column)) > largest) largest = std::abs(ours.descriptors(d, column)), sign = beside::numberIn(theirs.at("loading")[static_cast<std::size_t>(d)], axis) > 0.0 ? 1.0 : -1.0;
    for (Eigen::Index d = 0; d < ours.descriptors.rows(); ++d) CHECK_THAT(ours.descriptors(d, column), WithinAbs(sign * beside::numberIn(theirs.at("loading")[static_cast<std::size_t>(d)], axis), tolerance));
    for (Eigen::Index s = 0; s < ours.samples.rows(); ++s) CHECK_THAT(ours.samples(s, column), WithinAbs(sign * beside::numberIn(theirs.at("score")[static_cast<std::size_t>(s)], axis), tolerance * std::sqrt(ours.variances[0])));
  }
}

const char* componentsInR = "out(list(variance = p$sdev^2, loading = p$rotation, score = p$x))";

}  // namespace

TEST_CASE("verdicts beside t.test, aov and p.adjust") {
  if (!beside::hasR()) return;
  for (unsigned seed : {61u, 62u, 63u}) {
    INFO("seed " << seed);
    const ProfileRows rows = profilePanelOf(seed, {7, 2, 6, 2, 0.3, 1.0, 0.5, 0.7});
    const auto ours = profileOf(rows, against(0, 1.5));
    const Json theirs = beside::inR(frame(rows) + R"R(
one <- function(w) {
  e <- d[d$w == w, ]; m <- tapply(e$y, list(e$t, e$s), mean)
  t <- t.test(m[, 2], m[, 1], paired = TRUE); l <- t.test(m[, 2], m[, 1], paired = TRUE, conf.level = 0.9)
  q <- max(t.test(m[, 2], m[, 1], paired = TRUE, mu = -1.5, alternative = "greater")$p.value, t.test(m[, 2], m[, 1], paired = TRUE, mu = 1.5, alternative = "less")$p.value)
  a <- summary(aov(y ~ s + Error(t/s), e))[["Error: t:s"]][[1]]
  c(t$estimate, t$conf.int, t$p.value, q, l$conf.int, a[1, "F value"], a[1, "Pr(>F)"])
}
m <- sapply(levels(d$w), one)
out(list(d = m[1, ], low = m[2, ], high = m[3, ], p = m[4, ], q = m[5, ], llow = m[6, ], lhigh = m[7, ], f = m[8, ], fp = m[9, ],
  pa = p.adjust(m[4, ], "BH"), qa = p.adjust(m[5, ], "BH"), fh = p.adjust(m[9, ], "holm"), fb = p.adjust(m[9, ], "BH"))))R");
    for (std::size_t w = 0; w < ours.size(); ++w) {
      const ProfileDifference& one = ours[w].differences[0];
      CHECK_THAT(*one.difference, WithinAbs(beside::numberIn(theirs.at("d"), w), 1e-12));
      CHECK_THAT(*one.low, WithinAbs(beside::numberIn(theirs.at("low"), w), 1e-9));
      CHECK_THAT(*one.high, WithinAbs(beside::numberIn(theirs.at("high"), w), 1e-9));
      CHECK_THAT(*one.pValue, WithinRel(beside::numberIn(theirs.at("p"), w), 1e-9));
      CHECK_THAT(*one.pLimit, WithinRel(beside::numberIn(theirs.at("q"), w), 1e-9));
      CHECK_THAT(*one.limitLow, WithinAbs(beside::numberIn(theirs.at("llow"), w), 1e-9));
      CHECK_THAT(*one.limitHigh, WithinAbs(beside::numberIn(theirs.at("lhigh"), w), 1e-9));
      CHECK_THAT(*one.pAdjusted, WithinRel(beside::numberIn(theirs.at("pa"), w), 1e-9));
      CHECK_THAT(*one.pLimitAdjusted, WithinRel(beside::numberIn(theirs.at("qa"), w), 1e-9));
      CHECK_THAT(ours[w].test->F, WithinRel(beside::numberIn(theirs.at("f"), w), 1e-9));
      CHECK_THAT(ours[w].test->pValue, WithinRel(beside::numberIn(theirs.at("fp"), w), 1e-9));
      CHECK_THAT(*ours[w].pHolm, WithinRel(beside::numberIn(theirs.at("fh"), w), 1e-9));
      CHECK_THAT(*ours[w].pBenjaminiHochberg, WithinRel(beside::numberIn(theirs.at("fb"), w), 1e-9));
    }
  }
}

TEST_CASE("several samples against the reference beside multcomp") {
  if (!beside::hasR("multcomp")) return;
  // A full table: least squares of taster + sample on the means over rounds.
  const ProfileRows rows = profilePanelOf(64, {8, 4, 1, 2, 0.3});
  const auto ours = profileOf(rows, against(0, 1.0))[0].differences;
  const Json theirs = beside::inR("suppressMessages(library(multcomp)); set.seed(1)\n" + frame(rows) + R"R(
m <- aggregate(y ~ t + s, d, mean)
g <- glht(lm(y ~ s + t, m), mcp(s = "Dunnett"))
s <- summary(g, test = adjusted("single-step", abseps = 1e-5, maxpts = 1e6))$test
k <- confint(g, calpha = adjusted_calpha(abseps = 1e-4))$confint
out(list(d = s$coefficients, se = s$sigma, p = s$pvalues, low = k[, "lwr"], high = k[, "upr"])))R");
  for (std::size_t i = 0; i < ours.size(); ++i) {
    CHECK_THAT(*ours[i].difference, WithinAbs(beside::numberIn(theirs.at("d"), i), 1e-10));
    CHECK_THAT(*ours[i].se, WithinRel(beside::numberIn(theirs.at("se"), i), 1e-10));
    // Its integrals are drawn.
    CHECK_THAT(*ours[i].pValue, WithinAbs(beside::numberIn(theirs.at("p"), i), 5e-4));
    CHECK_THAT(*ours[i].low, WithinAbs(beside::numberIn(theirs.at("low"), i), 5e-3));
    CHECK_THAT(*ours[i].high, WithinAbs(beside::numberIn(theirs.at("high"), i), 5e-3));
  }
}

TEST_CASE("a profile with holes beside lmerTest and paired t tests") {
  if (!beside::hasR("lme4 lmerTest")) return;
  const ProfileRows rows = profilePanelOf(65, {9, 4, 3, 2, 0.4, 1.0, 1.2, 0.6, 0.15});
  const auto ours = profileOf(rows, against(1, 2.0));
  const Json theirs = beside::inR("suppressMessages({library(lme4); library(lmerTest)})\n" + frame(rows) + R"R(
one <- function(w) {
  e <- d[d$w == w, ]; a <- anova(suppressMessages(lmer(y ~ s + (1 | t) + (1 | t:s), e)))["s", ]
  m <- tapply(e$y, list(e$t, e$s), mean); r <- residuals(lm(as.vector(m) ~ factor(row(m)) + factor(col(m))))
  df <- sum(!is.na(m)) - nrow(m) - ncol(m) + 1
  p <- lapply(c(1, 3, 4), function(j) { x <- m[, j] - m[, 2]; x <- x[!is.na(x)]
    c(mean(x), length(x), max(t.test(x, mu = -2, alternative = "greater")$p.value, t.test(x, mu = 2, alternative = "less")$p.value), sqrt(2 * sum(r^2) / df / length(x)), df) })
  c(a[["F value"]], a[["DenDF"]], a[["Pr(>F)"]], unlist(p))
}
out(lapply(levels(d$w), one)))R");
  for (std::size_t w = 0; w < ours.size(); ++w) {
    INFO("descriptor " << w);
    CHECK(ours[w].fit == ScoreFit::mixed);
    CHECK_THAT(ours[w].test.value().F, WithinRel(beside::numberIn(theirs[w], 0), 1e-4));
    CHECK_THAT(ours[w].test->df2, WithinRel(beside::numberIn(theirs[w], 1), 1e-3));
    CHECK_THAT(ours[w].test->pValue, WithinRel(beside::numberIn(theirs[w], 2), 1e-3));
    for (std::size_t i = 0; i < 3; ++i) {
      const ProfileDifference& one = ours[w].differences[i];
      CHECK_THAT(*one.difference, WithinAbs(beside::numberIn(theirs[w], 3 + 5 * i), 1e-10));
      CHECK(one.tasters == beside::numberIn(theirs[w], 4 + 5 * i));
      CHECK_THAT(*one.pLimit, WithinRel(beside::numberIn(theirs[w], 5 + 5 * i), 1e-9));
      CHECK_THAT(*one.se, WithinRel(beside::numberIn(theirs[w], 6 + 5 * i), 1e-9));
      CHECK(*one.df == beside::numberIn(theirs[w], 7 + 5 * i));
    }
  }
}

TEST_CASE("components beside prcomp") {
  if (!beside::hasR()) return;
  const std::vector<std::string> arrests{"Murder", "Assault", "UrbanPop", "Rape"}, iris{"Sepal.Length", "Sepal.Width", "Petal.Length", "Petal.Width"};
  for (const char* scaled : {"FALSE", "TRUE"}) {
    const bool isScaled = std::string(scaled) == "TRUE";
    // R carries both tables (McNeil 1977; Anderson 1935).
    requireComponents(componentsOf(profileCells(ofColumns(open_data::Table("usarrests"), arrests)), isScaled), beside::inR(std::string("p <- prcomp(USArrests, scale. = ") + scaled + ")\n" + componentsInR), 1e-9);
    requireComponents(componentsOf(profileCells(ofColumns(open_data::Table("iris"), iris)), isScaled), beside::inR(std::string("p <- prcomp(iris[, 1:4], scale. = ") + scaled + ")\n" + componentsInR), 1e-9);
    const ProfileRows rows = profilePanelOf(66, {6, 5, 8, 2, 0.3});
    requireComponents(componentsOf(profileCells(rows), isScaled), beside::inR(frame(rows) + "p <- prcomp(tapply(d$y, list(d$s, d$w), mean), scale. = " + scaled + ")\n" + componentsInR), 1e-9);
  }
  // With holes: the panel's means are those of lm(y ~ taster + sample) on the cells.
  const ProfileRows rows = profilePanelOf(67, {7, 5, 4, 1, 0.4, 1.0, 1.0, 0.0, 0.15});
  requireComponents(componentsOf(profileCells(rows)), beside::inR(frame(rows) + R"R(
options(contrasts = c("contr.sum", "contr.sum"))
p <- prcomp(sapply(levels(d$w), function(w) { b <- coef(lm(y ~ s + t, d[d$w == w, ])); b[1] + c(b[2:5], -sum(b[2:5])) }))
)R" + componentsInR), 1e-9);
}

TEST_CASE("ellipses and RV beside NumPy and SciPy") {
  if (!beside::hasPython()) return;
  const int tasters = 7, samples = 6, descriptors = 4;
  const ProfileRows rows = profilePanelOf(68, {tasters, samples, descriptors, 1, 0.4});
  const ProfileCells cells = profileCells(rows);
  const ProfileComponents map = componentsOf(cells);
  const auto rv = rvOf(cells);
  // Rows come by descriptor, taster, sample.
  const Json theirs = beside::inPython("import json, itertools, numpy as np\nfrom scipy import stats\nx = np.array(" + beside::forPython(rows.scores.response) + R"P().reshape(4, 7, 6).transpose(1, 2, 0)
m = x.mean(0); c = m - m.mean(0); u, s, vt = np.linalg.svd(c, full_matrices=False); v = vt[:2].T
v = v * np.sign(v[np.abs(v).argmax(0), [0, 1]])
points = (x - x.mean(1, keepdims=True)) @ v
axes, angle, centre = [], [], []
for k in range(6):
    p = points[:, k]; n = len(p); e, w = np.linalg.eigh(np.cov(p.T)); f = 2 * (n - 1) / (n * (n - 2)) * stats.f.ppf(0.95, 2, n - 2)
    axes += [float(np.sqrt(e[1] * f)), float(np.sqrt(e[0] * f))]; long = w[:, 1] * (1 if w[0, 1] > 0 else -1)
    angle.append(float(np.degrees(np.arctan2(long[1], long[0])))); centre += p.mean(0).tolist()
def gram(a):
    a = a - a.mean(0); return a @ a.T
rv, mean, p = [], [], []
for t in range(7):
    a, b = gram(x[t]), gram(np.delete(x, t, 0).mean(0)); z = np.linalg.norm(a) * np.linalg.norm(b)
    every = np.array([(a * b[np.ix_(o, o)]).sum() for o in itertools.permutations(range(6))]) / z
    rv.append(float((a * b).sum() / z)); mean.append(float(every.mean())); p.append(float((every >= rv[-1] - 1e-10).mean()))
print(json.dumps({'axes': axes, 'angle': angle, 'centre': centre, 'rv': rv, 'mean': mean, 'p': p})))P");
  for (std::size_t s = 0; s < map.ellipses.size(); ++s) {
    for (std::size_t i = 0; i < 2; ++i) {
      CHECK_THAT((*map.ellipses[s].semiAxes)(static_cast<Eigen::Index>(i)), WithinRel(beside::numberIn(theirs.at("axes"), 2 * s + i), 1e-8));
      CHECK_THAT((*map.ellipses[s].center)(static_cast<Eigen::Index>(i)), WithinAbs(beside::numberIn(theirs.at("centre"), 2 * s + i), 1e-9));
    }
    CHECK_THAT(*map.ellipses[s].angle, WithinAbs(beside::numberIn(theirs.at("angle"), s), 1e-6));
  }
  for (std::size_t t = 0; t < rv.size(); ++t) {
    CHECK_THAT(*rv[t].rv, WithinRel(beside::numberIn(theirs.at("rv"), t), 1e-10));
    CHECK_THAT(*rv[t].expected, WithinRel(beside::numberIn(theirs.at("mean"), t), 1e-10));
    CHECK_THAT(*rv[t].pValue, WithinAbs(beside::numberIn(theirs.at("p"), t), 1e-12));
  }
}
