#include "stats/signal/r_index.h"

#include "stats/binomial.h"
#include "stats/check.h"
#include "stats/signal/fisher.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <utility>

namespace oddglass::stats {
namespace {

using Counts = std::vector<int>;

/// Twice the number of pairs in which the signal stands above, ties counted as one.
std::int64_t twiceAbove(const Counts& signal, const Counts& noise) {
  std::int64_t sum = 0, below = std::accumulate(noise.begin(), noise.end(), std::int64_t{0});
  for (std::size_t i = 0; i < signal.size(); ++i) {
    sum += signal[i] * (2 * below - noise[i]);
    below -= noise[i];
  }
  return sum;
}

/// The answers of all trials by class, from the surest on, empty classes left out.
Counts bothTogether(const Counts& signal, const Counts& noise) {
  Counts all;
  for (std::size_t i = 0; i < signal.size(); ++i)
    if (signal[i] + noise[i] > 0) all.push_back(signal[i] + noise[i]);
  return all;
}

double stepsOfRecursion(const Counts& classes, int signals, int noises) {
  double steps = 0.0;
  for (const int here : classes) steps += (std::min(here, signals) + 1.0) * (signals + 1.0) * (2.0 * signals * noises + 1.0);
  return steps;
}

/// P(twice the pairs >= seen) when the signals are dealt at random over the classes. chance[left][twice]: so many signals are still to be dealt.
double exactTail(const Counts& classes, int signals, int noises, std::int64_t seen) {
  const std::size_t width = static_cast<std::size_t>(2) * signals * noises + 1;
  std::vector<std::vector<double>> chance(static_cast<std::size_t>(signals) + 1);
  chance[static_cast<std::size_t>(signals)].assign(width, 0.0);
  chance[static_cast<std::size_t>(signals)][0] = 1.0;
  int trialsLeft = signals + noises;
  for (const int here : classes) {
    std::vector<std::vector<double>> next(chance.size());
    for (int left = 0; left <= signals; ++left) {
      const auto& from = chance[static_cast<std::size_t>(left)];
      if (from.empty()) continue;
      const int noisesLeft = trialsLeft - left;
      for (int taken = std::max(0, here - noisesLeft); taken <= std::min(here, left); ++taken) {
        const double share = hypergeometricMass(taken, here, trialsLeft, left);
        const int noisesHere = here - taken;
        const auto added = static_cast<std::size_t>(taken) * static_cast<std::size_t>(2 * (noisesLeft - noisesHere) + noisesHere);
        auto& to = next[static_cast<std::size_t>(left - taken)];
        if (to.empty()) to.assign(width, 0.0);
        for (std::size_t twice = 0; twice + added < width; ++twice) to[twice + added] += share * from[twice];
      }
    }
    chance = std::move(next);
    trialsLeft -= here;
  }
  const auto& end = chance[0];
  return std::min(1.0, std::accumulate(end.begin() + static_cast<std::ptrdiff_t>(seen), end.end(), 0.0));
}

double normalTail(const Counts& classes, double signals, double noises, double above) {
  const double all = signals + noises;
  double ties = 0.0;
  for (const double here : classes) ties += here * here * here - here;
  const double variance = signals * noises / 12.0 * (all + 1.0 - ties / (all * (all - 1.0)));
  if (!(variance > 0.0)) return 1.0;
  const double z = (above - signals * noises / 2.0 - 0.5) / std::sqrt(variance);
  return boost::math::cdf(boost::math::complement(boost::math::normal(), z));
}

Interval scoreInterval(double r, double signals, double noises, double level) {
  const double z = boost::math::quantile(boost::math::complement(boost::math::normal(), (1.0 - level) / 2.0));
  const double mean = (signals + noises) / 2.0 - 1.0;
  const auto outside = [&](double at) {
    const double variance = at * (1.0 - at) / (signals * noises) * (1.0 + mean * (1.0 - at) / (2.0 - at) + mean * at / (1.0 + at));
    return (r - at) * (r - at) - z * z * variance;
  };
  const auto crossing = [&](double a, double b) {
    std::uintmax_t steps = 200;
    const auto ends = boost::math::tools::toms748_solve(outside, a, b, boost::math::tools::eps_tolerance<double>(50), steps);
    return ends.first + (ends.second - ends.first) / 2.0;
  };
  Interval limits{0.0, 1.0};
  if (r > 0.0 && r < 1.0) return {crossing(0.0, r), crossing(r, 1.0)};
  // At an end the equation has the end itself as one root; the other lies inside.
  const double near = 1e-9;
  if (r == 1.0 && outside(0.0) > 0.0 && outside(1.0 - near) < 0.0) limits.low = crossing(0.0, 1.0 - near);
  if (r == 0.0 && outside(1.0) > 0.0 && outside(near) < 0.0) limits.high = crossing(near, 1.0);
  return limits;
}

}  // namespace

std::optional<RIndex> rIndexOf(const Counts& signal, const Counts& noise, double level) {
  requireOpenShare("level", level);
  if (signal.size() < 2 || signal.size() > 100) throw BadInput("signal", "needs from 2 to 100 classes");
  if (signal.size() != noise.size()) throw BadInput("noise", "needs as many classes as the signal");
  std::int64_t signals = 0, noises = 0;
  for (std::size_t i = 0; i < signal.size(); ++i) {
    requireTrials("signal", signal[i]);
    requireTrials("noise", noise[i]);
    signals += signal[i];
    noises += noise[i];
  }
  if (signals > mostTrials) throw BadInput("signal", "must not be above 10 million together");
  if (noises > mostTrials) throw BadInput("noise", "must not be above 10 million together");
  if (signals == 0 || noises == 0) return std::nullopt;
  const auto twice = twiceAbove(signal, noise);
  const double pairs = static_cast<double>(signals) * static_cast<double>(noises), r = static_cast<double>(twice) / 2.0 / pairs;
  Counts classes = bothTogether(signal, noise);
  int ofSignal = static_cast<int>(signals), ofNoise = static_cast<int>(noises);
  // Seen from the other end the noises stand above the signals as often, and the fewer of the two are dealt.
  if (ofSignal > ofNoise) {
    std::ranges::reverse(classes);
    std::swap(ofSignal, ofNoise);
  }
  const bool isExact = stepsOfRecursion(classes, ofSignal, ofNoise) <= 5e7;
  const double p = isExact ? exactTail(classes, ofSignal, ofNoise, twice) : normalTail(classes, ofSignal, ofNoise, static_cast<double>(twice) / 2.0);
  const Interval limits = scoreInterval(r, ofSignal, ofNoise, level);
  return RIndex{r, limits.low, limits.high, p, isExact};
}

}  // namespace oddglass::stats
