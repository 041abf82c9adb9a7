#include "stats/cases.h"
#include "stats/error.h"
#include "stats/estimated.h"
#include "stats/multiple/dunnett.h"
#include "stats/multiple/studentized_range.h"
#include "stats/rows.h"
#include "stats/scores/balanced.h"
#include "stats/scores/power.h"
#include "stats/scores/sample_scores.h"
#include "stats/simulated.h"

#include <algorithm>
#include <cmath>
#include <limits>

using namespace oddglass::stats;
using checks::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// Scores [sample][taster][round].
ScoreRows rowsOf(const Json& scores) {
  ScoreRows rows;
  for (std::size_t s = 0; s < scores.size(); ++s)
    for (std::size_t t = 0; t < scores[s].size(); ++t)
      for (const Json& score : scores[s][t]) rows::add(rows, static_cast<int>(t), static_cast<int>(s), score.get<double>());
  return rows;
}

bool has(const SampleScores& scores, ScoreNote::Kind kind, const std::string& term) {
  for (const ScoreNote& note : scores.notes)
    if (note.kind == kind && note.term == term) return true;
  return false;
}

void requireFiniteScores(const SampleScores& scores) {
  const auto fine = [](const std::optional<double>& value) { return !value || std::isfinite(*value); };
  CHECK(fine(scores.remlCriterion));
  for (const auto& each : scores.variances) CHECK(fine(each.variance));
  if (scores.test) CHECK((std::isfinite(scores.test->F) && scores.test->pValue >= 0.0 && scores.test->pValue <= 1.0 && scores.test->df2 > 0.0));
  else CHECK(scores.why.has_value());
  for (const auto& each : scores.means) CHECK((fine(each.mean) && fine(each.se) && fine(each.df) && fine(each.low) && fine(each.high)));
  for (const auto* list : {&scores.pairs, &scores.fromReference})
    for (const auto& each : *list) {
      CHECK((fine(each.difference) && fine(each.se) && fine(each.df) && fine(each.low) && fine(each.high)));
      if (each.pValue) CHECK((*each.pValue >= 0.0 && *each.pValue <= 1.0));
      else CHECK(scores.why.has_value());
    }
}

}  // namespace

TEST_CASE("the classical table: worked cases") {
  int looked = 0;
  for (const Json& each : checks::family("anova")) {
    INFO(each.at("id"));
    const Json& wanted = each.at("expected");
    const ScoreRows rows = rowsOf(each.at("inputs").at("scores_product_x_assessor_x_rep"));
    const BalancedTable table = balancedTable(rows).value();
    const double df[]{table.dfSamples(), table.dfTasters(), table.dfInteraction(), table.dfResidual()}, ss[]{table.ofSamples, table.ofTasters, table.ofInteraction, table.ofResidual};
    for (int i : {0, 1, 2, 3}) {
      CHECK(df[i] == wanted.at("df")[i].get<double>());
      CHECK_THAT(ss[i], WithinAbs(wanted.at("ss")[i].get<double>(), 1e-9));
    }
    const SampleScores found = scoresOf(rows);
    CHECK(found.fit == ScoreFit::classical);
    CHECK_THAT(found.test.value().F, WithinAbs(wanted.at("F_product").get<double>(), 1e-6));
    CHECK_THAT(found.test->pValue, WithinAbs(wanted.at("p_product").get<double>(), 1e-6));
    if (wanted.contains("F_interaction")) {
      // The program does not show this test; the sums of squares must give it.
      const double F = ss[2] / df[2] / (ss[3] / df[3]);
      CHECK_THAT(F, WithinAbs(wanted.at("F_interaction").get<double>(), 1e-6));
      CHECK_THAT(fisherTail(F, df[2], df[3]), WithinAbs(wanted.at("p_interaction").get<double>(), 1e-6));
    }
    const SampleDifference& pair = found.pairs.front();
    CHECK_THAT(*pair.high - *pair.difference, WithinAbs(wanted.at("hsd_5pct").get<double>(), 1e-4));
    CHECK_THAT(studentPoint(0.025, *pair.df) * *pair.se, WithinAbs(wanted.at("lsd_5pct").get<double>(), 1e-6));
    ++looked;
  }
  CHECK(looked == 4);
}

