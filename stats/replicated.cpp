#include "stats/replicated.h"

#include "stats/beta_mixture.h"
#include "stats/check.h"
#include "stats/people.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace oddglass::stats {

namespace {

void requireModel(double guess, double mu, double gamma) {
  if (!(guess >= 0.0 && guess < 1.0)) throw BadInput("guess", "must be from 0 to below 1");
  requireShare("mu", mu);
  requireShare("gamma", gamma);
}

struct Peak {
  double mu;
  double gamma;
  double logLikelihood;
};

constexpr double impossible = -1e300;  // orders parameters that rule the data out below all others; never leaves this file

double logOf(const People& people, double mu, double gamma) {
  double sum = 0.0;
  for (const auto& group : people) {
    const double p = group.mixture.probability(mu, gamma);
    if (!(p > 0.0)) return impossible;
    sum += group.heads * std::log(p);
  }
  return sum;
}

Peak bestMu(const People& people, double gamma) {
  const auto loss = [&](double mu) { return -logOf(people, mu, gamma); };
  const auto [mu, value] = boost::math::tools::brent_find_minima(loss, 0.0, 1.0, 40);
  Peak best{mu, gamma, -value};
  for (const double end : {0.0, 1.0})
    if (const double at = logOf(people, end, gamma); at >= best.logLikelihood) best = {end, gamma, at};
  return best;
}

Peak bestOverall(const People& people) {
  constexpr int steps = 40;
  Peak best = bestMu(people, 0.0);
  for (int k = 1; k <= steps; ++k)
    if (const Peak at = bestMu(people, static_cast<double>(k) / steps); at.logLikelihood > best.logLikelihood) best = at;
  const double low = std::max(0.0, best.gamma - 1.0 / steps), high = std::min(1.0, best.gamma + 1.0 / steps);
  const auto loss = [&](double gamma) { return -bestMu(people, gamma).logLikelihood; };
  const double gamma = boost::math::tools::brent_find_minima(loss, low, high, 40).first;
  const Peak fine = bestMu(people, gamma);
  return fine.logLikelihood > best.logLikelihood ? fine : best;
}

// Products below the normal range are worked with very slowly; all that is left out lies far below 1e-140.
std::vector<double> withoutTraces(std::vector<double> chances) {
  for (double& chance : chances)
    if (chance < 1e-150) chance = 0.0;
  return chances;
}

// The chances of the sum of two independent counts.
std::vector<double> together(const std::vector<double>& one, const std::vector<double>& other) {
  std::vector<double> sum(one.size() + other.size() - 1, 0.0);
  for (std::size_t i = 0; i < one.size(); ++i) {
    if (one[i] == 0.0) continue;
    for (std::size_t k = 0; k < other.size(); ++k) sum[i + k] += one[i] * other[k];
  }
  return withoutTraces(std::move(sum));
}

// The same for two counts with the same chances: half of the products.
std::vector<double> twice(const std::vector<double>& one) {
  std::vector<double> sum(2 * one.size() - 1, 0.0);
  for (std::size_t i = 0; i < one.size(); ++i) {
    if (one[i] == 0.0) continue;
    sum[2 * i] += one[i] * one[i];
    const double both = 2.0 * one[i];
    for (std::size_t k = i + 1; k < one.size(); ++k) sum[i + k] += both * one[k];
  }
  return withoutTraces(std::move(sum));
}

// The sum over people with the same chances, by doubling.
std::vector<double> manyAlike(const std::vector<double>& one, int people) {
  if (people == 1) return withoutTraces(one);
  const std::vector<double> half = manyAlike(one, people / 2);
  return people % 2 == 0 ? twice(half) : together(one, twice(half));
}

}  // namespace

std::vector<double> personCounts(int trials, double guess, double mu, double gamma) {
  requireModel(guess, mu, gamma);
  requireRounds(trials);
  std::vector<double> counts;
  for (int k = 0; k <= trials; ++k) counts.push_back(CountMixture(k, trials, guess).probability(mu, gamma));
  return counts;
}

std::vector<double> tableCounts(const std::vector<int>& rounds, double guess, double mu, double gamma) {
  requireModel(guess, mu, gamma);
  std::map<int, int> peopleOf;
  int all = 0;
  for (const int trials : rounds) {
    requireRounds(trials);
    if ((all += trials) > 20'000) throw BadInput("rounds", "must not be above 20,000 in all");
    ++peopleOf[trials];
  }
  std::vector<double> sum{1.0};
  for (const auto& [trials, people] : peopleOf) sum = together(sum, manyAlike(personCounts(trials, guess, mu, gamma), people));
  return sum;
}

std::vector<double> panelCounts(int people, int rounds, double guess, double mu, double gamma) {
  requireRounds(rounds);
  if (people < 0) throw BadInput("people", "must not be negative");
  if (people > 20'000 / std::max(1, rounds)) throw BadInput("people", "people times rounds must not be above 20,000");
  return tableCounts(std::vector<int>(static_cast<std::size_t>(people), rounds), guess, mu, gamma);
}

std::optional<double> replicatedLogLikelihood(const std::vector<PersonCount>& people, double guess, double mu, double gamma) {
  requireModel(guess, mu, gamma);
  const double value = logOf(groupPeople(people, guess), mu, gamma);
  if (value == impossible) return std::nullopt;
  return value;
}

std::optional<ReplicatedFit> fitReplicated(const std::vector<PersonCount>& people, double guess) {
  const People groups = groupPeople(people, guess);
  if (groups.empty()) return std::nullopt;
  const Peak alike = bestMu(groups, 0.0);
  const bool rounds = std::any_of(groups.begin(), groups.end(), [](const auto& g) { return g.mixture.right() + g.mixture.wrong() > 1; });
  if (!rounds) return ReplicatedFit{alike.mu, std::nullopt, alike.logLikelihood, std::nullopt, std::nullopt, Reason::oneRound};
  const Peak best = bestOverall(groups);
  const double ratio = 2.0 * (best.logLikelihood - alike.logLikelihood);
  if (ratio < 1e-9) return ReplicatedFit{alike.mu, 0.0, alike.logLikelihood, 0.0, 1.0, std::nullopt};
  const double p = boost::math::cdf(boost::math::complement(boost::math::chi_squared(1), ratio)) / 2.0;
  return ReplicatedFit{best.mu, best.gamma, best.logLikelihood, ratio, p, std::nullopt};
}

}  // namespace oddglass::stats
