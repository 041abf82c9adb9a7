#include "stats/mixed/reml.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/open_table.h"

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using open_data::Table;

// Cases of mixed_model.json, whose sources stand in the file, on the published tables in tests/data/open.

namespace {

/// Two factors, each with treatment contrasts, and their products.
struct TwoWay {
  FixedEffects fixed;
  Columns one, other, both;

  TwoWay(const std::string& nameOne, const open_data::Labelled& first, const std::string& nameOther, const open_data::Labelled& second)
      : fixed(first.factor.of.size()) {
    fixed.addIntercept();
    one = fixed.addFactor(nameOne, first.factor, first.levels);
    other = fixed.addFactor(nameOther, second.factor, second.levels);
    both = fixed.addProducts(one, other);
  }

  /// Each level against the first, averaged over the other factor with equal weights (type III).
  Eigen::MatrixXd averaged(bool isFirst) const {
    const Columns part = isFirst ? one : other;
    Eigen::MatrixXd rows = fixed.allZero(part);
    const double share = 1.0 / ((isFirst ? other : one).count + 1);
    for (int b = 0; b < other.count; ++b)
      for (int a = 0; a < one.count; ++a) rows(isFirst ? a : b, both.first + b * one.count + a) = share;
    return rows;
  }
};

/// Variances, fixed effects, standard errors, criterion.
void checkFit(const RemlFit& fit, const checks::Json& c) {
  const auto& wanted = c.at("expected");
  const auto& tolerance = c.at("tolerance");
  for (const auto& [name, value] : wanted.at("variance_components").items()) {
    INFO(name);
    double found = fit.residual;
    for (const TermVariance& term : fit.terms)
      if (term.name == name) found = term.variance;
    CHECK_THAT(found, WithinRel(value.get<double>(), tolerance.at("vc_rel").get<double>()));
  }
  for (std::size_t i = 0; i < fit.columns.size(); ++i) {
    INFO(fit.columns[i]);
    const auto at = static_cast<Eigen::Index>(i);
    CHECK_THAT(fit.fixed[at], WithinRel(wanted.at("fixed_effects").at(fit.columns[i]).get<double>(), tolerance.at("fixef_rel").get<double>()));
    CHECK_THAT(std::sqrt(fit.covariance(at, at)), WithinRel(wanted.at("se").at(fit.columns[i]).get<double>(), tolerance.at("se_rel").get<double>()));
  }
  CHECK_THAT(fit.criterion, WithinAbs(wanted.at("reml_deviance").get<double>(), tolerance.at("reml_abs").get<double>()));
  CHECK(fit.singular == wanted.at("singular").get<bool>());
  checks::requireAllSeen(wanted, {"variance_components", "fixed_effects", "se", "reml_deviance", "singular"});
}

void checkF(const FTest& found, const checks::Json& wanted) {
  CHECK_THAT(found.F, WithinRel(wanted.at("F").get<double>(), 1e-3));
  CHECK(found.df1 == wanted.at("num_df").get<int>());
  CHECK_THAT(found.df2, WithinRel(wanted.at("den_df").get<double>(), 5e-3));
  CHECK_THAT(found.pValue, WithinRel(wanted.at("p").get<double>(), 0.01));
}

}  // namespace

TEST_CASE("REML on dyestuff, penicillin and the bitterness of wine") {
  const Table dye("dyestuff");
  FixedEffects mean(30);
  mean.addIntercept();
  checkFit(fitReml(mean, {{"Batch", dye.labels("Batch").factor}}, dye.numbers("Yield")).fit.value(), checks::caseOf("mixed_model", "lmm_dyestuff"));

  const Table penicillin("penicillin");
  FixedEffects one(144);
  one.addIntercept();
  checkFit(fitReml(one, {{"plate", penicillin.labels("plate").factor}, {"sample", penicillin.labels("sample").factor}}, penicillin.numbers("diameter")).fit.value(),
           checks::caseOf("mixed_model", "lmm_penicillin"));

  const Table wine("wine_bitterness");
  const TwoWay model("temp", wine.labels("temp"), "contact", wine.labels("contact"));
  const Reml fitted = fitReml(model.fixed, {{"judge", wine.labels("judge").factor}}, wine.numbers("response"));
  checkFit(fitted.fit.value(), checks::caseOf("mixed_model", "lmm_wine_response"));
}

TEST_CASE("F tests with Satterthwaite's degrees of freedom on cake and wine") {
  const Table wine("wine_bitterness"), cake("cake");
  const TwoWay ofWine("temp", wine.labels("temp"), "contact", wine.labels("contact"));
  const RemlFit bitter = fitReml(ofWine.fixed, {{"judge", wine.labels("judge").factor}}, wine.numbers("response")).fit.value();
  const auto wantedWine = checks::caseOf("mixed_model", "lmmtest_wine_response").at("expected").at("satterthwaite");
  checkF(fTest(bitter, ofWine.averaged(true)), wantedWine.at("temp"));
  checkF(fTest(bitter, ofWine.averaged(false)), wantedWine.at("contact"));
  checkF(fTest(bitter, ofWine.fixed.allZero(ofWine.both)), wantedWine.at("temp:contact"));

  const TwoWay ofCake("recipe", cake.labels("recipe"), "temperature", cake.labels("temperature"));
  const Factor baked = combined(cake.labels("recipe").factor, cake.labels("replicate").factor);
  const RemlFit angle = fitReml(ofCake.fixed, {{"recipe:replicate", baked}}, cake.numbers("angle")).fit.value();
  const auto wantedCake = checks::caseOf("mixed_model", "lmmtest_cake").at("expected").at("satterthwaite");
  checkF(fTest(angle, ofCake.averaged(true)), wantedCake.at("recipe"));
  checkF(fTest(angle, ofCake.averaged(false)), wantedCake.at("temperature"));
  checkF(fTest(angle, ofCake.fixed.allZero(ofCake.both)), wantedCake.at("recipe:temperature"));
}

