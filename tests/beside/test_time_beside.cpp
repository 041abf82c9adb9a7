#include "beside/other.h"
#include "stats/trend/trend.h"
#include "stats/visits_of.h"

#include <cmath>

using namespace oddglass::stats;
using beside::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Change over time beside R (lm, splines, lme4, lmerTest) in the same run, on seeded random data and on the sleep study of Belenky et al. 2003
// (J Sleep Res 12:1) as lme4 has it, with days for sessions.

namespace {

std::string timeFrame(const TimeRows& rows) {
  std::vector<double> age;
  for (int s : rows.session.of) age.push_back(rows.age[static_cast<std::size_t>(s)]);
  return "d <- data.frame(y = " + beside::forR(rows.response) + ", a = " + beside::forR(age) + ", t = factor(" + beside::forR({rows.taster.of.begin(), rows.taster.of.end()}) +
         "), v = factor(" + beside::forR({rows.session.of.begin(), rows.session.of.end()}) + "))\n";
}

TimeRows sleepStudy(bool isComplete) {
  const Json data = beside::inR("s <- lme4::sleepstudy; out(list(y = s$Reaction, t = as.numeric(s$Subject) - 1, v = s$Days))");
  TimeRows rows;
  rows.taster.levels = 18;
  rows.session.levels = 10;
  for (int day = 0; day < 10; ++day) rows.age.push_back(day);
  for (std::size_t i = 0; i < data["y"].size(); ++i) {
    if (!isComplete && i % 7 == 2) continue;
    rows.response.push_back(data["y"][i]);
    rows.taster.of.push_back(data["t"][i].get<int>());
    rows.session.of.push_back(data["v"][i].get<int>());
  }
  return rows;
}

TimeRows sittings(beside::Seeded& chance, int tasters, int sessions, double missing) {
  TimeRows rows;
  rows.taster.levels = tasters;
  rows.session.levels = sessions;
  std::vector<double> level, day;
  for (int t = 0; t < tasters; ++t) level.push_back(chance.normal());
  for (int s = 0; s < sessions; ++s) rows.age.push_back(s + 0.5 * chance.uniform()), day.push_back(0.7 * chance.normal());
  for (int t = 0; t < tasters; ++t)
    for (int s = 0; s < sessions; ++s) {
      if (chance.uniform() < missing && s != t % sessions) continue;
      rows.response.push_back(5.0 + level[t] + day[s] - 0.3 * rows.age[s] + chance.normal());
      rows.taster.of.push_back(t);
      rows.session.of.push_back(s);
    }
  return rows;
}

void compareIncomplete(const TimeRows& rows) {
  const Json theirs = beside::inR(timeFrame(rows) + R"R(
    suppressMessages(library(lmerTest))
    f <- lmer(y ~ a + (1 | t) + (1 | v), d, control = lmerControl(optCtrl = list(xtol_rel = 1e-12, ftol_abs = 1e-14)))
    s <- summary(f)$coefficients["a", ]; v <- as.data.frame(VarCorr(f)); v <- setNames(v$vcov, v$grp)
    out(list(estimate = s[1], se = s[2], df = s[3], p = s[5], t = v["t"], v = v["v"], r = v["Residual"])))R");
  const Trend ours = trend(rows, 0.95);
  CHECK(ours.fit == TrendFit::reml);
  CHECK_THAT(ours.slope.estimate.value(), WithinRel(beside::numberIn(theirs["estimate"]), 1e-5));
  CHECK_THAT(ours.slope.se.value(), WithinRel(beside::numberIn(theirs["se"]), 1e-4));
  CHECK_THAT(ours.slope.df.value(), WithinRel(beside::numberIn(theirs["df"]), 5e-3));
  CHECK_THAT(ours.slope.pValue.value(), WithinRel(beside::numberIn(theirs["p"]), 1e-2));
  CHECK_THAT(ours.variance.taster.value(), WithinRel(beside::numberIn(theirs["t"]), 1e-3));
  CHECK_THAT(ours.variance.session.value(), WithinAbs(beside::numberIn(theirs["v"]), 1e-3 * beside::numberIn(theirs["v"]) + 1e-6 * beside::numberIn(theirs["r"])));
  CHECK_THAT(ours.variance.residual.value(), WithinRel(beside::numberIn(theirs["r"]), 1e-3));
}

}  // namespace

