#include "stats/pairs/bradley_terry.h"

#include "stats/pairs/choice_model.h"
#include "stats/pairs/estimable.h"

#include <boost/math/distributions/chi_squared.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

namespace oddglass::stats {
namespace {

LikelihoodRatio ratioOf(double statistic, int df) {
  const double rounded = std::max(0.0, statistic);
  return {rounded, df, boost::math::cdf(boost::math::complement(boost::math::chi_squared(df), rounded))};
}

/// Half a win to either side of every pair, a quarter in either order.
std::vector<PairCount> withHalfWins(const std::vector<PairCount>& counts, int samples) {
  std::map<std::pair<int, int>, PairCount> all;
  for (int left = 0; left < samples; ++left)
    for (int right = 0; right < samples; ++right)
      if (left != right) all[{left, right}] = {left, right, 0.25, 0.25, 0.0};
  for (const PairCount& each : counts) {
    PairCount& sum = all[{each.left, each.right}];
    sum.leftWins += each.leftWins;
    sum.rightWins += each.rightWins;
    sum.ties += each.ties;
  }
  std::vector<PairCount> list;
  for (const auto& [pair, count] : all) list.push_back(count);
  return list;
}

/// Each pair once, whichever stood left: without an order effect only this matters.
std::vector<PairCount> eitherWay(const std::vector<PairCount>& counts) {
  std::map<std::pair<int, int>, PairCount> all;
  for (const PairCount& each : counts) {
    const bool isTurned = each.left > each.right;
    PairCount& sum = all[std::minmax(each.left, each.right)];
    std::tie(sum.left, sum.right) = std::pair(std::min(each.left, each.right), std::max(each.left, each.right));
    sum.leftWins += isTurned ? each.rightWins : each.leftWins;
    sum.rightWins += isTurned ? each.leftWins : each.rightWins;
    sum.ties += each.ties;
  }
  std::vector<PairCount> list;
  for (const auto& [pair, count] : all) list.push_back(count);
  return list;
}

void takeFit(const ChoiceFit& fit, int samples, const ChoiceTerms& terms, BradleyTerry& result) {
  const int free = samples - 1;
  // From "last is zero" to "adding up to zero": w - mean(w).
  Eigen::MatrixXd turn = Eigen::MatrixXd::Constant(samples, free, -1.0 / samples);
  for (int i = 0; i < free; ++i) turn(i, i) += 1.0;
  const Eigen::VectorXd worth = turn * fit.estimate.head(free);
  const Eigen::MatrixXd covariance = turn * fit.covariance.topLeftCorner(free, free) * turn.transpose();
  for (int i = 0; i < samples; ++i) {
    result.worth.push_back(worth(i));
    result.covariance.emplace_back();
    for (int k = 0; k < samples; ++k) result.covariance.back().push_back(covariance(i, k));
  }
  result.tie = terms.hasTies ? std::exp(fit.estimate(free)) : 0.0;
  result.logLikelihood = fit.logLikelihood;
  if (!terms.hasOrder) return;
  const int at = free + terms.hasTies;
  result.order = fit.estimate(at);
  result.orderSe = std::sqrt(fit.covariance(at, at));
}

std::optional<LikelihoodRatio> fitOf(const std::vector<PairCount>& counts, int samples, const ChoiceTerms& terms, double logLikelihood) {
  double free = 0.0;
  int df = -(samples - 1) - terms.hasTies - terms.hasOrder;
  for (const PairCount& each : terms.hasOrder ? counts : eitherWay(counts)) {
    const double all = each.leftWins + each.rightWins + each.ties;
    for (double seen : {each.leftWins, each.rightWins, each.ties})
      if (seen > 0.0) free += seen * std::log(seen / all);
    df += 1 + terms.hasTies;
  }
  if (df < 1) return std::nullopt;
  return ratioOf(2.0 * (free - logLikelihood), df);
}

}  // namespace

double BradleyTerry::se(int sample) const {
  const auto i = static_cast<std::size_t>(sample);
  return std::sqrt(covariance.at(i).at(i));
}

double BradleyTerry::se(int a, int b) const {
  const auto i = static_cast<std::size_t>(a), k = static_cast<std::size_t>(b);
  return std::sqrt(std::max(0.0, covariance.at(i).at(i) + covariance.at(k).at(k) - 2.0 * covariance.at(i).at(k)));
}

BradleyTerry bradleyTerry(const std::vector<PairedChoice>& choices, int samples) {
  BradleyTerry result;
  std::vector<PairCount> counts = countPairs(choices, samples);
  ChoiceTerms terms;
  bool isDecided = false, isBothWays = false;
  std::set<std::pair<int, int>> ways;
  for (const PairCount& each : counts) {
    terms.hasTies = terms.hasTies || each.ties > 0.0;
    isDecided = isDecided || each.leftWins + each.rightWins > 0.0;
    isBothWays = isBothWays || ways.contains({each.right, each.left});
    ways.insert({each.left, each.right});
  }
  if (!isDecided) result.why = Reason::allTied;
  else if (samples > 300) result.why = Reason::tooLarge;
  if (result.why) return result;
  result.isRegularised = !isBeatenAllRound(counts, samples);
  if (result.isRegularised) counts = withHalfWins(counts, samples);
  terms.hasOrder = isBothWays && isOrderEstimable(counts, samples);
  if (!terms.hasOrder) result.whyNoOrder = isBothWays ? Reason::noSpread : Reason::notGiven;
  std::optional<ChoiceFit> fit = fitChoices(counts, samples, terms);
  if (!fit && !result.isRegularised) {
    // Ties, too, can leave the worths without finite estimates.
    result.isRegularised = true;
    counts = withHalfWins(counts, samples);
    fit = fitChoices(counts, samples, terms);
  }
  if (!fit) {
    result.why = Reason::noConvergence;
    return result;
  }
  takeFit(*fit, samples, terms, result);
  ChoiceTerms equal = terms, noOrder = terms;
  equal.hasWorths = false;
  noOrder.hasOrder = false;
  if (const auto less = fitChoices(counts, samples, equal)) result.equal = ratioOf(2.0 * (fit->logLikelihood - less->logLikelihood), samples - 1);
  if (terms.hasOrder)
    if (const auto less = fitChoices(counts, samples, noOrder)) result.noOrder = ratioOf(2.0 * (fit->logLikelihood - less->logLikelihood), 1);
  if (!result.isRegularised) result.fit = fitOf(counts, samples, terms, fit->logLikelihood);
  return result;
}

}  // namespace oddglass::stats