TEST_CASE("balanced data stay with taster x sample though its variance is estimated below zero") {
  const Json wanted = checks::caseOf("scores", "balanced_negative_interaction").at("expected").at("samples");
  const SampleScores found = scoresOf(rowsOf(checks::caseOf("anova", "aov_constructed_0").at("inputs").at("scores_product_x_assessor_x_rep")));
  CHECK_THAT(found.test.value().F, WithinAbs(wanted.at("F").get<double>(), 1e-6));
  CHECK(found.test->df1 == wanted.at("df1").get<double>());
  CHECK(found.test->df2 == wanted.at("df2").get<double>());
  CHECK_THAT(found.test->pValue, WithinAbs(wanted.at("p_value").get<double>(), 1e-6));
  CHECK(has(found, ScoreNote::Kind::belowZero, "taster:sample"));
  CHECK(found.variances.at(1).variance.value() < 0.0);
  CHECK(found.isSingular);
}

TEST_CASE("difference from a control in blocks: Dunnett") {
  int looked = 0;
  for (const Json& each : checks::family("multiple_comparison")) {
    const std::string key = "difference_scores_assessor_x_[blind control,samples]";
    if (!each.at("inputs").contains(key)) continue;
    INFO(each.at("id"));
    const Json& wanted = each.at("expected");
    ScoreQuestion question;
    question.reference = 0;
    const SampleScores found = scoresOf(rows::ofTasters(each.at("inputs").at(key).get<std::vector<std::vector<double>>>()), question);
    CHECK_THAT(found.variances.at(2).variance.value(), WithinAbs(wanted.at("mse").get<double>(), 1e-9));
    CHECK_THAT(found.test.value().F, WithinAbs(wanted.at("F_sample").get<double>(), 1e-6));
    CHECK(has(found, ScoreNote::Kind::againstResidual, "taster:sample"));
    REQUIRE(found.fromReference.size() == wanted.at("diff").size());
    for (std::size_t i = 0; i < found.fromReference.size(); ++i) {
      const SampleDifference& one = found.fromReference[i];
      CHECK(*one.df == wanted.at("df").get<double>());
      CHECK_THAT(*one.difference, WithinAbs(wanted.at("diff")[i].get<double>(), 1e-9));
      CHECK_THAT(*one.difference / *one.se, WithinAbs(wanted.at("t")[i].get<double>(), 1e-6));
      CHECK_THAT(*one.pValue, WithinAbs(wanted.at("p_dunnett")[i].get<double>(), 1e-8));
      CHECK_THAT((*one.high - *one.difference) / *one.se, WithinAbs(wanted.at("critical_t_5pct").get<double>(), 1e-6));
      CHECK_THAT(*one.difference - *one.low, WithinAbs(wanted.at("dunnett_LSD").get<double>(), 1e-6));
    }
    ++looked;
  }
  CHECK(looked == 2);
}

