#include "stats/ordinal/ordinal.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/open_table.h"
#include "stats/ordinal/likelihood.h"

#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using open_data::Table;

// Cases of ordinal.json and ordinal_mixed.json, whose sources stand in the files.

namespace {

struct Wine {
  Table table{"wine_bitterness"};
  std::vector<int> rating;
  FixedEffects fixed{72};

  Wine() {
    for (double value : table.numbers("rating")) rating.push_back(static_cast<int>(value));
    const auto temp = table.labels("temp"), contact = table.labels("contact");
    fixed.addFactor("temp", temp.factor, temp.levels);
    fixed.addFactor("contact", contact.factor, contact.levels);
  }
};

/// One row an answer from a table of counts, products by categories from 1.
struct Counted {
  std::vector<int> category;
  Factor product;

  explicit Counted(const checks::Json& counts) {
    product.levels = static_cast<int>(counts.size());
    for (std::size_t row = 0; row < counts.size(); ++row)
      for (std::size_t k = 0; k < counts[row].size(); ++k)
        for (int i = 0; i < counts[row][k].get<int>(); ++i) {
          category.push_back(static_cast<int>(k) + 1);
          product.of.push_back(static_cast<int>(row));
        }
  }
};

std::string thresholdName(const OrdinalFit& fit, std::size_t j) { return std::to_string(fit.categories[j]) + '|' + std::to_string(fit.categories[j + 1]); }

void checkOrdinal(const OrdinalFit& fit, const std::vector<std::string>& names, const checks::Json& c) {
  const double tolerance = c.at("tolerance").at("abs");
  const auto& wanted = c.at("expected");
  CHECK_THAT(fit.logLikelihood, WithinAbs(wanted.at("logLik").get<double>(), tolerance));
  std::set<std::string> seen;
  for (Eigen::Index i = 0; i < fit.covariance.rows(); ++i) {
    const Eigen::Index thresholds = fit.thresholds.size();
    const std::string name = i < thresholds ? thresholdName(fit, static_cast<std::size_t>(i)) : names.at(static_cast<std::size_t>(i - thresholds));
    INFO(name);
    seen.insert(name);
    CHECK_THAT(i < thresholds ? fit.thresholds[i] : fit.fixed[i - thresholds], WithinAbs(wanted.at("coef").at(name).get<double>(), tolerance));
    CHECK_THAT(std::sqrt(fit.covariance(i, i)), WithinAbs(wanted.at("se").at(name).get<double>(), tolerance));
  }
  checks::requireAllSeen(wanted.at("coef"), seen);
}

ScoreRows ratings(const std::vector<double>& response, const std::vector<int>& sample, const std::vector<int>& taster) {
  ScoreRows rows;
  rows.response = response;
  rows.sample = {sample, *std::ranges::max_element(sample) + 1};
  rows.taster = {taster, *std::ranges::max_element(taster) + 1};
  return rows;
}

}  // namespace

TEST_CASE("cumulative link models without tasters: thresholds, effects, standard errors") {
  for (const auto& c : checks::family("ordinal")) {
    INFO(c.at("id"));
    if (c.at("id") == "clm_wine") {
      const Wine wine;
      checkOrdinal(fitOrdinal(wine.fixed, std::nullopt, wine.rating).fit.value(), wine.fixed.names(), c);
      continue;
    }
    const Counted counted(c.at("inputs").at("counts_products_x_categories"));
    const Link link = c.at("inputs").at("link") == "probit" ? Link::probit : Link::logit;
    FixedEffects fixed(counted.category.size());
    fixed.addFactor("g", counted.product);
    const OrdinalFit fit = fitOrdinal(fixed, std::nullopt, counted.category, link).fit.value();
    checkOrdinal(fit, fixed.names(), c);
    const OrdinalFit alike = fitOrdinal(FixedEffects(counted.category.size()), std::nullopt, counted.category, link).fit.value();
    CHECK_THAT(2.0 * (fit.logLikelihood - alike.logLikelihood), WithinAbs(c.at("expected").at("LR_chi2_products").get<double>(), 1e-4));
  }
}

TEST_CASE("a random taster, by Laplace and by quadrature") {
  const Wine wine;
  const auto cases = checks::family("ordinal_mixed");
  const auto& c = cases.at(0);
  for (const auto& [key, points] : {std::pair("laplace", 1), std::pair("agq10", 10)}) {
    INFO(key);
    const auto& wanted = c.at("expected").at(key);
    const OrdinalFit fit = fitOrdinal(wine.fixed, wine.table.labels("judge").factor, wine.rating, Link::logit, points).fit.value();
    const double tolerance = c.at("tolerance").at("abs");
    CHECK_THAT(fit.logLikelihood, WithinAbs(wanted.at("logLik").get<double>(), tolerance));
    CHECK_THAT(fit.groupSd, WithinAbs(wanted.at("taster_sd").get<double>(), tolerance));
    CHECK_THAT(fit.fixed[0], WithinAbs(wanted.at("temp").get<double>(), tolerance));
    CHECK_THAT(fit.fixed[1], WithinAbs(wanted.at("contact").get<double>(), tolerance));
  }
}

