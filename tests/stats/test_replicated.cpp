#include "stats/replicated.h"

#include "stats/beta_mixture.h"
#include "stats/cases.h"
#include "stats/error.h"
#include "stats/named.h"
#include "stats/posterior.h"

#include <boost/math/special_functions/beta.hpp>

#include <cmath>
#include <numeric>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

std::vector<PersonCount> peopleOf(const checks::Json& in) {
  std::vector<PersonCount> people;
  for (const auto& x : in["x"]) people.push_back({x, in["n_rep"]});
  return people;
}

double toleranceOf(const checks::Json& c, const char* key) {
  const auto& t = c["tolerance"];
  return (t.contains(key) ? t[key] : t["abs"]).get<double>();
}

void checkMasses(const checks::Json& c) {
  const auto& in = c["inputs"];
  const double guess = in.contains("C") ? in["C"].get<double>() : 0.0;
  const auto found = personCounts(in["n_rep"], guess, in["mu"], in["gamma"]);
  const auto& pmf = c["expected"]["pmf"];
  REQUIRE(found.size() == pmf.size());
  double mean = 0.0, square = 0.0;
  for (std::size_t k = 0; k < found.size(); ++k) {
    CHECK_THAT(found[k], WithinAbs(pmf[k].get<double>(), toleranceOf(c, "abs")));
    mean += found[k] * static_cast<double>(k);
    square += found[k] * static_cast<double>(k * k);
  }
  if (c["expected"].contains("mean")) {
    CHECK_THAT(mean, WithinAbs(c["expected"]["mean"].get<double>(), 1e-10));
    CHECK_THAT(square - mean * mean, WithinAbs(c["expected"]["variance"].get<double>(), 1e-10));
  }
  checks::requireAllSeen(c["expected"], {"pmf", "mean", "variance"});
}

void checkPanelSpread(const checks::Json& c) {
  const auto& in = c["inputs"];
  const int people = in["N_assessors"], rounds = in["n_rep"], trials = people * rounds;
  const double share = in["total_correct"].get<double>() / trials, guess = checks::share(in["p0"]), gamma = in["gamma"];
  const auto spread = [&](double p) {
    const auto chances = panelCounts(people, rounds, 0.0, p, gamma);
    double mean = 0.0, square = 0.0;
    for (std::size_t k = 0; k < chances.size(); ++k) {
      mean += chances[k] * static_cast<double>(k);
      square += chances[k] * static_cast<double>(k * k);
    }
    return std::sqrt(square - mean * mean) / trials;
  };
  const auto& out = c["expected"];
  CHECK_THAT(share, WithinAbs(out["p_hat"].get<double>(), 1e-12));
  CHECK_THAT(spread(share), WithinAbs(out["se_adjusted"].get<double>(), 1e-9));
  CHECK_THAT((share - guess) / spread(guess), WithinAbs(out["z_adjusted_null"].get<double>(), 1e-7));
  CHECK_THAT(share * (1.0 - share) / std::pow(spread(share), 2), WithinAbs(out["effective_n"].get<double>(), 1e-7));
  checks::requireAllSeen(out, {"p_hat", "se_adjusted", "z_adjusted_null", "effective_n"});
}

