#include "cases.h"
#include "stats/error.h"
#include "stats/pairs/bradley_terry.h"

#include <cmath>
#include <numeric>
#include <random>

using namespace oddglass::stats;
using checks::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

using Wins = std::vector<std::vector<double>>;

/// Every win of a row over a column as one choice, the sample with the lower number always left, so that there is no order effect to fit.
std::vector<PairedChoice> oneWayRound(const Wins& wins) {
  std::vector<PairedChoice> choices;
  for (int i = 0; i < static_cast<int>(wins.size()); ++i)
    for (int k = 0; k < static_cast<int>(wins.size()); ++k)
      for (int n = 0; i != k && n < wins[static_cast<std::size_t>(i)][static_cast<std::size_t>(k)]; ++n)
        choices.push_back(i < k ? PairedChoice{i, k, Choice::left} : PairedChoice{k, i, Choice::right});
  return choices;
}

/// The likelihood as it is defined, and a plain search for its maximum by halving steps along each estimate: worths, log nu, order.
double likelihood(const std::vector<PairedChoice>& choices, const std::vector<double>& at, std::size_t samples) {
  double sum = 0.0;
  for (const PairedChoice& each : choices) {
    const double left = std::exp(at[static_cast<std::size_t>(each.left)] + at[samples + 1] / 2), right = std::exp(at[static_cast<std::size_t>(each.right)] - at[samples + 1] / 2);
    const double tie = std::exp(at[samples] + (at[static_cast<std::size_t>(each.left)] + at[static_cast<std::size_t>(each.right)]) / 2);
    sum += std::log((each.came == Choice::left ? left : each.came == Choice::right ? right : tie) / (left + right + tie));
  }
  return sum;
}

std::vector<double> climbed(const std::vector<PairedChoice>& choices, std::size_t samples) {
  std::vector<double> at(samples + 2, 0.0);
  double best = likelihood(choices, at, samples);
  for (double step = 0.5; step > 1e-9; step /= 2.0)
    for (bool hasMoved = true; hasMoved;) {
      hasMoved = false;
      for (std::size_t i = 0; i < at.size(); ++i)
        for (double by : {step, -step}) {
          at[i] += by;
          const double here = likelihood(choices, at, samples);
          if (here > best + 1e-13) {
            best = here;
            hasMoved = true;
          } else {
            at[i] -= by;
          }
        }
    }
  const double mean = std::accumulate(at.begin(), at.begin() + static_cast<std::ptrdiff_t>(samples), 0.0) / static_cast<double>(samples);
  for (std::size_t i = 0; i < samples; ++i) at[i] -= mean;
  return at;
}

}  // namespace

// Every Bradley-Terry case of tests/data/checks/bradley_terry.json, each with its own source; the circular triads are in test_circular.cpp.
TEST_CASE("published and recomputed worths") {
  int looked = 0;
  for (const Json& each : checks::family("bradley_terry")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    if (in.contains("preference_matrix")) continue;
    INFO(each.at("id"));
    const auto wins = in.at(in.contains("wins_row_over_col") ? "wins_row_over_col" : "cited_rows_citing_cols").get<Wins>();
    const BradleyTerry got = bradleyTerry(oneWayRound(wins), static_cast<int>(wins.size()));
    REQUIRE_FALSE(got.why.has_value());
    CHECK_FALSE(got.isRegularised);
    CHECK_FALSE(got.order.has_value());
    CHECK(got.whyNoOrder == Reason::notGiven);
    CHECK(got.tie == 0.0);
    CHECK_THAT(std::accumulate(got.worth.begin(), got.worth.end(), 0.0), WithinAbs(0.0, 1e-12));
    const double near = each.at("tolerance").at("abs");
    const Json& beside = wanted.contains("log_ability_vs_first") ? wanted.at("log_ability_vs_first") : wanted.contains("log_ability_vs_Biometrika") ? wanted.at("log_ability_vs_Biometrika") : wanted.at("log_ability_vs_Baltimore");
    for (std::size_t i = 0; i < beside.size(); ++i) {
      CHECK_THAT(got.worth[i + 1] - got.worth[0], WithinAbs(beside[i].get<double>(), near));
      CHECK_THAT(got.se(0, static_cast<int>(i) + 1), WithinAbs(wanted.at("se")[i].get<double>(), near));
    }
    if (wanted.contains("residual_deviance")) {
      CHECK_THAT(got.fit.value().statistic, WithinAbs(wanted.at("residual_deviance").get<double>(), near));
      CHECK(got.fit->df == wanted.at("df").get<int>());
    }
    if (wanted.contains("prob_sum1")) {
      double all = 0.0;
      for (double worth : got.worth) all += std::exp(worth);
      for (std::size_t i = 0; i < got.worth.size(); ++i) CHECK_THAT(std::exp(got.worth[i]) / all, WithinAbs(wanted.at("prob_sum1")[i].get<double>(), near));
      CHECK_THAT(got.logLikelihood, WithinAbs(wanted.at("logLik").get<double>(), near));
      CHECK_THAT(got.equal.value().statistic, WithinAbs(wanted.at("LR_equal_preference").get<double>(), near));
      CHECK(got.equal->df == wanted.at("df").get<int>());
      CHECK_THAT(got.fit.value().statistic, WithinAbs(wanted.at("goodness_G2").get<double>(), near));
      CHECK(got.fit->df == wanted.at("df_gof").get<int>());
    }
    ++looked;
  }
  CHECK(looked == 5);
}