// One-way layouts: the scores always have tasters, so the distributions are asked with the t of the case.
TEST_CASE("one-way worked examples: p values of their t") {
  const Json blood = checks::caseOf("multiple_comparison", "dunnett_blood");
  const std::vector<double> loads = loadsOf(6.0, {4.0, 5.0});
  for (int i : {0, 1})
    CHECK_THAT(dunnettAbove(blood.at("expected").at("t")[i], {loads, 12.0, true}), WithinAbs(blood.at("expected").at("p_two_sided")[i].get<double>(), blood.at("tolerance").at("p_abs").get<double>()));
  // R's multcomp, as the case gives it beside its own coarser quadrature; two treatments are exact there.
  CHECK_THAT(dunnettAbove(blood.at("expected").at("t")[0], {loads, 12.0, true}), WithinAbs(0.620101980018454, 1e-9));
  CHECK_THAT(dunnettAbove(blood.at("expected").at("t")[1], {loads, 12.0, true}), WithinAbs(0.00582536084794694, 1e-9));
  for (const char* id : {"dunnett_plant", "dunnett_insect"}) {
    const Json each = checks::caseOf("multiple_comparison", id), wanted = each.at("expected"), tolerance = each.at("tolerance");
    const DunnettPlan plan{equalLoads(static_cast<int>(wanted.at("t").size())), wanted.at("df"), true};
    for (std::size_t i = 0; i < wanted.at("t").size(); ++i) {
      INFO(id << ' ' << i);
      CHECK_THAT(dunnettAbove(std::abs(wanted.at("t")[i].get<double>()), plan), WithinAbs(wanted.at("p_two_sided")[i].get<double>(), std::min(1e-5, tolerance.at("p_abs").get<double>())));
    }
    CHECK_THAT(dunnettCritical(0.05, plan).value(), WithinAbs(wanted.at("critical_5pct").get<double>(), std::min(1e-4, tolerance.at("crit_abs").get<double>())));
  }
  const Json plant = checks::caseOf("multiple_comparison", "tukey_plantgrowth").at("expected");
  const double se = std::sqrt(2.0 * plant.at("mse").get<double>() / 10.0), df = plant.at("df");
  for (int i : {0, 1, 2}) {
    const double difference = plant.at("diff")[i], half = studentizedRangeCritical(0.05, 3, df).value() / std::sqrt(2.0) * se;
    CHECK_THAT(studentizedRangeAbove(std::abs(difference) / se * std::sqrt(2.0), 3, df), WithinAbs(plant.at("p_adj")[i].get<double>(), 1e-6));
    CHECK_THAT(difference - half, WithinAbs(plant.at("lwr")[i].get<double>(), 1e-5));
    CHECK_THAT(difference + half, WithinAbs(plant.at("upr")[i].get<double>(), 1e-5));
  }
}

TEST_CASE("two samples once each: the paired t test") {
  // By hand: differences 2, 1, 0, 1; mean 1, sd sqrt(2/3), se sqrt(1/6).
  ScoreQuestion question;
  question.reference = 1;
  const SampleScores found = scoresOf(rows::ofTasters({{7, 5}, {6, 5}, {4, 4}, {8, 7}}), question);
  CHECK_THAT(found.test.value().F, WithinRel(6.0, 1e-12));
  const double p = 2.0 * studentTail(std::sqrt(6.0), 3.0);
  CHECK_THAT(found.test->pValue, WithinRel(p, 1e-10));
  for (const SampleDifference& each : {found.pairs.at(0), found.fromReference.at(0)}) {
    CHECK_THAT(*each.difference, WithinRel(1.0, 1e-12));
    CHECK_THAT(*each.se, WithinRel(std::sqrt(1.0 / 6.0), 1e-12));
    CHECK_THAT(*each.pValue, WithinRel(p, 1e-8));
    CHECK_THAT(*each.low, WithinAbs(1.0 - studentPoint(0.025, 3.0) * std::sqrt(1.0 / 6.0), 1e-8));
  }
}

