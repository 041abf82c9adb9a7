#include "stats/sequential/sprt.h"

#include "stats/check.h"
#include "stats/psychometric.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

constexpr int mostTrialsOfAPlan = 100'000;

void requireSoundLimits(const SequentialPlan& plan) {
  requireOpenShare("p0", plan.p0);
  requireOpenShare("p1", plan.p1);
  if (!(plan.p1 > plan.p0)) throw BadInput("p1", "must be above guessing");
  requireOpenShare("alpha", plan.alpha);
  requireOpenShare("beta", plan.beta);
  if (!(plan.alpha + plan.beta < 1.0)) throw BadInput("beta", "must leave alpha and beta together below 1");
}

void requireSoundLimits(const Looks& looks) {
  if (looks.every < 1) throw BadInput("every", "must be at least 1");
  if (looks.last && *looks.last < 1) throw BadInput("last", "must be at least 1");
}

bool isLook(const Looks& looks, int trials) { return trials % looks.every == 0 || trials == looks.last; }

double allowance(double line) { return 1e-12 * std::max(1.0, std::abs(line)); }

/// The counts strictly between the lines after n trials.
struct Between {
  int low;
  int high;
};
Between between(const SequentialLines& lines, int n) {
  Between counts{0, n};
  // The lines are looked at by the same comparisons as everywhere, from a first guess beside them.
  counts.low = std::clamp(static_cast<int>(std::floor(lines.acceptIntercept + lines.slope * n)) - 1, 0, n + 1);
  while (counts.low <= n && verdictAt(lines, counts.low, n) == SequentialVerdict::none) ++counts.low;
  counts.high = std::clamp(static_cast<int>(std::ceil(lines.rejectIntercept + lines.slope * n)) + 1, -1, n);
  while (counts.high >= 0 && verdictAt(lines, counts.high, n) == SequentialVerdict::difference) --counts.high;
  return counts;
}

}  // namespace

SequentialLines linesOf(const SequentialPlan& plan) {
  requireSoundLimits(plan);
  const double right = std::log(plan.p1 / plan.p0), wrong = std::log1p(-plan.p0) - std::log1p(-plan.p1), both = right + wrong;
  const SequentialLines lines{wrong / both, std::log(plan.beta / (1.0 - plan.alpha)) / both, std::log((1.0 - plan.beta) / plan.alpha) / both};
  if (!std::isfinite(lines.slope) || !std::isfinite(lines.acceptIntercept) || !std::isfinite(lines.rejectIntercept) || !(lines.rejectIntercept < 1e9) || !(lines.acceptIntercept > -1e9))
    throw BadInput("p1", "is too close to guessing");
  return lines;
}

SequentialLines linesOfShare(Method method, double share, double alpha, double beta) {
  constexpr double almostAlways = 1.0 - 1e-9;
  return linesOf({guessing(method), std::min(almostAlways, rightAnswersOfShare(method, share)), alpha, beta});
}

SequentialVerdict verdictAt(const SequentialLines& lines, int right, int trials) {
  const double accept = lines.acceptIntercept + lines.slope * trials, reject = lines.rejectIntercept + lines.slope * trials;
  if (right >= reject - allowance(reject)) return SequentialVerdict::difference;
  if (right <= accept + allowance(accept)) return SequentialVerdict::none;
  return SequentialVerdict::goOn;
}

SequentialDecision decide(const SequentialLines& lines, const std::vector<bool>& answers, const Looks& looks) {
  requireSoundLimits(looks);
  int right = 0, trials = 0;
  for (const bool answer : answers) {
    right += answer;
    ++trials;
    if (!isLook(looks, trials)) continue;
    const SequentialVerdict verdict = verdictAt(lines, right, trials);
    if (verdict != SequentialVerdict::goOn) return {verdict, trials, right};
    if (trials == looks.last) return {SequentialVerdict::undecided, trials, right};
  }
  return {SequentialVerdict::goOn, trials, right};
}

WaldExpected waldExpected(const SequentialPlan& plan) {
  const SequentialLines lines = linesOf(plan);
  const auto expected = [&](double showing, double p) { return (showing * lines.rejectIntercept + (1.0 - showing) * lines.acceptIntercept) / (p - lines.slope); };
  return {expected(plan.alpha, plan.p0), expected(1.0 - plan.beta, plan.p1)};
}

std::optional<SequentialOutcome> outcomeOf(const SequentialLines& lines, double p, const Looks& looks) {
  requireShare("p", p);
  requireSoundLimits(looks);
  if (looks.last && *looks.last > mostTrialsOfAPlan) return std::nullopt;
  SequentialOutcome outcome{0.0, 0.0, 1.0, 0.0};
  std::vector<double> chance{1.0};  // chance[k]: low + k right so far and still going on
  int low = 0;
  double steps = 0.0;
  for (int n = 1; looks.last ? n <= *looks.last : outcome.undecided > 1e-13; ++n) {
    if (n > mostTrialsOfAPlan || (steps += static_cast<double>(chance.size())) > 2e8) return std::nullopt;
    outcome.expectedTrials += outcome.undecided;
    chance.push_back(0.0);
    for (std::size_t k = chance.size() - 1; k > 0; --k) chance[k] = chance[k] * (1.0 - p) + chance[k - 1] * p;
    chance[0] *= 1.0 - p;
    if (!isLook(looks, n)) continue;
    const Between open = between(lines, n);
    std::vector<double> left;
    for (std::size_t k = 0; k < chance.size(); ++k) {
      const int right = low + static_cast<int>(k);
      if (right < open.low) outcome.none += chance[k];
      else if (right > open.high) outcome.difference += chance[k];
      else left.push_back(chance[k]);
    }
    low = std::max(low, open.low);
    outcome.undecided = 0.0;
    for (const double each : left) outcome.undecided += each;
    if (left.empty()) break;
    chance = std::move(left);
  }
  return outcome;
}

}  // namespace oddglass::stats
