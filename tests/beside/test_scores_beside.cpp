#include "beside/other.h"
#include "stats/multiple/adjust.h"
#include "stats/multiple/dunnett.h"
#include "stats/multiple/studentized_range.h"
#include "stats/rows.h"
#include "stats/scores/power.h"
#include "stats/scores/sample_scores.h"

#include <cmath>

using namespace oddglass::stats;
using beside::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Scores and many comparisons beside R (base, lme4, lmerTest, multcomp) and SciPy in the same run, on seeded random data.

namespace {

std::string scoresFrame(const ScoreRows& rows) {
  std::string text = "suppressMessages({library(lme4); library(lmerTest)})\nd <- data.frame(y = " + beside::forR(rows.response) + ", t = factor(" + beside::forR(beside::doubles(rows.taster.of)) + "), s = factor(" + beside::forR(beside::doubles(rows.sample.of)) + "))\n";
  if (rows.position) text += "d$p <- factor(" + beside::forR(beside::doubles(rows.position->of)) + ")\n";
  if (rows.session) text += "d$v <- factor(" + beside::forR(beside::doubles(rows.session->of)) + ")\n";
  return text;
}

/// Scores with holes: an answer is left out with this chance.
ScoreRows panelOf(std::uint64_t seed, int tasters, int samples, int rounds, double missing, bool withCovariates = false) {
  beside::Seeded chance(seed);
  ScoreRows rows;
  if (withCovariates) rows.position = Factor{{}, samples}, rows.session = Factor{{}, rounds};
  std::vector<double> bottle;
  for (int i = 0; i < samples * rounds; ++i) bottle.push_back(0.8 * chance.normal());
  for (int t = 0; t < tasters; ++t) {
    const double taster = chance.normal();
    for (int s = 0; s < samples; ++s) {
      const double found = 0.8 * s + taster + 1.2 * chance.normal();
      for (int k = 0; k < rounds; ++k) {
        const double error = 0.8 * chance.normal();
        if (chance.uniform() < missing) continue;
        const int position = (s + t + k) % samples;
        rows::add(rows, t, s, found + error + (withCovariates ? bottle[static_cast<std::size_t>(s * rounds + k)] - 0.3 * position : 0.0));
        if (withCovariates) rows.position->of.push_back(position), rows.session->of.push_back(k);
      }
    }
  }
  return rows;
}

const char* meansInR = R"R(
l <- ls_means(m, "s"); q <- ls_means(m, "s", pairwise = TRUE)
a <- anova(m, type = 3)["s", ]
out(list(F = a[["F value"]], df2 = a[["DenDF"]], p = a[["Pr(>F)"]], crit = as.numeric(REMLcrit(m)), res = sigma(m)^2, taster = VarCorr(m)$t[1], both = VarCorr(m)[["t:s"]][1],
  mean = l$Estimate, se = l[["Std. Error"]], df = l$df, low = l$lower, high = l$upper, d = q$Estimate, dse = q[["Std. Error"]], ddf = q$df)))R";

/// Everything that lmerTest says of the samples. Its differences are first minus second, as ours.
void compare(const SampleScores& ours, const Json& theirs, double loose) {
  CHECK_THAT(ours.test.value().F, WithinRel(beside::numberIn(theirs.at("F"), 0), loose));
  CHECK_THAT(ours.test->df2, WithinRel(beside::numberIn(theirs.at("df2"), 0), 100 * loose));
  CHECK_THAT(ours.test->pValue, WithinRel(beside::numberIn(theirs.at("p"), 0), 100 * loose));
  CHECK_THAT(ours.remlCriterion.value(), WithinAbs(beside::numberIn(theirs.at("crit"), 0), 1e-5));
  CHECK_THAT(ours.variances.at(0).variance.value(), WithinRel(beside::numberIn(theirs.at("taster"), 0), 100 * loose));
  CHECK_THAT(ours.variances.at(1).variance.value(), WithinRel(beside::numberIn(theirs.at("both"), 0), 100 * loose));
  CHECK_THAT(ours.variances.back().variance.value(), WithinRel(beside::numberIn(theirs.at("res"), 0), 100 * loose));
  REQUIRE(theirs.at("mean").size() == ours.means.size());
  for (std::size_t i = 0; i < ours.means.size(); ++i) {
    CHECK_THAT(*ours.means[i].mean, WithinRel(beside::numberIn(theirs.at("mean"), i), loose));
    CHECK_THAT(*ours.means[i].se, WithinRel(beside::numberIn(theirs.at("se"), i), 20 * loose));
    CHECK_THAT(*ours.means[i].df, WithinRel(beside::numberIn(theirs.at("df"), i), 100 * loose));
    CHECK_THAT(*ours.means[i].low, WithinAbs(beside::numberIn(theirs.at("low"), i), 1e3 * loose));
    CHECK_THAT(*ours.means[i].high, WithinAbs(beside::numberIn(theirs.at("high"), i), 1e3 * loose));
  }
  REQUIRE(theirs.at("d").size() == ours.pairs.size());
  for (std::size_t i = 0; i < ours.pairs.size(); ++i) {
    CHECK_THAT(*ours.pairs[i].difference, WithinAbs(beside::numberIn(theirs.at("d"), i), 100 * loose));
    CHECK_THAT(*ours.pairs[i].se, WithinRel(beside::numberIn(theirs.at("dse"), i), 20 * loose));
    CHECK_THAT(*ours.pairs[i].df, WithinRel(beside::numberIn(theirs.at("ddf"), i), 100 * loose));
  }
}

}  // namespace

