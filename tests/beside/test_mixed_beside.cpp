#include "beside/other.h"
#include "stats/mixed/reml.h"
#include "stats/ordinal/ordinal.h"

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// lme4, lmerTest and ordinal in the same run: on data read from the installed packages, and on unbalanced data from a seed.

namespace {

Factor factorOf(const beside::Json& numbers) {
  Factor factor;
  for (const auto& each : numbers) factor.of.push_back(each.get<int>() - 1);
  for (int level : factor.of) factor.levels = std::max(factor.levels, level + 1);
  return factor;
}

std::string forR(const Factor& factor) {
  std::vector<double> numbers;
  for (int level : factor.of) numbers.push_back(level + 1);
  return "factor(" + beside::forR(numbers) + ")";
}

/// Fixed effects, their standard errors and df, variances in the order given, residual, criterion, F test of the samples.
void compareModels(const RemlFit& fit, const FTest& test, const beside::Json& theirs) {
  CHECK_THAT(fit.criterion, WithinAbs(beside::numberIn(theirs.at("criterion")), 2e-5));
  for (std::size_t k = 0; k < fit.terms.size(); ++k) {
    INFO(fit.terms[k].name);
    CHECK_THAT(fit.terms[k].variance, WithinAbs(theirs.at("variances")[k].get<double>(), 5e-4 * fit.residual + 2e-3 * fit.terms[k].variance));
  }
  CHECK_THAT(fit.residual, WithinRel(beside::numberIn(theirs.at("residual")), 1e-3));
  for (std::size_t i = 0; i < fit.columns.size(); ++i) {
    INFO(fit.columns[i]);
    Eigen::VectorXd weights = Eigen::VectorXd::Zero(fit.fixed.size());
    weights[static_cast<Eigen::Index>(i)] = 1.0;
    const ContrastEstimate one = contrast(fit, weights).value();
    const auto& row = theirs.at("coefficients")[i];  // estimate, se, df, t, p
    CHECK_THAT(one.estimate, WithinAbs(row[0].get<double>(), 2e-3 * one.se));
    CHECK_THAT(one.se, WithinRel(row[1].get<double>(), 1e-3));
    CHECK_THAT(one.df, WithinRel(row[2].get<double>(), 5e-3));
    CHECK_THAT(one.pValue, WithinAbs(row[4].get<double>(), 1e-3));
  }
  CHECK_THAT(test.F, WithinRel(theirs.at("F")[0].get<double>(), 1e-3));
  CHECK_THAT(test.df2, WithinRel(theirs.at("F")[1].get<double>(), 5e-3));
}

const std::string report = R"(
v <- as.data.frame(VarCorr(m)); at <- function(g) v$vcov[v$grp == g]
a <- anova(m)[1, ]
out(list(criterion = REMLcrit(m), variances = sapply(terms, at), residual = sigma(m)^2, coefficients = unname(coef(summary(m))), F = c(a[["F value"]], a[["DenDF"]]), n = nobs(m)))
)";

struct Drawn {
  std::vector<double> y;
  Factor sample{{}, 3}, taster{{}, 0}, session{{}, 0};
};

/// Tasters who miss sessions at random: level, day, taster by sample and repeat spreads as given.
Drawn drawn(beside::Seeded& chance, int tasters, int sessions, double spreadOfTaster, double spreadOfSession, double spreadOfPair) {
  Drawn data;
  data.taster.levels = tasters;
  data.session.levels = sessions;
  std::vector<double> level, day, pair;
  for (int i = 0; i < tasters; ++i) level.push_back(spreadOfTaster * chance.normal());
  for (int i = 0; i < sessions; ++i) day.push_back(spreadOfSession * chance.normal());
  for (int i = 0; i < tasters * 3; ++i) pair.push_back(spreadOfPair * chance.normal());
  for (int t = 0; t < tasters; ++t)
    for (int v = 0; v < sessions; ++v)
      for (int s = 0; s < 3; ++s) {
        if (chance.uniform() < 0.25) continue;
        data.y.push_back(5.0 + 0.7 * s + level[static_cast<std::size_t>(t)] + day[static_cast<std::size_t>(v)] + pair[static_cast<std::size_t>(t * 3 + s)] + chance.normal());
        data.sample.of.push_back(s);
        data.taster.of.push_back(t);
        data.session.of.push_back(v);
      }
  return data;
}

}  // namespace

TEST_CASE("REML beside lme4 on unbalanced data from a seed") {
  if (!beside::hasR("lme4 lmerTest")) return;
  beside::Seeded chance(20260314);
  for (int draw = 0; draw < 3; ++draw) {
    INFO("draw " << draw);
    const Drawn data = drawn(chance, 5 + 2 * draw, 4 + draw, 1.0, 0.6, 0.8);
    FixedEffects fixed(data.y.size());
    fixed.addIntercept();
    const Columns samples = fixed.addFactor("sample", data.sample);
    const RemlFit fit = fitReml(fixed, {{"t", data.taster}, {"t:s", combined(data.taster, data.sample)}, {"v", data.session}}, data.y).fit.value();
    const auto theirs = beside::inR("suppressMessages({library(lme4); library(lmerTest)})\ny <- " + beside::forR(data.y) + "; s <- " + forR(data.sample) + "; t <- " +
                                    forR(data.taster) + "; v <- " + forR(data.session) +
                                    "\nm <- lmer(y ~ s + (1 | t) + (1 | t:s) + (1 | v), control = lmerControl(optimizer = 'bobyqa', optCtrl = list(rhoend = 1e-9)))"
                                    "\nterms <- c('t', 't:s', 'v')" + report);
    // With one fixed factor lmerTest asks by type I contrasts; the degrees of freedom depend a little on how the question is put.
    compareModels(fit, fTest(fit, fixed.sequential(samples)), theirs);
  }
}