TEST_CASE("balanced one-way data have the answer of the table of variance") {
  // Dyestuff by hand: six batches of five, mean squares between 11271.5 and within 2451.25 (Davies and Goldsmith 1972), so that the
  // batch variance is (11271.5 - 2451.25) / 5, the mean has variance 11271.5 / 30 and 5 degrees of freedom.
  const Table dye("dyestuff");
  FixedEffects mean(30);
  mean.addIntercept();
  const RemlFit fit = fitReml(mean, {{"Batch", dye.labels("Batch").factor}}, dye.numbers("Yield")).fit.value();
  CHECK_THAT(fit.residual, WithinRel(2451.25, 1e-7));
  CHECK_THAT(fit.terms[0].variance, WithinRel((11271.5 - 2451.25) / 5.0, 1e-7));
  const ContrastEstimate found = contrast(fit, Eigen::VectorXd::Ones(1)).value();
  CHECK_THAT(found.se, WithinRel(std::sqrt(11271.5 / 30.0), 1e-7));
  CHECK_THAT(found.df, WithinRel(5.0, 1e-6));
  // Predictions are the batch means less the grand mean, shrunk by 1 - 2451.25 / 11271.5; the first batch has mean 1505.
  CHECK_THAT(fit.terms[0].effects[0], WithinRel((1505.0 - 1527.5) * (1.0 - 2451.25 / 11271.5), 1e-6));
}

TEST_CASE("a random term with variance zero leaves the model") {
  // Rows dealt so that every group has the same mean: nothing lies between groups, and what remains is the plain mean of 9 numbers.
  FixedEffects mean(9);
  mean.addIntercept();
  const Factor group{{0, 0, 0, 1, 1, 1, 2, 2, 2}, 3};
  const RemlFit fit = fitReml(mean, {{"group", group}}, {1, 2, 3, 3, 1, 2, 2, 3, 1}).fit.value();
  CHECK(fit.singular);
  CHECK(fit.terms[0].state == TermState::zero);
  CHECK(fit.terms[0].variance == 0.0);
  CHECK_THAT(fit.residual, WithinRel(6.0 / 8.0, 1e-9));
  const ContrastEstimate found = contrast(fit, Eigen::VectorXd::Ones(1)).value();
  CHECK_THAT(found.df, WithinRel(8.0, 1e-9));
  CHECK_THAT(found.se, WithinRel(std::sqrt(0.75 / 9.0), 1e-9));
}

TEST_CASE("what the data cannot tell apart is said, and nothing breaks") {
  const std::vector<double> y{1, 3, 2, 5, 4, 4};
  FixedEffects mean(6);
  mean.addIntercept();
  const Factor pairs{{0, 0, 1, 1, 2, 2}, 3}, rows{{0, 1, 2, 3, 4, 5}, 6}, one{{0, 0, 0, 0, 0, 0}, 1};
  const RemlFit fit = fitReml(mean, {{"pairs", pairs}, {"again", pairs}, {"rows", rows}, {"one", one}}, y).fit.value();
  CHECK(fit.terms[0].state != TermState::confounded);
  for (std::size_t k : {1, 2, 3}) CHECK(fit.terms[k].state == TermState::confounded);

  FixedEffects twice(6);
  twice.addIntercept();
  twice.addFactor("sample", pairs);
  twice.addFactor("session", pairs);
  const Reml none = fitReml(twice, {}, y);
  CHECK(none.why == Reason::confounded);
  CHECK(none.about == "session2");

  CHECK(fitReml(mean, {{"pairs", pairs}}, {7, 7, 7, 7, 7, 7}).why == Reason::noSpread);
  CHECK(fitReml(mean, {{"pairs", pairs}}, {1, 1, 2, 2, 5, 5}).why == Reason::noSpread);
  FixedEffects full(2);
  full.addIntercept();
  full.addNumber("age", {1, 2});
  CHECK(fitReml(full, {}, {1, 2}).why == Reason::fewAnswers);
}

TEST_CASE("impossible models are refused by name") {
  FixedEffects mean(3);
  mean.addIntercept();
  CHECK_THROWS_AS(fitReml(mean, {}, {1, 2}), BadInput);
  CHECK_THROWS_AS(fitReml(mean, {}, {1, 2, std::nan("")}), BadInput);
  CHECK_THROWS_AS(fitReml(mean, {{"taster", {{0, 1, 2}, 2}}}, {1, 2, 3}), BadInput);
  CHECK_THROWS_AS(fitReml(FixedEffects(3), {}, {1, 2, 3}), BadInput);
  CHECK_THROWS_AS(FixedEffects(0), BadInput);
  CHECK_THROWS_AS(mean.addNumber("age", {1, 2}), BadInput);
  const RemlFit fit = fitReml(mean, {}, {1, 2, 4}).fit.value();
  CHECK_THROWS_AS(contrast(fit, Eigen::VectorXd::Zero(1)), BadInput);
  CHECK_THROWS_AS(contrast(fit, Eigen::VectorXd::Ones(2)), BadInput);
  CHECK_THROWS_AS(fTest(fit, Eigen::MatrixXd::Ones(1, 2)), BadInput);
}