TEST_CASE("quadrature with many points is the integral itself") {
  // The marginal likelihood of each judge, integrated directly over u.
  const Wine wine;
  const Factor judge = wine.table.labels("judge").factor;
  for (const Link link : {Link::logit, Link::probit}) {
    std::vector<int> category;
    for (int each : wine.rating) category.push_back(each - 1);
    const OrdinalLikelihood likelihood(wine.fixed.matrix(), judge, category, 5, link, 40);
    Eigen::VectorXd at(7), gradient;
    at << -1.6, 1.5, 4.2, 6.0, 3.0, 1.8, 1.3;
    if (link == Link::probit) at /= 1.7;
    const auto cumulative = [&](double x) { return link == Link::logit ? 1.0 / (1.0 + std::exp(-x)) : std::erfc(-x / std::sqrt(2.0)) / 2.0; };
    double sum = 0.0;
    for (int j = 0; j < 9; ++j)
      sum += std::log(boost::math::quadrature::gauss_kronrod<double, 61>::integrate(
          [&](double u) {
            double product = std::exp(-u * u / 2.0) / std::sqrt(2.0 * 3.14159265358979323846);
            for (int row = 0; row < 72; ++row) {
              if (judge.of[static_cast<std::size_t>(row)] != j) continue;
              const double shift = wine.fixed.matrix().row(row).dot(at.segment(4, 2)) + at[6] * u;
              const int k = category[static_cast<std::size_t>(row)];
              product *= (k == 4 ? 1.0 : cumulative(at[k] - shift)) - (k == 0 ? 0.0 : cumulative(at[k - 1] - shift));
            }
            return product;
          },
          -9.0, 9.0, 12, 1e-13));
    CHECK_THAT(likelihood.at(at, gradient), WithinAbs(sum, 1e-9));
    // Few points still agree with their own gradient.
    for (int points : {1, 3}) {
      const OrdinalLikelihood few(wine.fixed.matrix(), judge, category, 5, link, points);
      few.at(at, gradient);
      for (Eigen::Index k = 0; k < at.size(); ++k) {
        Eigen::VectorXd up = at, down = at, other;
        up[k] += 1e-5;
        down[k] -= 1e-5;
        CHECK_THAT(gradient[k], WithinAbs((few.at(up, other) - few.at(down, other)) / 2e-5, 1e-7));
      }
    }
  }
}

TEST_CASE("tasters who do not differ have a standard deviation of zero") {
  const std::vector<double> answers{1, 2, 3, 2, 3, 1, 3, 1, 2, 3, 2, 3, 3, 3, 2, 2, 3, 3};
  const std::vector<int> sample{0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1, 1}, taster{0, 0, 0, 1, 1, 1, 2, 2, 2, 0, 0, 0, 1, 1, 1, 2, 2, 2};
  const RatedSamples rated = rateSamples(ratings(answers, sample, taster));
  REQUIRE(rated.fit);
  CHECK(rated.fit->singular);
  CHECK(rated.fit->groupSd == 0.0);
  FixedEffects fixed(18);
  fixed.addFactor("sample", {sample, 2});
  std::vector<int> category(answers.begin(), answers.end());
  const OrdinalFit plain = fitOrdinal(fixed, std::nullopt, category).fit.value();
  CHECK_THAT(rated.fit->logLikelihood, WithinAbs(plain.logLikelihood, 1e-9));
  CHECK_THAT(rated.samples[0].se, WithinRel(std::sqrt(plain.covariance(2, 2)), 1e-9));
}

TEST_CASE("ratings without an answer say why") {
  const std::vector<int> two{0, 1, 0, 1, 0, 1}, three{0, 0, 1, 1, 2, 2};
  CHECK(rateSamples(ratings({4, 4, 4, 4, 4, 4}, two, three)).why == Reason::noSpread);
  CHECK(rateSamples(ratings({1, 2, 2, 3, 1, 3}, two, {0, 0, 0, 0, 0, 0})).why == Reason::oneTaster);
  // The second sample always above the first: its estimate would be infinite.
  CHECK(rateSamples(ratings({1, 4, 2, 5, 1, 4}, two, three)).why == Reason::separated);
  CHECK(rateSamples(ratings({1, 3, 2, 3, 2, 3}, two, three)).why == Reason::separated);
  // Each taster has one answer and keeps to it.
  CHECK_FALSE(rateSamples(ratings({1, 1, 2, 2, 3, 3}, two, three)).fit);
  ScoreRows tied = ratings({1, 2, 2, 3, 1, 3}, two, three);
  tied.session = Factor{two, 2};
  CHECK(rateSamples(tied).why == Reason::confounded);
  CHECK(rateSamples(ratings({1, 2}, {0, 1}, {0, 1})).samples.empty());
}

TEST_CASE("ratings that cannot be are refused by name") {
  const std::vector<int> two{0, 1, 0, 1}, pairs{0, 0, 1, 1};
  CHECK_THROWS_AS(rateSamples(ratings({1, 2.5, 2, 3}, two, pairs)), BadInput);
  CHECK_THROWS_AS(rateSamples(ratings({1, 2, 2, 3}, two, pairs), 0), BadInput);
  CHECK_THROWS_AS(rateSamples(ratings({1, 2, 2, 3}, two, pairs), 101), BadInput);
  CHECK_THROWS_AS(fitOrdinal(FixedEffects(3), std::nullopt, {1, 2}), BadInput);
}
