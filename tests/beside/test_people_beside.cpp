#include "beside/other.h"
#include "stats/alike/paired_alike.h"
#include "stats/lean/expectation.h"
#include "stats/lean/lean.h"
#include "stats/orders/order_effects.h"
#include "stats/panel/panel.h"
#include "stats/rows.h"


using namespace oddglass::stats;
using beside::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Panel, lean, alikeness, order and expectation beside R (base, lme4) and NumPy/SciPy in the same run, on seeded random data and on the wine data
// of Randall 1989 (Biom J 31:781) as R's package ordinal has them.

namespace {

/// The rows as a data peopleFrame `d` with y, t, s (and f, p, q where given).
std::string peopleFrame(const ScoreRows& rows) {
  std::string text = "d <- data.frame(y = " + beside::forR(rows.response) + ", t = factor(" + beside::forR(beside::doubles(rows.taster.of)) + "), s = factor(" + beside::forR(beside::doubles(rows.sample.of)) + "))\n";
  if (rows.round) text += "d$k <- factor(" + beside::forR(beside::doubles(rows.round->of)) + ")\n";
  if (rows.position) text += "d$p <- factor(" + beside::forR(beside::doubles(rows.position->of)) + ")\n";
  return text;
}

ScoreRows scoringPanelOf(beside::Seeded& chance, int tasters, int samples, int rounds) {
  ScoreRows rows;
  rows.round = Factor{{}, rounds};
  std::vector<double> level, quality;
  for (int t = 0; t < tasters; ++t) level.push_back(chance.normal());
  for (int s = 0; s < samples; ++s) quality.push_back(1.5 * chance.normal());
  for (int t = 0; t < tasters; ++t)
    for (int s = 0; s < samples; ++s)
      for (int k = 0; k < rounds; ++k) {
        rows::add(rows, t, s, 5.0 + level[t] + quality[s] + chance.normal());
        rows.round->of.push_back(k);
      }
  return rows;
}

const char* reliabilityInR = R"R(
m <- tapply(d$y, list(d$s, d$t), mean); n <- nrow(m); k <- ncol(m)
a <- anova(lm(as.vector(m) ~ factor(row(m)) + factor(col(m))))[["Mean Sq"]]
icc <- (a[1] - a[3]) / (a[1] + (k - 1) * a[3] + k * (a[2] - a[3]) / n)
u <- k * icc / (n * (1 - icc)); v <- 1 + k * icc * (n - 1) / (n * (1 - icc))
df <- (u * a[2] + v * a[3])^2 / ((u * a[2])^2 / (k - 1) + (v * a[3])^2 / ((n - 1) * (k - 1)))
f1 <- qf(.975, n - 1, df); f2 <- qf(.975, df, n - 1); w <- k * a[2] + (k * n - k - n) * a[3]
low <- n * (a[1] - f1 * a[3]) / (f1 * w + n * a[1]); high <- n * (f2 * a[1] - a[3]) / (w + n * f2 * a[1])
V <- cov(m); alpha <- k / (k - 1) * (1 - sum(diag(V)) / sum(V))
out(list(icc = icc, low = low, high = high, many = (a[1] - a[3]) / (a[1] + (a[2] - a[3]) / n), alpha = alpha))
)R";

void compareReliability(const ScoreRows& rows) {
  const Json theirs = beside::inR(peopleFrame(rows) + reliabilityInR);
  const Reliability ours = reliability(twoWay(meanTable(rows).table.value()), 0.95);
  CHECK_THAT(ours.single.estimate.value(), WithinRel(beside::numberIn(theirs["icc"]), 1e-9));
  CHECK_THAT(ours.single.low.value(), WithinRel(beside::numberIn(theirs["low"]), 1e-7));
  CHECK_THAT(ours.single.high.value(), WithinRel(beside::numberIn(theirs["high"]), 1e-7));
  CHECK_THAT(ours.ofPanel.estimate.value(), WithinRel(beside::numberIn(theirs["many"]), 1e-9));
  CHECK_THAT(ours.alpha.value(), WithinRel(beside::numberIn(theirs["alpha"]), 1e-9));
}

}  // namespace