TEST_CASE("complete attendance beside R's line through session means") {
  if (!beside::hasR("lme4")) return;
  beside::Seeded chance(4201);
  for (const TimeRows& rows : {sleepStudy(true), sittings(chance, 6, 5, 0.0), sittings(chance, 4, 9, 0.0)}) {
    const Json theirs = beside::inR(timeFrame(rows) + R"R(
      m <- aggregate(cbind(y, a) ~ v, d, mean); s <- summary(lm(y ~ a, m))$coefficients["a", ]; i <- confint(lm(y ~ a, m))["a", ]
      last <- d$v == m$v[which.max(m$a)]; first <- d$v == m$v[which.min(m$a)]; c <- t.test(d$y[last][order(d$t[last])], d$y[first][order(d$t[first])], paired = TRUE)
      out(list(estimate = s[1], se = s[2], p = s[4], low = i[1], high = i[2], change = c$estimate, pc = c$p.value)))R");
    const Trend ours = trend(rows, 0.95);
    CHECK(ours.fit == TrendFit::sessionMeans);
    CHECK_THAT(ours.slope.estimate.value(), WithinRel(beside::numberIn(theirs["estimate"]), 1e-9));
    CHECK_THAT(ours.slope.se.value(), WithinRel(beside::numberIn(theirs["se"]), 1e-9));
    CHECK_THAT(ours.slope.pValue.value(), WithinRel(beside::numberIn(theirs["p"]), 1e-7));
    CHECK_THAT(ours.slope.low.value(), WithinRel(beside::numberIn(theirs["low"]), 1e-8));
    CHECK_THAT(ours.slope.high.value(), WithinRel(beside::numberIn(theirs["high"]), 1e-8));
    CHECK_THAT(ours.changeSinceFirst.estimate.value(), WithinRel(beside::numberIn(theirs["change"]), 1e-9));
    CHECK_THAT(ours.changeSinceFirst.pValue.value(), WithinRel(beside::numberIn(theirs["pc"]), 1e-7));
  }
}

TEST_CASE("variances over time beside lme4, where none is at zero") {
  if (!beside::hasR("lme4")) return;
  // With complete attendance the components of the table are those of REML as long as all are above zero (Searle, Casella and McCulloch 1992, chapter 4).
  beside::Seeded chance(4205);
  const TimeRows rows = sittings(chance, 8, 7, 0.0);
  const Json theirs = beside::inR(timeFrame(rows) + R"R(
    f <- lme4::lmer(y ~ a + (1 | t) + (1 | v), d, control = lme4::lmerControl(optCtrl = list(xtol_rel = 1e-12, ftol_abs = 1e-14)))
    v <- as.data.frame(lme4::VarCorr(f)); v <- setNames(v$vcov, v$grp); out(list(t = v["t"], v = v["v"], r = v["Residual"])))R");
  const Trend ours = trend(rows, 0.95);
  CHECK_THAT(ours.variance.taster.value(), WithinRel(beside::numberIn(theirs["t"]), 1e-4));
  CHECK_FALSE(ours.variance.isAtZero);
  CHECK_THAT(ours.variance.session.value(), WithinRel(beside::numberIn(theirs["v"]), 1e-4));
  CHECK_THAT(ours.variance.residual.value(), WithinRel(beside::numberIn(theirs["r"]), 1e-4));
}

