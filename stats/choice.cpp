#include "stats/choice.h"

#include "stats/check.h"
#include "stats/psychometric.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>

namespace oddglass::stats {

namespace {

double logLikelihood(int correct, int trials, double pc) {
  const double right = correct == 0 ? 0.0 : correct * std::log(pc);
  const double wrong = correct == trials ? 0.0 : (trials - correct) * std::log1p(-pc);
  return right + wrong;
}

// Both ends of { pc >= guess : 2 (l(best) - l(pc)) <= chi-square(1) }, where best is the share right, not below guessing.
Interval likelihoodLimits(double guess, int correct, int trials, double level) {
  const double cut = boost::math::quantile(boost::math::chi_squared(1), level) / 2.0;
  const double best = std::max(guess, static_cast<double>(correct) / trials);
  const double top = logLikelihood(correct, trials, best);
  const auto excess = [&](double pc) { return top - logLikelihood(correct, trials, pc) - cut; };
  const auto crossing = [&](double a, double b) {
    std::uintmax_t steps = 200;
    const auto ends = boost::math::tools::toms748_solve(excess, a, b, boost::math::tools::eps_tolerance<double>(50), steps);
    return ends.first + (ends.second - ends.first) / 2.0;
  };
  Interval limits{guess, 1.0};
  if (best > guess && excess(guess) > 0.0) limits.low = crossing(guess, best);
  const double nearOne = 1.0 - 1e-15;
  if (correct < trials && best < nearOne && excess(nearOne) > 0.0) limits.high = crossing(best, nearOne);
  return limits;
}

void requireTrial(int correct, int trials) {
  requireCount("correct", correct, trials);
  if (trials == 0) throw BadInput("trials", "must be at least 1");
}

}  // namespace

double pValue(Method method, int correct, int trials) {
  requireCount("correct", correct, trials);
  return method == Method::preference ? twoSidedHalf(correct, trials) : upperTail(correct, trials, guessing(method));
}

std::optional<int> neededNumber(Method method, int trials, double alpha) {
  return method == Method::preference ? criticalLargerSide(trials, alpha) : criticalNumber(trials, guessing(method), alpha);
}

Estimate shareInterval(Method method, int correct, int trials, double level) {
  requireTrial(correct, trials);
  const Interval pc = clopperPearson(correct, trials, level);
  return {shareOf(method, static_cast<double>(correct) / trials), shareOf(method, pc.low), shareOf(method, pc.high)};
}

DPrimeEstimate dPrimeInterval(Method method, int correct, int trials, double level) {
  requireTrial(correct, trials);
  requireOpenShare("level", level);
  const double pc = static_cast<double>(correct) / trials, guess = guessing(method);
  const Interval likely = likelihoodLimits(guess, correct, trials, level);
  const Interval exact = clopperPearson(correct, trials, level);
  DPrimeEstimate found;
  found.estimate = dPrimeOf(method, pc);
  found.low = dPrimeOf(method, likely.low);
  found.high = dPrimeOf(method, likely.high);
  found.exactLow = dPrimeOf(method, exact.low);
  found.exactHigh = dPrimeOf(method, exact.high);
  if (!found.estimate) found.why = Reason::allRight;
  if (found.estimate && pc > guess) {
    const double slope = rightAnswersSlope(method, *found.estimate);
    if (slope > 0.0) found.standardError = std::sqrt(pc * (1.0 - pc) / trials) / slope;
  }
  return found;
}

Counted count(Method method, int correct, int trials, double alpha, double level) {
  requireOpenShare("level", level);
  Counted counted{};
  counted.pValue = pValue(method, correct, trials);
  counted.critical = neededNumber(method, trials, alpha);
  if (trials == 0) {
    counted.why = Reason::noTrials;
    counted.dPrime.why = Reason::noTrials;
    return counted;
  }
  const Interval pc = clopperPearson(correct, trials, level);
  counted.pc = {static_cast<double>(correct) / trials, pc.low, pc.high};
  if (method == Method::preference) {
    counted.why = Reason::noGuessing;
    counted.dPrime.why = Reason::noGuessing;
    return counted;
  }
  counted.pd = shareInterval(method, correct, trials, level);
  counted.dPrime = dPrimeInterval(method, correct, trials, level);
  return counted;
}

}  // namespace oddglass::stats