TEST_CASE("agreement of a panel beside R's mean squares and F points") {
  if (!beside::hasR("ordinal")) return;
  beside::Seeded chance(4101);
  for (const auto& [tasters, samples, rounds] : {std::tuple{3, 4, 1}, {6, 5, 2}, {12, 8, 3}}) compareReliability(scoringPanelOf(chance, tasters, samples, rounds));
  const Json wine = beside::inR("w <- ordinal::wine; out(list(y = w$response, t = as.numeric(w$judge) - 1, s = as.numeric(interaction(w$temp, w$contact, w$bottle, drop = TRUE)) - 1))");
  ScoreRows rows;
  for (std::size_t i = 0; i < wine["y"].size(); ++i) rows::add(rows, wine["t"][i].get<int>(), wine["s"][i].get<int>(), wine["y"][i]);
  REQUIRE(rows.response.size() == 72);
  compareReliability(rows);
}

TEST_CASE("levels, spread, repeats, discrimination and agreement of tasters beside R and lme4") {
  if (!beside::hasR("lme4")) return;
  beside::Seeded chance(4102);
  const ScoreRows rows = scoringPanelOf(chance, 6, 6, 3);
  const Json theirs = beside::inR(peopleFrame(rows) + R"R(
    suppressMessages(library(lme4))
    m <- aggregate(y ~ t + s, d, mean); w <- tapply(d$y, list(d$s, d$t), mean)
    r <- ranef(lmer(y ~ s + (1 | t), m, control = lmerControl(optCtrl = list(xtol_rel = 1e-12, ftol_abs = 1e-14))))$t[, 1]
    a <- lapply(split(d, d$t), function(x) anova(lm(y ~ s, x)))
    out(list(level = colMeans(w) - mean(w), shrunk = r, spread = apply(w, 2, sd), repeats = sqrt(sapply(a, function(x) x[["Mean Sq"]][2])),
             F = sapply(a, function(x) x[["F value"]][1]), p = sapply(a, function(x) x[["Pr(>F)"]][1]),
             agreement = sapply(1:6, function(i) cor(w[, i], rowMeans(w[, -i]))))))R");
  const auto ours = tasterMeasures(rows);
  for (std::size_t t = 0; t < 6; ++t) {
    CHECK_THAT(ours[t].level.value(), WithinAbs(theirs["level"][t].get<double>(), 1e-9));
    CHECK_THAT(ours[t].shrunkLevel.value(), WithinAbs(theirs["shrunk"][t].get<double>(), 1e-4));  // lme4's optimiser is exact to about this
    CHECK_THAT(ours[t].spread.value(), WithinRel(theirs["spread"][t].get<double>(), 1e-9));
    CHECK_THAT(ours[t].repeatSd.value(), WithinRel(theirs["repeats"][t].get<double>(), 1e-9));
    CHECK_THAT(ours[t].discriminationF.value(), WithinRel(theirs["F"][t].get<double>(), 1e-9));
    CHECK_THAT(ours[t].discriminationP.value(), WithinRel(theirs["p"][t].get<double>(), 1e-7));
    CHECK_THAT(ours[t].agreement.value(), WithinRel(theirs["agreement"][t].get<double>(), 1e-9));
  }
}

TEST_CASE("levels of tasters with missing samples beside R's additive fit") {
  if (!beside::hasR()) return;
  beside::Seeded chance(4103);
  const ScoreRows full = scoringPanelOf(chance, 7, 5, 1);
  ScoreRows rows;
  for (std::size_t i = 0; i < full.response.size(); ++i)
    if (i % 4 != 1) rows::add(rows, full.taster.of[i], full.sample.of[i], full.response[i]);
  const Json theirs = beside::inR(peopleFrame(rows) + R"R(
    f <- lm(y ~ t + s, d); b <- c(0, coef(f)[2:7]); a <- anova(lm(y ~ s, d), f)
    k <- max(0, 1 - (a$RSS[2] / a$Res.Df[2]) / (a[["Sum of Sq"]][2] / a$Df[2]))
    out(list(level = b - mean(b), shrunk = k * (b - mean(b)))))R");
  const auto ours = tasterMeasures(rows);
  for (std::size_t t = 0; t < 7; ++t) {
    CHECK_THAT(ours[t].level.value(), WithinAbs(theirs["level"][t].get<double>(), 1e-9));
    CHECK_THAT(ours[t].shrunkLevel.value(), WithinAbs(theirs["shrunk"][t].get<double>(), 1e-9));
  }
}