TEST_CASE("scores that cannot be judged have a reason") {
  const double one = 5.1;
  const SampleScores alike = scoresOf(rows::ofTasters({{one, one}, {one, one}, {one, one}}));
  CHECK(alike.why == Reason::noSpread);
  CHECK_FALSE(alike.test.has_value());
  CHECK_THAT(alike.means.at(0).mean.value(), WithinRel(one, 1e-12));
  CHECK_FALSE(alike.means.at(0).se.has_value());
  requireFiniteScores(alike);
  // Everybody finds the same gap: there is nothing to judge it by, whatever rounding leaves.
  const SampleScores agreed = scoresOf(rows::ofTasters({{5.1, 6.2}, {4.3, 5.4}, {7.7, 8.8}}));
  CHECK(agreed.why == Reason::noSpread);
  CHECK_THAT(agreed.pairs.at(0).difference.value(), WithinRel(-1.1, 1e-12));
  CHECK_FALSE(agreed.pairs.at(0).pValue.has_value());
  requireFiniteScores(agreed);
  const SampleScores alone = scoresOf(rows::ofTasters({{5, 6, 7}}));
  CHECK(alone.why == Reason::oneTaster);
  requireFiniteScores(alone);
  ScoreRows holes = rows::ofTasters({{5, 6, 7}});
  rows::add(holes, 0, 1, 3.0);
  CHECK(scoresOf(holes).why == Reason::oneTaster);
  requireFiniteScores(scoresOf(holes));
  // Tasters who never had the same samples.
  ScoreRows apart;
  for (double value : {5.0, 6.0, 5.5}) rows::add(apart, 0, 0, value);
  for (double value : {3.0, 6.0}) rows::add(apart, 1, 1, value);
  requireFiniteScores(scoresOf(apart));
  CHECK(scoresOf(apart).fit == ScoreFit::mixed);
}

TEST_CASE("scores of any pattern have finite numbers or a reason") {
  simulated::Chance chance(77);
  const auto below = [&](int n) { return static_cast<int>(chance.uniform() * n); };
  int judged = 0, mixed = 0;
  for (int draw = 0; draw < 120; ++draw) {
    ScoreRows rows;
    const int tasters = 1 + below(4), samples = 2 + below(3), answers = 2 + below(25), points = 1 + below(4);
    const bool withPosition = below(3) == 0, withSession = below(3) == 0;
    if (withPosition) rows.position = Factor{{}, 3};
    if (withSession) rows.session = Factor{{}, 2};
    for (int i = 0; i < answers; ++i) {
      rows::add(rows, below(tasters), below(samples), below(points) + (draw % 5 == 0 ? 1e-9 * below(2) : 0.0));
      if (withPosition) rows.position->of.push_back(below(3));
      if (withSession) rows.session->of.push_back(below(2));
    }
    rows.sample.levels = samples;
    rows.taster.levels = tasters;
    INFO("draw " << draw);
    const SampleScores found = scoresOf(rows, {0.9, below(2)});
    requireFiniteScores(found);
    judged += found.test.has_value();
    mixed += found.fit == ScoreFit::mixed;
  }
  CHECK(judged > 8);
  CHECK(mixed > 50);
}

TEST_CASE("scores do not depend on the order of rows, nor on the zero of the scale") {
  simulated::Chance chance(78);
  ScoreRows rows;
  for (int t = 0; t < 6; ++t)
    for (int s = 0; s < 3; ++s)
      for (int k = 0; k < 2; ++k)
        if (t + s + k != 4) rows::add(rows, t, s, std::round(4.0 + s + chance.normal(1.5)));
  ScoreRows other = rows;
  std::ranges::reverse(other.response);
  std::ranges::reverse(other.taster.of);
  std::ranges::reverse(other.sample.of);
  for (double& each : other.response) each = 1000.0 - each;
  const SampleScores one = scoresOf(rows), two = scoresOf(other);
  CHECK(one.fit == ScoreFit::mixed);
  CHECK_THAT(one.test.value().F, WithinRel(two.test.value().F, 1e-6));
  CHECK_THAT(one.test->df2, WithinRel(two.test->df2, 1e-4));
  for (std::size_t i = 0; i < one.pairs.size(); ++i) {
    CHECK_THAT(*one.pairs[i].difference, WithinAbs(-*two.pairs[i].difference, 1e-6));
    CHECK_THAT(*one.pairs[i].pValue, WithinAbs(*two.pairs[i].pValue, 1e-6));
  }
}