TEST_CASE("ties and order: the maximum of the likelihood as it is defined, by a plain search") {
  std::mt19937 chance(41);
  for (int table = 0; table < 6; ++table) {
    std::vector<PairedChoice> choices;
    for (int n = 0; n < 6; ++n)
      for (int left = 0; left < 3; ++left)
        for (int right = 0; right < 3; ++right)
          if (left != right) choices.push_back({left, right, chance() % 4 == 0 ? Choice::tie : chance() % 5 < 3 ? Choice::left : Choice::right});
    const BradleyTerry got = bradleyTerry(choices, 3);
    REQUIRE(got.order.has_value());
    const auto found = climbed(choices, 3);
    for (std::size_t i = 0; i < 3; ++i) CHECK_THAT(got.worth[i], WithinAbs(found[i], 1e-5));
    CHECK_THAT(got.tie.value(), WithinAbs(std::exp(found[3]), 1e-5));
    CHECK_THAT(got.order.value(), WithinAbs(found[4], 1e-5));
    CHECK_THAT(got.logLikelihood, WithinAbs(likelihood(choices, found, 3), 1e-8));
    // What the model expects of the left place, of ties and of each sample equals what was seen (score equations).
    double left = 0, ties = 0;
    std::vector<double> points(3, 0.0), seen(3, 0.0);
    for (const PairedChoice& each : choices) {
      const auto a = static_cast<std::size_t>(each.left), b = static_cast<std::size_t>(each.right);
      const double l = std::exp(got.worth[a] + *got.order / 2), r = std::exp(got.worth[b] - *got.order / 2), t = *got.tie * std::exp((got.worth[a] + got.worth[b]) / 2), all = l + r + t;
      left += (l - r) / all - (each.came == Choice::left) + (each.came == Choice::right);
      ties += t / all - (each.came == Choice::tie);
      points[a] += (l + t / 2) / all;
      points[b] += (r + t / 2) / all;
      seen[a] += each.came == Choice::left ? 1.0 : each.came == Choice::tie ? 0.5 : 0.0;
      seen[b] += each.came == Choice::right ? 1.0 : each.came == Choice::tie ? 0.5 : 0.0;
    }
    CHECK_THAT(left, WithinAbs(0.0, 1e-8));
    CHECK_THAT(ties, WithinAbs(0.0, 1e-8));
    for (std::size_t i = 0; i < 3; ++i) CHECK_THAT(points[i], WithinAbs(seen[i], 1e-8));
  }
}

TEST_CASE("turning every pair round turns the order effect and leaves the worths") {
  std::mt19937 chance(43);
  std::vector<PairedChoice> choices, turned;
  for (int n = 0; n < 60; ++n) {
    const int left = static_cast<int>(chance() % 4), right = (left + 1 + static_cast<int>(chance() % 3)) % 4;
    choices.push_back({left, right, chance() % 6 == 0 ? Choice::tie : chance() % 5 < 3 ? Choice::left : Choice::right});
    const Choice came = choices.back().came;
    turned.push_back({right, left, came == Choice::tie ? came : came == Choice::left ? Choice::right : Choice::left});
  }
  const BradleyTerry one = bradleyTerry(choices, 4), other = bradleyTerry(turned, 4);
  REQUIRE(one.order.has_value());
  CHECK_THAT(*one.order, WithinAbs(-*other.order, 1e-9));
  CHECK_THAT(*one.tie, WithinRel(*other.tie, 1e-9));
  for (int i = 0; i < 4; ++i) {
    CHECK_THAT(one.worth[static_cast<std::size_t>(i)], WithinAbs(other.worth[static_cast<std::size_t>(i)], 1e-9));
    CHECK_THAT(one.se(i), WithinRel(other.se(i), 1e-8));
  }
}