TEST_CASE("lean with missing visits beside R's person effects") {
  if (!beside::hasR()) return;
  beside::Seeded chance(4104);
  for (int round = 0; round < 3; ++round) {
    std::vector<PersonDifference> differences;
    std::vector<double> d, p, s;
    for (int person = 0; person < 6; ++person)
      for (int session = 0; session < 5; ++session) {
        if (chance.uniform() < 0.25 && session != person % 5) continue;
        differences.push_back({person, session, chance.normal() + 0.2 * person});
        d.push_back(differences.back().difference), p.push_back(person), s.push_back(session);
      }
    const Json theirs = beside::inR("d <- " + beside::forR(d) + "; p <- factor(" + beside::forR(p) + "); s <- factor(" + beside::forR(s) + R"R()
      b <- c(0, coef(lm(d ~ p + s))[2:6]); f <- b[-1]; k <- length(f); se <- sd(f) * sqrt(1 + 1 / k); e <- b[1] - mean(f)
      out(list(estimate = e, se = se, low = e - qt(.975, k - 1) * se, p = 2 * pt(-abs(e / se), k - 1))))R");
    const MakerContrast ours = makerContrast(differences, 0, 0.95);
    CHECK_THAT(ours.lean.estimate.value(), WithinAbs(beside::numberIn(theirs["estimate"]), 1e-9));
    CHECK_THAT(ours.lean.se.value(), WithinRel(beside::numberIn(theirs["se"]), 1e-9));
    CHECK_THAT(ours.lean.low.value(), WithinAbs(beside::numberIn(theirs["low"]), 1e-9));
    CHECK_THAT(ours.lean.pValue.value(), WithinRel(beside::numberIn(theirs["p"]), 1e-9));
  }
}

TEST_CASE("alike within a limit beside R's and SciPy's t tests") {
  beside::Seeded chance(4105);
  std::vector<double> differences;
  for (int i = 0; i < 9; ++i) differences.push_back(0.2 + 0.6 * chance.normal());
  const Alike ours = pairedAlike(differences, 0.8, 0.05);
  if (beside::hasR()) {
    const Json theirs = beside::inR("x <- " + beside::forR(differences) + R"R(
      i <- t.test(x, conf.level = .9)$conf.int
      out(list(p = max(t.test(x, mu = -.8, alternative = "greater")$p.value, t.test(x, mu = .8, alternative = "less")$p.value), low = i[1], high = i[2])))R");
    CHECK_THAT(ours.pValue.value(), WithinRel(beside::numberIn(theirs["p"]), 1e-9));
    CHECK_THAT(ours.low.value(), WithinAbs(beside::numberIn(theirs["low"]), 1e-9));
    CHECK_THAT(ours.high.value(), WithinAbs(beside::numberIn(theirs["high"]), 1e-9));
  }
  if (beside::hasPython()) {
    const Json theirs = beside::inPython("import json, scipy.stats as s\nx = " + beside::forPython(differences) +
                                         "\nprint(json.dumps(max(s.ttest_1samp(x, -.8, alternative='greater').pvalue, s.ttest_1samp(x, .8, alternative='less').pvalue)))");
    CHECK_THAT(ours.pValue.value(), WithinRel(theirs.get<double>(), 1e-9));
  }
}

TEST_CASE("hits against the Poisson-binomial beside NumPy's convolution") {
  if (!beside::hasPython()) return;
  beside::Seeded chance(4106);
  std::vector<double> p;
  std::vector<bool> cameTrue;
  std::vector<double> outcome;
  for (int i = 0; i < 40; ++i) {
    p.push_back(0.05 + 0.9 * chance.uniform());
    cameTrue.push_back(chance.uniform() < p.back() * p.back());
    outcome.push_back(cameTrue.back());
  }
  const Json theirs = beside::inPython("import json, numpy as n\np = n.array(" + beside::forPython(p) + "); o = n.array(" + beside::forPython(outcome) + R"R()
m = n.array([1.0])
for q in p: m = n.convolve(m, [1 - q, q])
h = int(o.sum())
print(json.dumps({"p": m[m <= m[h] * (1 + 1e-9)].sum(), "brier": ((p - o) ** 2).mean(), "log": -n.log(n.where(o == 1, p, 1 - p)).mean()})))R");
  const Calibration ours = calibration(p, cameTrue, 0.95);
  CHECK_THAT(ours.pValue.value(), WithinRel(theirs["p"].get<double>(), 1e-9));
  CHECK_THAT(ours.brier, WithinRel(theirs["brier"].get<double>(), 1e-12));
  CHECK_THAT(ours.logScore, WithinRel(theirs["log"].get<double>(), 1e-12));
}

