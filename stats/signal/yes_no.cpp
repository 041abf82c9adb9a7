#include "stats/signal/yes_no.h"

#include "stats/check.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace oddglass::stats {
namespace {

const boost::math::normal standard;
constexpr double root2 = std::numbers::sqrt2;

double phi(double z) { return boost::math::pdf(standard, z); }
double below(double z) { return boost::math::cdf(standard, z); }
double zOf(double share) { return boost::math::quantile(standard, share); }

void requireSize(const char* argument, double value, double low) {
  if (!(value >= low && value <= 1000.0)) throw BadInput(argument, low < 0.0 ? "must be from -1000 to 1000" : "must be from 0 to 1000");
}

Rates ratesOf(const YesNo& counts, double added) {
  return {(counts.hits + added) / (counts.signals() + 2.0 * added), (counts.falseAlarms + added) / (counts.noises() + 2.0 * added)};
}

double hitRate(double dPrime, double tau) { return below((dPrime - tau) / root2) + below((-dPrime - tau) / root2); }

/// What both tests have in common.
SignalFound found(const YesNo& counts, std::optional<Distance> (*distance)(const Rates&), double (*error)(const YesNo&, const Rates&, const Distance&)) {
  requireCounts(counts);
  SignalFound all;
  if (counts.signals() == 0 || counts.noises() == 0) {
    all.why = counts.signals() + counts.noises() == 0 ? Reason::noTrials : Reason::emptyCell;
    return all;
  }
  all.pValue = fisherGreater(counts);
  const auto corrected = distance(ratesOf(counts, 0.5));
  if (corrected) {
    all.corrected = corrected->dPrime;
    all.criterionCorrected = corrected->criterion;
  }
  const Rates rates = ratesOf(counts, 0.0);
  const auto plain = distance(rates);
  if (!plain) {
    all.why = Reason::allOneWay;
    return all;
  }
  all.dPrime = plain->dPrime;
  all.criterion = plain->criterion;
  const double se = error(counts, rates, *plain);
  if (std::isfinite(se) && se > 0.0) all.standardError = se;
  else all.why = Reason::atGuessing;
  return all;
}

double varianceOfRates(double share, int trials) { return share * (1.0 - share) / trials; }

double aNotAError(const YesNo& counts, const Rates& rates, const Distance&) {
  const double hit = phi(zOf(rates.hit)), alarm = phi(zOf(rates.falseAlarm));
  return std::sqrt(varianceOfRates(rates.hit, counts.signals()) / (hit * hit) + varianceOfRates(rates.falseAlarm, counts.noises()) / (alarm * alarm));
}

double sameDifferentError(const YesNo& counts, const Rates& rates, const Distance& at) {
  if (!(rates.hit > rates.falseAlarm)) return 0.0;
  const double up = phi((at.dPrime - at.criterion) / root2), down = phi((-at.dPrime - at.criterion) / root2);
  const double hitByD = (up - down) / root2, hitByTau = -(up + down) / root2, alarmByTau = -root2 * phi(at.criterion / root2);
  const double dByHit = 1.0 / hitByD, dByAlarm = -hitByTau / (hitByD * alarmByTau);
  return std::sqrt(dByHit * dByHit * varianceOfRates(rates.hit, counts.signals()) + dByAlarm * dByAlarm * varianceOfRates(rates.falseAlarm, counts.noises()));
}

}  // namespace

std::optional<Distance> aNotADistance(const Rates& rates) {
  requireShare("hit", rates.hit);
  requireShare("falseAlarm", rates.falseAlarm);
  for (const double rate : {rates.hit, rates.falseAlarm})
    if (rate == 0.0 || rate == 1.0) return std::nullopt;
  const double hit = zOf(rates.hit), alarm = zOf(rates.falseAlarm);
  return Distance{hit - alarm, 0.0 - (hit + alarm) / 2.0};
}

std::optional<Distance> sameDifferentDistance(const Rates& rates) {
  requireShare("hit", rates.hit);
  requireShare("falseAlarm", rates.falseAlarm);
  if (rates.falseAlarm == 0.0 || rates.hit == 1.0) return std::nullopt;
  const double tau = 0.0 - root2 * zOf(rates.falseAlarm / 2.0);
  if (rates.hit <= rates.falseAlarm) return Distance{0.0, tau};
  double high = tau + 1.0;
  while (hitRate(high, tau) <= rates.hit && high < 200.0) high += 10.0;
  std::uintmax_t steps = 200;
  const auto gap = [&](double d) { return hitRate(d, tau) - rates.hit; };
  if (!(gap(0.0) < 0.0) || !(gap(high) > 0.0)) return gap(0.0) >= 0.0 ? std::optional(Distance{0.0, tau}) : std::nullopt;
  const auto ends = boost::math::tools::toms748_solve(gap, 0.0, high, boost::math::tools::eps_tolerance<double>(50), steps);
  return Distance{ends.first + (ends.second - ends.first) / 2.0, tau};
}

Rates aNotARates(double dPrime, double criterion) {
  requireSize("dPrime", dPrime, 0.0);
  requireSize("criterion", criterion, -1000.0);
  return {below(dPrime / 2.0 - criterion), below(-dPrime / 2.0 - criterion)};
}

Rates sameDifferentRates(double dPrime, double tau) {
  requireSize("dPrime", dPrime, 0.0);
  requireSize("tau", tau, 0.0);
  return {std::min(1.0, hitRate(dPrime, tau)), std::min(1.0, 2.0 * below(-tau / root2))};
}

SignalFound aNotA(const YesNo& counts) { return found(counts, aNotADistance, aNotAError); }

SignalFound sameDifferent(const YesNo& counts) { return found(counts, sameDifferentDistance, sameDifferentError); }

}  // namespace oddglass::stats