TEST_CASE("balanced scores beside aov, TukeyHSD's distribution and lmer") {
  if (!beside::hasR("lme4 lmerTest")) return;
  for (std::uint64_t seed : {11u, 12u, 13u}) {
    const ScoreRows rows = panelOf(seed, 6, 4, 2, 0.0);
    const SampleScores ours = scoresOf(rows);
    INFO("seed " << seed);
    REQUIRE(ours.fit == ScoreFit::classical);
    const Json table = beside::inR(scoresFrame(rows) + R"R(
a <- summary(aov(y ~ s + Error(t/s), d))[["Error: t:s"]][[1]]
m <- tapply(d$y, d$s, mean); q <- combn(4, 2); se <- sqrt(2 * a[2, "Mean Sq"] / 12); e <- m[q[1, ]] - m[q[2, ]]
out(list(F = a[1, "F value"], p = a[1, "Pr(>F)"], tukey = ptukey(abs(e) / se * sqrt(2), 4, a[2, "Df"], lower.tail = FALSE), low = e - qtukey(0.95, 4, a[2, "Df"]) / sqrt(2) * se)))R");
    CHECK_THAT(ours.test.value().F, WithinRel(beside::numberIn(table.at("F"), 0), 1e-10));
    CHECK_THAT(ours.test->pValue, WithinRel(beside::numberIn(table.at("p"), 0), 1e-9));
    for (std::size_t i = 0; i < ours.pairs.size(); ++i) {
      // The body only: R's tail is not to be trusted.
      CHECK_THAT(*ours.pairs[i].pValue, WithinAbs(beside::numberIn(table.at("tukey"), i), 1e-6));
      CHECK_THAT(*ours.pairs[i].low, WithinAbs(beside::numberIn(table.at("low"), i), 1e-3));
    }
    // Where no variance is at zero REML is the same table; where one is, lme4 reports the same criterion.
    const Json fit = beside::inR(scoresFrame(rows) + "m <- suppressMessages(lmer(y ~ s + (1 | t) + (1 | t:s), d))" + meansInR);
    CHECK_THAT(ours.remlCriterion.value(), WithinAbs(beside::numberIn(fit.at("crit"), 0), 1e-5));
    if (!ours.isSingular) compare(ours, fit, 1e-5);
  }
}

TEST_CASE("the criterion of a balanced table at its bounds beside lmer") {
  if (!beside::hasR("lme4 lmerTest")) return;
  // Nothing but error: variances fall on either side of zero.
  int bounded = 0;
  for (std::uint64_t seed = 1; seed <= 6; ++seed) {
    beside::Seeded chance(seed);
    ScoreRows rows;
    for (int t = 0; t < 5; ++t)
      for (int s = 0; s < 3; ++s)
        for (int k = 0; k < 2; ++k) rows::add(rows, t, s, chance.normal());
    const SampleScores ours = scoresOf(rows);
    bounded += ours.isSingular;
    const Json theirs = beside::inR(scoresFrame(rows) + "m <- suppressMessages(suppressWarnings(lme4::lmer(y ~ s + (1 | t) + (1 | t:s), d)))\nout(as.numeric(REMLcrit(m)))");
    CHECK_THAT(ours.remlCriterion.value(), WithinAbs(beside::numberIn(theirs, 0), 1e-5));
  }
  CHECK(bounded > 0);
}

TEST_CASE("scores with holes beside lmerTest") {
  if (!beside::hasR("lme4 lmerTest")) return;
  for (std::uint64_t seed : {21u, 22u, 23u}) {
    const ScoreRows rows = panelOf(seed, 8, 4, 3, 0.2);
    const SampleScores ours = scoresOf(rows);
    INFO("seed " << seed);
    REQUIRE(ours.fit == ScoreFit::mixed);
    REQUIRE_FALSE(ours.isSingular);
    compare(ours, beside::inR(scoresFrame(rows) + "m <- suppressMessages(lmer(y ~ s + (1 | t) + (1 | t:s), d))" + meansInR), 1e-5);
  }
}