void checkFits(const checks::Json& c) {
  const auto& in = c["inputs"];
  const auto& out = c["expected"];
  const auto people = peopleOf(in);
  if (!in.contains("models")) {
    const auto fit = fitReplicated(people, in["C"]).value();
    CHECK_THAT(*fit.gamma, WithinAbs(out["gamma"].get<double>(), toleranceOf(c, "gamma")));
    CHECK_THAT(*fit.likelihoodRatio, WithinAbs(out["lr"].get<double>(), toleranceOf(c, "lr")));
    CHECK_THAT(*fit.pValue, WithinAbs(out["p_value"].get<double>(), toleranceOf(c, "p_value")));
    if (out.contains("mu")) CHECK_THAT(fit.mu, WithinAbs(out["mu"].get<double>(), toleranceOf(c, "mu")));
    checks::requireAllSeen(out, {"mu", "gamma", "lr", "p_value"});
    return;
  }
  const double parameters = c["tolerance"]["params_abs"], likelihood = c["tolerance"]["logLik_abs"];
  const auto plain = fitReplicated(people, 0.0).value(), corrected = fitReplicated(people, in["C"]).value();
  CHECK_THAT(plain.mu, WithinAbs(out["mu_hat"].get<double>(), parameters));
  CHECK_THAT(*plain.gamma, WithinAbs(out["gamma_hat"].get<double>(), parameters));
  CHECK_THAT(plain.logLikelihood, WithinAbs(out["logLik_betabinomial"].get<double>(), likelihood));
  CHECK_THAT(plain.logLikelihood - *plain.likelihoodRatio / 2.0, WithinAbs(out["logLik_binomial"].get<double>(), likelihood));
  CHECK_THAT(*plain.likelihoodRatio, WithinAbs(out["LR_overdispersion"].get<double>(), 2.0 * likelihood));
  CHECK_THAT(corrected.mu, WithinAbs(out["cc_mu_hat"].get<double>(), parameters));
  CHECK_THAT(*corrected.gamma, WithinAbs(out["cc_gamma_hat"].get<double>(), parameters));
  CHECK_THAT(corrected.logLikelihood, WithinAbs(out["cc_logLik"].get<double>(), likelihood));
  int right = 0, trials = 0;
  for (const auto& person : people) {
    right += person.correct;
    trials += person.trials;
  }
  CHECK_THAT(upperTail(right, trials, in["C"]), WithinRel(out["pooled_binomial_p"].get<double>(), 1e-9));
  // Tarone's test is not offered: the likelihood ratio serves.
  checks::requireAllSeen(out, {"mu_hat", "gamma_hat", "logLik_betabinomial", "logLik_binomial", "LR_overdispersion", "cc_mu_hat",
                               "cc_gamma_hat", "cc_logLik", "pooled_binomial_p", "tarone_z", "tarone_p_one_sided"});
}

}  // namespace

// Sources beside each case in replicated.json.
TEST_CASE("rounds by the same people") {
  for (const auto& c : checks::family("replicated")) {
    INFO(c["id"]);
    if (c["expected"].contains("pmf"))
      checkMasses(c);
    else if (c["inputs"].contains("N_assessors"))
      checkPanelSpread(c);
    else
      checkFits(c);
  }
}

TEST_CASE("moments of the beta meet the known ends") {
  CHECK_THAT(betaMoment(2, 1, 0.3, 0.0), WithinRel(0.3 * 0.3 * 0.7, 1e-14));  // everybody alike: plain powers
  CHECK(betaMoment(2, 1, 0.3, 1.0) == 0.0);                                   // nobody both hits and misses
  CHECK_THAT(betaMoment(3, 0, 0.3, 1.0), WithinRel(0.3, 1e-14));
  CHECK(betaMoment(0, 0, 0.3, 0.5) == 1.0);
  // Uniform pi is a = b = 1, gamma 1/3: E[pi^2 (1 - pi)^3] = B(3, 4) = 2! 3! / 6!.
  CHECK_THAT(betaMoment(2, 3, 0.5, 1.0 / 3.0), WithinRel(12.0 / 720.0, 1e-13));
}

TEST_CASE("chances of a panel add up to one and keep their mean") {
  for (const double gamma : {0.0, 0.3, 1.0})
    for (const double mu : {0.0, 0.4, 1.0}) {
      const auto chances = panelCounts(7, 3, 1.0 / 3.0, mu, gamma);
      REQUIRE(chances.size() == 22);
      CHECK_THAT(std::accumulate(chances.begin(), chances.end(), 0.0), WithinAbs(1.0, 1e-12));
      double mean = 0.0;
      for (std::size_t k = 0; k < chances.size(); ++k) mean += chances[k] * static_cast<double>(k);
      CHECK_THAT(mean, WithinAbs(21.0 * (1.0 / 3.0 + mu * 2.0 / 3.0), 1e-10));
    }
}