TEST_CASE("REML beside lme4 on instructors' evaluations") {
  // InstEval: evaluations of lecturers at ETH Zurich, in lme4; the first 4,000 rows, students and lecturers crossed.
  if (!beside::hasR("lme4 lmerTest")) return;
  const auto theirs = beside::inR(R"(
suppressMessages({library(lme4); library(lmerTest)})
d <- droplevels(InstEval[1:4000, ]); d$service <- factor(d$service)
m <- lmer(y ~ service + (1 | s) + (1 | d) , d, control = lmerControl(optimizer = 'bobyqa', optCtrl = list(rhoend = 1e-8)))
v <- as.data.frame(VarCorr(m)); at <- function(g) v$vcov[v$grp == g]
a <- anova(m)[1, ]
out(list(criterion = REMLcrit(m), variances = c(at('s'), at('d')), residual = sigma(m)^2, coefficients = unname(coef(summary(m))), F = c(a[["F value"]], a[["DenDF"]]),
  y = d$y, service = as.integer(d$service), s = as.integer(d$s), d = as.integer(d$d))))");
  const auto y = theirs.at("y").get<std::vector<double>>();
  FixedEffects fixed(y.size());
  fixed.addIntercept();
  const Columns service = fixed.addFactor("service", factorOf(theirs.at("service")));
  const RemlFit fit = fitReml(fixed, {{"s", factorOf(theirs.at("s"))}, {"d", factorOf(theirs.at("d"))}}, y).fit.value();
  compareModels(fit, fTest(fit, fixed.allZero(service)), theirs);
}

TEST_CASE("ordinal mixed models beside R's ordinal on unbalanced data from a seed") {
  if (!beside::hasR("ordinal")) return;
  // At its usual tolerance for the modes clmm may miss the top of the likelihood by some thousandths; for the likelihood it is asked to look closer.
  beside::Seeded chance(5);
  for (int draw = 0; draw < 3; ++draw) {
    INFO("draw " << draw);
    const Drawn data = drawn(chance, 8 + draw, 4, 0.6, 0.0, 0.0);
    ScoreRows rows;
    for (double y : data.y) rows.response.push_back(std::clamp(std::round(y), 3.0, 8.0));
    rows.sample = data.sample;
    rows.taster = data.taster;
    const RatedSamples ours = rateSamples(rows);
    REQUIRE(ours.fit);
    const auto theirs = beside::inR("suppressMessages(library(ordinal))\nd <- data.frame(y = factor(" + beside::forR(rows.response) + ", ordered = TRUE), s = " + forR(rows.sample) + ", t = " +
                                    forR(rows.taster) + R"()
tight <- clmm.control(method = 'nlminb', gradTol = 1e-9)
m <- clmm(y ~ s + (1 | t), d); q <- clmm(y ~ s + (1 | t), d, nAGQ = 10); close <- clmm(y ~ s + (1 | t), d, control = tight); n <- clmm(y ~ 1 + (1 | t), d, control = tight); lr <- 2 * as.numeric(logLik(close) - logLik(n)); f <- coef(summary(m)); k <- nrow(f)
out(list(thresholds = m$alpha, estimates = f[(k - 1):k, 1], se = f[(k - 1):k, 2], p = f[(k - 1):k, 4], sd = sqrt(VarCorr(m)$t[1]), ll = as.numeric(logLik(close)), q = as.numeric(logLik(q)), lr = lr, pv = pchisq(lr, 2, lower.tail = FALSE))))");
    for (Eigen::Index j = 0; j < ours.fit->thresholds.size(); ++j) CHECK_THAT(ours.fit->thresholds[j], WithinAbs(theirs.at("thresholds")[static_cast<std::size_t>(j)].get<double>(), 2e-3));
    for (std::size_t i = 0; i < 2; ++i) {
      CHECK_THAT(ours.samples[i].estimate, WithinAbs(theirs.at("estimates")[i].get<double>(), 2e-3));
      CHECK_THAT(ours.samples[i].se, WithinRel(theirs.at("se")[i].get<double>(), 2e-3));
      CHECK_THAT(ours.samples[i].pValue, WithinAbs(theirs.at("p")[i].get<double>(), 1e-3));
    }
    CHECK_THAT(ours.fit->groupSd, WithinAbs(theirs.at("sd")[0].get<double>(), 1e-3));
    CHECK_THAT(ours.fit->logLikelihood, WithinAbs(theirs.at("ll")[0].get<double>(), 1e-4));
    CHECK_THAT(rateSamples(rows, 10).fit->logLikelihood, WithinAbs(theirs.at("q")[0].get<double>(), 1e-4));
    CHECK_THAT(*ours.ratio, WithinAbs(theirs.at("lr")[0].get<double>(), 3e-4));
    CHECK_THAT(*ours.pValue, WithinAbs(theirs.at("pv")[0].get<double>(), 1e-5));
  }
}