TEST_CASE("missing visits beside lmerTest") {
  if (!beside::hasR("lmerTest")) return;
  // The days of the open data add nothing of their own beside the slope: the session's variance is at zero, as lme4 says too.
  compareIncomplete(sleepStudy(false));
  beside::Seeded chance(4202);
  for (const auto& [tasters, sessions] : {std::pair{6, 6}, {8, 9}, {12, 12}}) {
    INFO(tasters << " tasters, " << sessions << " sessions");
    compareIncomplete(sittings(chance, tasters, sessions, 0.2));
  }
}

TEST_CASE("AICc and peak of shapes beside R's lm and natural splines") {
  if (!beside::hasR()) return;
  beside::Seeded chance(4203);
  std::vector<double> age, mean;
  for (int i = 0; i < 11; ++i) age.push_back(1.3 * i + chance.uniform()), mean.push_back(5.0 + 0.9 * age.back() - 0.06 * age.back() * age.back() + 0.4 * chance.normal());
  const Json theirs = beside::inR("x <- " + beside::forR(age) + "; y <- " + beside::forR(mean) + R"R(
    n <- length(y); aicc <- function(f) { k <- length(coef(f)) + 1; n * log(sum(resid(f)^2) / n) + 2 * k + 2 * k * (k + 1) / (n - k - 1) }
    q <- lm(y ~ x + I(x^2)); b <- coef(q); V <- vcov(q); t2 <- qt(.975, n - 3)^2
    r <- sort(Re(polyroot(c(b[2]^2 - t2 * V[2, 2], 4 * (b[2] * b[3] - t2 * V[2, 3]), 4 * (b[3]^2 - t2 * V[3, 3])))))
    out(list(flat = aicc(lm(y ~ 1)), linear = aicc(lm(y ~ x)), quadratic = aicc(q), spline = aicc(lm(y ~ splines::ns(x, 3))), peak = -b[2] / (2 * b[3]), low = r[1], high = r[2])))R");
  const ShapeChoice ours = chooseShape(age, mean);
  CHECK_THAT(ours.flat.value(), WithinRel(beside::numberIn(theirs["flat"]), 1e-9));
  CHECK_THAT(ours.linear.value(), WithinRel(beside::numberIn(theirs["linear"]), 1e-9));
  CHECK_THAT(ours.quadratic.value(), WithinRel(beside::numberIn(theirs["quadratic"]), 1e-8));
  CHECK_THAT(ours.spline.value(), WithinRel(beside::numberIn(theirs["spline"]), 1e-8));
  CHECK(ours.chosen == Shape::quadratic);
  const Peak peak = peakOf(age, mean, 0.95);
  CHECK_THAT(peak.age.value(), WithinRel(beside::numberIn(theirs["peak"]), 1e-9));
  CHECK_THAT(peak.low.value(), WithinRel(beside::numberIn(theirs["low"]), 1e-7));
  CHECK_THAT(peak.high.value(), WithinRel(beside::numberIn(theirs["high"]), 1e-7));
}

TEST_CASE("session means with missing visits beside R's additive fit") {
  if (!beside::hasR()) return;
  beside::Seeded chance(4204);
  const TimeRows rows = sittings(chance, 7, 9, 0.25);
  const Json theirs = beside::inR(timeFrame(rows) + R"R(
    f <- lm(y ~ v + t, d); b <- c(0, coef(f)[2:9]); a <- tapply(d$a, d$v, mean); n <- 9
    aicc <- function(f) { k <- length(coef(f)) + 1; n * log(sum(resid(f)^2) / n) + 2 * k + 2 * k * (k + 1) / (n - k - 1) }
    out(list(linear = aicc(lm(b ~ a)), quadratic = aicc(lm(b ~ a + I(a^2))))))R");
  const Trend ours = trend(rows, 0.95);
  CHECK_THAT(ours.shape.linear.value(), WithinRel(beside::numberIn(theirs["linear"]), 1e-8));
  CHECK_THAT(ours.shape.quadratic.value(), WithinRel(beside::numberIn(theirs["quadratic"]), 1e-8));
}