TEST_CASE("people with unlike rounds: by listing every outcome of three of them") {
  const std::vector<int> rounds{3, 1, 2};
  const auto found = tableCounts(rounds, 1.0 / 3.0, 0.4, 0.3);
  std::vector<double> byHand(7, 0.0);
  for (int a = 0; a <= 3; ++a)
    for (int b = 0; b <= 1; ++b)
      for (int c = 0; c <= 2; ++c)
        byHand[a + b + c] += personCounts(3, 1.0 / 3.0, 0.4, 0.3)[a] * personCounts(1, 1.0 / 3.0, 0.4, 0.3)[b] * personCounts(2, 1.0 / 3.0, 0.4, 0.3)[c];
  REQUIRE(found.size() == byHand.size());
  for (std::size_t k = 0; k < found.size(); ++k) CHECK_THAT(found[k], WithinAbs(byHand[k], 1e-14));
}

TEST_CASE("with gamma 0 a panel is independent trials, with gamma 1 so many sure people") {
  const auto alike = panelCounts(6, 3, 1.0 / 3.0, 0.3, 0.0);
  for (int k = 0; k <= 18; ++k) CHECK_THAT(alike[k], WithinAbs(binomialMass(k, 18, 1.0 / 3.0 + 0.2), 1e-12));
  // Gamma 1 with one round each is the same as independent; with guessing 0 only whole persons' rounds come up.
  const auto sure = panelCounts(4, 3, 0.0, 0.25, 1.0);
  for (int k = 0; k <= 12; ++k) CHECK_THAT(sure[k], WithinAbs(k % 3 == 0 ? binomialMass(k / 3, 4, 0.25) : 0.0, 1e-12));
}

TEST_CASE("with one round the people's interval is that of the count") {
  // Gamma then says nothing and integrates out: mu is the uniform pd of the posterior, computed there in closed form.
  for (const int right : {0, 4, 7, 12}) {
    std::vector<PersonCount> people(12, PersonCount{0, 1});
    for (int k = 0; k < right; ++k) people[k].correct = 1;
    const auto grid = shareOfPeople(people, 1.0 / 3.0, 0.9).value();
    const auto closed = SharePosterior::of(right, 12, 1.0 / 3.0).value();
    CHECK_THAT(grid.low, WithinAbs(closed.quantile(0.05), 2e-5));
    CHECK_THAT(grid.median, WithinAbs(closed.quantile(0.5), 2e-5));
    CHECK_THAT(grid.high, WithinAbs(closed.quantile(0.95), 2e-5));
    const auto fit = fitReplicated(people, 1.0 / 3.0).value();
    CHECK_FALSE(fit.gamma.has_value());
    CHECK(fit.why == Reason::oneRound);
  }
}

TEST_CASE("the order of people does not matter, and people without trials are left out") {
  const std::vector<PersonCount> one{{3, 3}, {1, 3}, {0, 3}, {2, 2}}, other{{2, 2}, {0, 0}, {0, 3}, {3, 3}, {1, 3}};
  CHECK(shareOfPeople(one, 1.0 / 3.0, 0.9)->low == shareOfPeople(other, 1.0 / 3.0, 0.9)->low);
  CHECK(fitReplicated(one, 1.0 / 3.0)->mu == fitReplicated(other, 1.0 / 3.0)->mu);
  CHECK_FALSE(shareOfPeople({}, 1.0 / 3.0, 0.9).has_value());
  CHECK_FALSE(fitReplicated({{0, 0}}, 1.0 / 3.0).has_value());
}

TEST_CASE("each person's own range: more right is higher, and no width collapses") {
  const std::vector<PersonCount> people{{0, 3}, {1, 3}, {2, 3}, {3, 3}, {3, 3}, {0, 0}};
  const auto each = eachPerson(people, 1.0 / 3.0, 0.9);
  REQUIRE(each.size() == people.size());
  for (std::size_t k = 0; k + 2 < 5; ++k) CHECK(each[k].median < each[k + 1].median);
  CHECK(each[3].median == each[4].median);
  for (const auto& person : each) CHECK(person.high - person.low > 0.1);
  // A person with no answers is another such person: their median lies between the least and the best.
  CHECK(each[5].median > each[0].median);
  CHECK(each[5].median < each[3].median);
}

