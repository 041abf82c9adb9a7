#include "stats/similarity.h"

#include "stats/binomial.h"
#include "stats/check.h"

namespace oddglass::stats {

namespace {

double rightAt(double guess, double pd) { return guess + (1.0 - guess) * pd; }

}  // namespace

std::optional<int> largestAlike(int trials, double guess, double limit, double alpha) {
  requireTrials("trials", trials);
  requireOpenShare("guess", guess);
  requireOpenShare("limit", limit);
  requireOpenShare("alpha", alpha);
  const double pc = rightAt(guess, limit);
  if (trials == 0 || !atMost(lowerTail(0, trials, pc), alpha)) return std::nullopt;
  int few = 0, many = trials;  // P(X <= trials) is 1 and too much for every alpha below 1
  while (many - few > 1) {
    const int middle = few + (many - few) / 2;
    (atMost(lowerTail(middle, trials, pc), alpha) ? few : many) = middle;
  }
  return few;
}

double alikePValue(int correct, int trials, double guess, double limit) {
  requireCount("correct", correct, trials);
  requireOpenShare("guess", guess);
  requireOpenShare("limit", limit);
  return lowerTail(correct, trials, rightAt(guess, limit));
}

double alikePower(int trials, double guess, double limit, double alpha, double truePd) {
  requireShare("pd", truePd);
  const auto largest = largestAlike(trials, guess, limit, alpha);
  return largest ? lowerTail(*largest, trials, rightAt(guess, truePd)) : 0.0;
}

}  // namespace oddglass::stats