TEST_CASE("one that always wins, or parts never compared: half a win is added, and it is said") {
  const BradleyTerry always = bradleyTerry({{0, 1, Choice::left}, {1, 0, Choice::right}, {0, 1, Choice::left}}, 2);
  CHECK(always.isRegularised);
  CHECK(always.worth[0] > always.worth[1]);
  const BradleyTerry oneWay = bradleyTerry({{0, 1, Choice::left}, {0, 1, Choice::left}, {0, 1, Choice::left}}, 2);
  // Three wins to none, with half a win to either side: log odds log(3.5 / 0.5) between the two.
  CHECK_THAT(oneWay.worth[0] - oneWay.worth[1], WithinAbs(std::log(7.0), 1e-9));
  const BradleyTerry parted = bradleyTerry({{0, 1, Choice::left}, {0, 1, Choice::right}, {2, 3, Choice::left}, {2, 3, Choice::right}}, 4);
  CHECK(parted.isRegularised);
  CHECK_THAT(parted.worth[0], WithinAbs(0.0, 1e-9));
  // A and B, B and C only tie, and A beats C: strongly connected, yet the likelihood has no maximum.
  const BradleyTerry chained = bradleyTerry({{0, 1, Choice::tie}, {1, 2, Choice::tie}, {0, 2, Choice::left}}, 3);
  CHECK(chained.isRegularised);
  CHECK(std::isfinite(chained.worth[0]));
}

TEST_CASE("a place that explains everything leaves no order effect to estimate") {
  // Each win was noted with the winner on the left: the place and the win are one and the same.
  const BradleyTerry got = bradleyTerry({{0, 1, Choice::left}, {1, 0, Choice::left}, {0, 1, Choice::left}}, 2);
  CHECK_FALSE(got.order.has_value());
  CHECK(got.whyNoOrder == Reason::noSpread);
  CHECK_FALSE(got.isRegularised);
  CHECK_THAT(got.worth[0] - got.worth[1], WithinAbs(std::log(2.0), 1e-9));
}

TEST_CASE("choices that allow no answer, and impossible ones") {
  CHECK(bradleyTerry({{0, 1, Choice::tie}, {1, 0, Choice::tie}}, 2).why == Reason::allTied);
  CHECK(bradleyTerry({{0, 1, Choice::left}}, 301).why == Reason::tooLarge);
  CHECK_THROWS_AS(bradleyTerry({}, 2), BadInput);
  CHECK_THROWS_AS(bradleyTerry({{0, 1, Choice::left}}, 1), BadInput);
  CHECK_THROWS_AS(bradleyTerry({{0, 0, Choice::left}}, 2), BadInput);
  CHECK_THROWS_AS(bradleyTerry({{0, 2, Choice::left}}, 2), BadInput);
  CHECK_THROWS_AS(bradleyTerry({{-1, 0, Choice::left}}, 2), BadInput);
}

TEST_CASE("random choices give finite worths or a reason") {
  std::mt19937 chance(47);
  int fitted = 0;
  for (int i = 0; i < 400; ++i) {
    const int samples = 2 + static_cast<int>(chance() % 5), many = 1 + static_cast<int>(chance() % 14);
    std::vector<PairedChoice> choices;
    for (int n = 0; n < many; ++n) {
      const int left = static_cast<int>(chance() % static_cast<unsigned>(samples)), right = (left + 1 + static_cast<int>(chance() % static_cast<unsigned>(samples - 1))) % samples;
      choices.push_back({left, right, static_cast<Choice>(chance() % 3)});
    }
    const BradleyTerry got = bradleyTerry(choices, samples);
    if (got.why) {
      CHECK(got.why == Reason::allTied);
      CHECK(got.worth.empty());
      continue;
    }
    ++fitted;
    for (int sample = 0; sample < samples; ++sample) {
      CHECK(std::isfinite(got.worth[static_cast<std::size_t>(sample)]));
      CHECK(std::isfinite(got.se(sample)));
    }
    CHECK(got.order.has_value() != got.whyNoOrder.has_value());
    CHECK(got.equal.value().pValue >= 0.0);
  }
  CHECK(fitted > 300);
}