TEST_CASE("first place, carry-over and halo beside R's least squares") {
  if (!beside::hasR()) return;
  beside::Seeded chance(4107);
  const int orders[4][4]{{0, 1, 3, 2}, {1, 2, 0, 3}, {2, 3, 1, 0}, {3, 0, 2, 1}};
  for (const int rounds : {1, 2}) {
    ScoreRows rows;
    rows.position = Factor{{}, 4};
    rows.round = Factor{{}, rounds};
    std::vector<int> previous;
    std::vector<double> second;
    for (int t = 0; t < 8; ++t)
      for (int k = 0; k < rounds; ++k)
        for (int place = 0; place < 4; ++place) {
          const int sample = orders[(t + 2 * k) % 4][place];
          rows::add(rows, t, sample, 5.0 + sample + chance.normal());
          rows.position->of.push_back(place);
          rows.round->of.push_back(k);
          previous.push_back(place ? orders[(t + 2 * k) % 4][place - 1] : -1);
          second.push_back(rows.response.back() * 0.5 + chance.normal());
        }
    const std::string cells = rounds == 1 ? "s" : "t:s";
    const Json theirs = beside::inR(peopleFrame(rows) + "d$q <- " + beside::forR(beside::doubles(previous)) + "; d$h <- " + beside::forR(second) + R"R(
      d$flight <- interaction(d$t, d$k); d$first <- as.numeric(d$p == "0")
      for (j in 0:2) d[[paste0("c", j)]] <- (d$q == j) - (d$q == 3)
      f <- lm(y ~ flight + )R" + cells + R"R( + first, d); s <- summary(f)$coefficients["first", ]; df <- df.residual(f)
      g <- lm(y ~ flight + )R" + cells + R"R( + p + c0 + c1 + c2, d); a <- anova(update(g, . ~ . - c0 - c1 - c2), g)
      m <- aggregate(cbind(y, h) ~ t + s, d, mean); ry <- resid(lm(y ~ t + s, m)); rh <- resid(lm(h ~ t + s, m)); r <- cor(ry, rh); n <- 8 * 4 - 8 - 4 + 1 - 1
      out(list(estimate = s[1], se = s[2], p = s[4], df = df, c0 = coef(g)["c0"], c3 = -sum(coef(g)[c("c0", "c1", "c2")]), F = a$F[2], df2 = a$Res.Df[2], pF = a[["Pr(>F)"]][2],
               halo = r, ph = 2 * pt(-abs(r) * sqrt(n / (1 - r^2)), n))))R");
    const OrderEffects ours = orderEffects(rows, previous, 0.95);
    INFO(rounds << " rounds");
    CHECK_THAT(ours.firstPosition.estimate.value(), WithinAbs(beside::numberIn(theirs["estimate"]), 1e-9));
    CHECK_THAT(ours.firstPosition.se.value(), WithinRel(beside::numberIn(theirs["se"]), 1e-8));
    CHECK_THAT(ours.firstPosition.df.value(), WithinAbs(beside::numberIn(theirs["df"]), 0.0));
    CHECK_THAT(ours.firstPosition.pValue.value(), WithinRel(beside::numberIn(theirs["p"]), 1e-7));
    CHECK_THAT(ours.carryOver.previous[0].effect.estimate.value(), WithinAbs(beside::numberIn(theirs["c0"]), 1e-8));
    CHECK_THAT(ours.carryOver.previous[3].effect.estimate.value(), WithinAbs(beside::numberIn(theirs["c3"]), 1e-8));
    CHECK_THAT(ours.carryOver.F.value(), WithinRel(beside::numberIn(theirs["F"]), 1e-7));
    CHECK_THAT(ours.carryOver.df2.value(), WithinAbs(beside::numberIn(theirs["df2"]), 0.0));
    CHECK_THAT(ours.carryOver.pValue.value(), WithinRel(beside::numberIn(theirs["pF"]), 1e-6));
    const Halo move = halo(rows, second);
    CHECK_THAT(move.correlation.value(), WithinRel(beside::numberIn(theirs["halo"]), 1e-9));
    CHECK_THAT(move.pValue.value(), WithinRel(beside::numberIn(theirs["ph"]), 1e-7));
  }
}