TEST_CASE("scores: impossible input is refused by name") {
  const auto named = [](const std::string& argument) { return Catch::Matchers::Predicate<BadInput>([=](const BadInput& bad) { return bad.argument() == argument; }, argument); };
  const ScoreRows fine = rows::ofTasters({{1, 2}, {3, 5}});
  CHECK_THROWS_MATCHES(scoresOf(fine, {1.0, {}}), BadInput, named("level"));
  CHECK_THROWS_MATCHES(scoresOf(fine, {0.95, 2}), BadInput, named("reference"));
  CHECK_THROWS_MATCHES(scoresOf({}), BadInput, named("response"));
  CHECK_THROWS_MATCHES(scoresOf(rows::ofTasters({{1}, {2}})), BadInput, named("sample"));
  CHECK_THROWS_MATCHES(scoresOf(rows::ofTasters({{1, std::nan("")}, {3, 5}})), BadInput, named("response"));
  CHECK_THROWS_MATCHES(scoresOf(rows::ofTasters({{1, 1e200}, {3, 5}})), BadInput, named("response"));
  CHECK_THROWS_MATCHES(scorePower({0, 2, 1}, 1.0), BadInput, named("tasters"));
  CHECK_THROWS_MATCHES(scorePower({5, 1, 1}, 1.0), BadInput, named("samples"));
  CHECK_THROWS_MATCHES(scorePower({5, 2, 0}, 1.0), BadInput, named("rounds"));
  CHECK_THROWS_MATCHES(scorePower({5, 2, 1, -1.0}, 1.0), BadInput, named("sdInteraction"));
  CHECK_THROWS_MATCHES(scorePower({5, 2, 1, 1.0, std::nan("")}, 1.0), BadInput, named("sdRepeat"));
  CHECK_THROWS_MATCHES(scorePower({5, 2, 1}, std::numeric_limits<double>::infinity()), BadInput, named("difference"));
  CHECK_THROWS_MATCHES(scorePower({5, 2, 1}, 1.0, 0.0), BadInput, named("alpha"));
  CHECK_THROWS_MATCHES(scorePower({5, 2, 1}, 1.0, 0.05, 0.01), BadInput, named("wanted"));
}

TEST_CASE("power of score sheets: the gap that five, eight and twelve scorers show") {
  // In spreads of people's own differences, shown 8 times in 10, from the project's own simulations of the paired t: 1.7, 1.2 and 0.9.
  const double spread = std::sqrt(2.0);  // of the difference of two answers with interaction sd 1 and no repeat sd
  for (const auto& [tasters, gap] : {std::pair{5, 1.7}, {8, 1.2}, {12, 0.9}}) {
    const ScorePower found = scorePower({tasters, 2, 1, 1.0, 0.0}, gap * spread);
    INFO(tasters);
    CHECK_THAT(found.smallestDifference.value() / spread, WithinAbs(gap, 0.051));
    CHECK_THAT(scorePower({tasters, 2, 1, 1.0, 0.0}, *found.smallestDifference).power.value(), WithinAbs(0.8, 1e-9));
  }
  // No gap: the risk of a false alarm.
  CHECK_THAT(scorePower({6, 4, 2}, 0.0, 0.1).power.value(), WithinRel(0.1, 1e-10));
  CHECK(scorePower({1, 2, 1}, 1.0).why == Reason::oneTaster);
  CHECK(scorePower({6, 2, 1, 0.0, 0.0}, 1.0).why == Reason::noSpread);
  CHECK_THAT(scorePower({6, 2, 1}, 1e9).power.value(), WithinRel(1.0, 1e-12));
  CHECK_THAT(scorePower({6, 2, 1}, -1.5).power.value(), WithinRel(scorePower({6, 2, 1}, 1.5).power.value(), 1e-12));
  for (int tasters : {2, 3, 10'000})
    for (int samples : {2, 500})
      for (double alpha : {1e-12, 0.5}) {
        const ScorePower odd = scorePower({tasters, samples, 1}, 1.0, alpha);
        CHECK((odd.power || odd.why));
        if (odd.power) CHECK((*odd.power >= 0.0 && *odd.power <= 1.0));
        if (odd.smallestDifference) CHECK((std::isfinite(*odd.smallestDifference) && *odd.smallestDifference > 0.0));
      }
}