TEST_CASE("a person's range by a second way: plain sums over a fine grid, betas written out") {
  // Person 1 has 3 of 3, person 2 has 1 of 3. P(pi_1 <= t) is a ratio of sums over mu and gamma of moments of the beta, each
  // moment cut at t being the whole moment times the incomplete beta with raised parameters (Boost's own, called directly).
  const auto each = eachPerson({{3, 3}, {1, 3}}, 1.0 / 3.0, 0.8);
  const auto below = [](double t) {
    constexpr int fine = 150;
    double part = 0.0, whole = 0.0;
    for (int m = 0; m < fine; ++m)
      for (int g = 0; g < fine; ++g) {
        const double mu = (m + 0.5) / fine, gamma = (g + 0.5) / fine, a = mu * (1 - gamma) / gamma, b = (1 - mu) * (1 - gamma) / gamma;
        const auto moment = [&](int i, int k) {
          return std::exp(std::lgamma(a + i) + std::lgamma(b + k) - std::lgamma(a + b + i + k) - std::lgamma(a) - std::lgamma(b) + std::lgamma(a + b));
        };
        const double other = 3 * (2.0 / 3) * (2.0 / 3) * (moment(0, 2) / 3 + moment(1, 2) * 2 / 3);
        const double ways[] = {1.0 / 27, 6.0 / 27, 12.0 / 27, 8.0 / 27};  // (1 + 2 pi)^3 / 27
        for (int known = 0; known < 4; ++known) {
          part += other * ways[known] * moment(known, 0) * boost::math::ibeta(a + known, b, t);
          whole += other * ways[known] * moment(known, 0);
        }
      }
    return part / whole;
  };
  CHECK_THAT(below(each[0].low), WithinAbs(0.1, 2e-3));
  CHECK_THAT(below(each[0].median), WithinAbs(0.5, 2e-3));
}

TEST_CASE("a great many people: the grid finds where they are known") {
  // With one round each the closed form of the pooled count holds for any number of people.
  std::vector<PersonCount> once(20000, PersonCount{0, 1});
  for (int k = 0; k < 9000; ++k) once[k].correct = 1;
  const auto share = shareOfPeople(once, 1.0 / 3.0, 0.95).value();
  const auto closed = SharePosterior::of(9000, 20000, 1.0 / 3.0).value();
  CHECK_THAT(share.low, WithinAbs(closed.quantile(0.025), 5e-6));
  CHECK_THAT(share.high, WithinAbs(closed.quantile(0.975), 5e-6));
  // 3000 people alike in counts as a beta with a = b = 1 (mu 1/2, gamma 1/3) makes them, without guessing: 0, 1 and 2 of 2 equally often. What is
  // known of a person with 2 of 2 then comes down to that beta with 2 more hits, Beta(3, 1), whose cdf is t^3.
  std::vector<PersonCount> twice;
  for (int k = 0; k < 3000; ++k) twice.push_back({k % 3, 2});
  const auto each = eachPerson(twice, 0.0, 0.9);
  CHECK_THAT(each[2].median, WithinAbs(std::cbrt(0.5), 2e-3));
  CHECK_THAT(each[2].low, WithinAbs(std::cbrt(0.05), 5e-3));
  CHECK_THAT(each[1].median, WithinAbs(0.5, 2e-3));
}

TEST_CASE("counts that cannot be are refused") {
  CHECK_THROWS_AS(shareOfPeople({{4, 3}}, 1.0 / 3.0, 0.9), BadInput);
  CHECK_THROWS_AS(fitReplicated({{1, 3}}, 1.0), BadInput);
  CHECK_THROWS_AS(personCounts(3, 1.0 / 3.0, 1.2, 0.3), BadInput);
  CHECK_THROWS_AS(personCounts(201, 1.0 / 3.0, 0.2, 0.3), BadInput);
  CHECK_THROWS_AS(panelCounts(-1, 3, 1.0 / 3.0, 0.2, 0.3), BadInput);
  CHECK_FALSE(replicatedLogLikelihood({{0, 2}}, 1.0 / 3.0, 1.0, 0.0).has_value());
}