TEST_CASE("scores with positions and sessions beside lmerTest") {
  if (!beside::hasR("lme4 lmerTest")) return;
  const ScoreRows rows = panelOf(31, 9, 4, 3, 0.1, true);
  const SampleScores ours = scoresOf(rows);
  REQUIRE(ours.fit == ScoreFit::mixed);
  REQUIRE_FALSE(ours.isSingular);
  const Json theirs = beside::inR(scoresFrame(rows) + "m <- suppressMessages(lmer(y ~ s + p + v + (1 | t) + (1 | t:s) + (1 | s:v), d))" + meansInR);
  compare(ours, theirs, 3e-5);
  CHECK(ours.random == std::vector<std::string>{"taster", "taster:sample", "sample:session"});
}

TEST_CASE("Dunnett for groups of unlike size beside multcomp") {
  if (!beside::hasR("multcomp")) return;
  beside::Seeded chance(41);
  std::vector<double> y, g;
  const std::vector<int> sizes{7, 4, 9, 5};
  for (std::size_t i = 0; i < sizes.size(); ++i)
    for (int k = 0; k < sizes[i]; ++k) y.push_back(0.6 * static_cast<double>(i) + chance.normal()), g.push_back(static_cast<double>(i));
  const Json theirs = beside::inR("suppressMessages(library(multcomp)); set.seed(1)\nd <- data.frame(y = " + beside::forR(y) + ", g = factor(" + beside::forR(g) + "))\n" +
                                  "s <- summary(glht(lm(y ~ g, d), mcp(g = 'Dunnett')), test = adjusted('single-step', abseps = 1e-5, maxpts = 1e6))$test\nout(list(t = s$tstat, p = s$pvalues))");
  const std::vector<double> loads = loadsOf(7, {4, 9, 5});
  for (std::size_t i = 0; i < 3; ++i) CHECK_THAT(dunnettAbove(std::abs(beside::numberIn(theirs.at("t"), i)), {loads, 21.0, true}), WithinAbs(beside::numberIn(theirs.at("p"), i), 5e-4));
}

TEST_CASE("studentized range and noncentral F beside SciPy and R") {
  if (beside::hasPython()) {
    const Json theirs = beside::inPython("import json\nfrom scipy.stats import studentized_range as s, ncf\nprint(json.dumps({'q': [float(s.sf(q, k, v)) for k in (3, 7) for v in (4.5, 22) for q in (1.0, 3.3, 5.0)], "
                                         "'f': [float(ncf.sf(f, 3, 15, l)) for f in (0.7, 3.3) for l in (0.5, 4.0, 20.0)]}))");
    std::size_t i = 0;
    for (int k : {3, 7})
      for (double v : {4.5, 22.0})
        for (double q : {1.0, 3.3, 5.0}) CHECK_THAT(studentizedRangeAbove(q, k, v), WithinAbs(beside::numberIn(theirs.at("q"), i++), 1e-8));
    i = 0;
    for (double f : {0.7, 3.3})
      for (double l : {0.5, 4.0, 20.0}) CHECK_THAT(noncentralFisherTail(f, 3, 15, l), WithinRel(beside::numberIn(theirs.at("f"), i++), 1e-7));
  }
  if (!beside::hasR()) return;
  // Two samples are a paired t test; four, an F test: R's power.t.test and pf.
  const Json theirs = beside::inR("sd <- sqrt(2 * (0.8^2 + 1.1^2 / 2))\nout(list(t = power.t.test(n = 7, delta = 1.3, sd = sd, type = 'paired', strict = TRUE)$power, "
                                  "f = pf(qf(0.95, 3, 18), 3, 18, ncp = 7 * 2 * 1.3^2 / 2 / (2 * 0.8^2 + 1.1^2), lower.tail = FALSE)))");
  CHECK_THAT(scorePower({7, 2, 2, 0.8, 1.1}, 1.3).power.value(), WithinRel(beside::numberIn(theirs.at("t"), 0), 1e-7));
  CHECK_THAT(scorePower({7, 4, 2, 0.8, 1.1}, 1.3).power.value(), WithinRel(beside::numberIn(theirs.at("f"), 0), 1e-7));
}

TEST_CASE("adjusted p values beside p.adjust") {
  if (!beside::hasR()) return;
  beside::Seeded chance(51);
  std::vector<double> p;
  for (int i = 0; i < 40; ++i) p.push_back(i % 7 == 0 ? 0.02 : std::pow(chance.uniform(), 3.0));
  const Json theirs = beside::inR("p <- " + beside::forR(p) + "\nout(list(h = p.adjust(p, 'holm'), b = p.adjust(p, 'BH')))");
  const auto holm = adjustHolm(p), bh = adjustBenjaminiHochberg(p);
  for (std::size_t i = 0; i < p.size(); ++i) {
    CHECK_THAT(holm[i], WithinRel(beside::numberIn(theirs.at("h"), i), 1e-12));
    CHECK_THAT(bh[i], WithinRel(beside::numberIn(theirs.at("b"), i), 1e-12));
  }
}
