#include "stats/power.h"

#include "stats/binomial.h"
#include "stats/check.h"
#include "stats/psychometric.h"
#include "stats/replicated.h"
#include "stats/similarity.h"

#include <algorithm>
#include <numeric>
#include <vector>

namespace oddglass::stats {

namespace {

double guessOf(Method method) {
  if (method == Method::preference) throw BadInput("method", "a preference has no right answer");
  return guessing(method);
}

int trialsOf(int people, int rounds) {
  if (people < 0) throw BadInput("people", "must not be negative");
  if (rounds < 0) throw BadInput("rounds", "must not be negative");
  if (people > 20'000 / std::max(1, rounds)) throw BadInput("people", "people times rounds must not be above 20,000");
  return people * rounds;
}

double sumOf(const std::vector<double>& chances, int from, int to) {
  return std::min(1.0, std::accumulate(chances.begin() + from, chances.begin() + to, 0.0));
}

}  // namespace

Power powerOf(Method method, int trials, double pc, double alpha) {
  const double guess = guessOf(method);
  requireShare("pc", pc);
  const auto critical = criticalNumber(trials, guess, alpha);
  if (!critical) return {std::nullopt, 0.0, 0.0};
  return {critical, upperTail(*critical, trials, guess), upperTail(*critical, trials, pc)};
}

RoundsPower powerOfRounds(Method method, int people, int rounds, double pd, double gamma, double alpha) {
  requireShare("gamma", gamma);
  const int trials = trialsOf(people, rounds);
  const Power independent = powerOf(method, trials, rightAnswersOfShare(method, pd), alpha);
  if (!independent.critical) return {std::nullopt, 0.0, 0.0, 0.0, gamma};
  const auto chances = panelCounts(people, rounds, guessOf(method), pd, gamma);
  return {independent.critical, independent.alphaActual, sumOf(chances, *independent.critical, trials + 1), independent.power, gamma};
}

AlikePower alikePowerOfRounds(Method method, int people, int rounds, double limit, double pd, double gamma, double alpha) {
  requireShare("gamma", gamma);
  const double guess = guessOf(method);
  const int trials = trialsOf(people, rounds);
  const auto largest = largestAlike(trials, guess, limit, alpha);
  const double independent = alikePower(trials, guess, limit, alpha, pd);
  if (!largest) return {std::nullopt, 0.0, 0.0, gamma};
  const auto chances = panelCounts(people, rounds, guess, pd, gamma);
  return {largest, sumOf(chances, 0, *largest + 1), independent, gamma};
}

double powerOfExactlyAble(Method method, int people, int able, int rounds, double alpha) {
  const int trials = trialsOf(people, rounds);
  if (able < 0 || able > people) throw BadInput("able", "must be from 0 to the number of people");
  const double guess = guessOf(method);
  const auto critical = criticalNumber(trials, guess, alpha);
  if (!critical) return 0.0;
  return upperTail(*critical - able * rounds, (people - able) * rounds, guess);
}

}  // namespace oddglass::stats
