#include "stats/power_curve.h"

#include "stats/binomial.h"
#include "stats/check.h"

#include <cmath>

namespace oddglass::stats {

PowerWalk::PowerWalk(double guess, double pc, double alpha) : byGuessing_(guess), truly_(pc), guess_(guess), alpha_(alpha) {
  requireOpenShare("guess", guess);
  requireOpenShare("alpha", alpha);
  if (!(pc > guess && pc <= 1.0)) throw BadInput("pc", "must be above guessing and at most 1");
  settle();
}

bool PowerWalk::reaches() const {
  const double tail = byGuessing_.tail();
  if (std::abs(tail - alpha_) < 1e-9 * alpha_) return atMost(upperTail(byGuessing_.count(), byGuessing_.trials(), guess_), alpha_);
  return tail < alpha_;
}

void PowerWalk::settle() {
  while (byGuessing_.count() <= byGuessing_.trials() && !reaches()) {
    byGuessing_.oneMoreNeeded();
    truly_.oneMoreNeeded();
  }
}

std::optional<int> PowerWalk::critical() const {
  return byGuessing_.count() <= byGuessing_.trials() ? std::optional(byGuessing_.count()) : std::nullopt;
}

double PowerWalk::alphaActual() const { return critical() ? byGuessing_.tail() : 0.0; }

double PowerWalk::power() const { return critical() ? truly_.tail() : 0.0; }

void PowerWalk::oneMoreTrial() {
  byGuessing_.oneMoreTrial();
  truly_.oneMoreTrial();
  settle();
}

std::vector<PowerPoint> powerCurve(Method method, double pc, double alpha, int last) {
  if (method == Method::preference) throw BadInput("method", "a preference has no right answer");
  if (last < 1 || last > 100'000) throw BadInput("last", "must be from 1 to 100,000");
  std::vector<PowerPoint> curve;
  curve.reserve(static_cast<std::size_t>(last));
  for (PowerWalk walk(guessing(method), pc, alpha);; walk.oneMoreTrial()) {
    curve.push_back({walk.trials(), walk.critical(), walk.alphaActual(), walk.power()});
    if (walk.trials() == last) return curve;
  }
}

}  // namespace oddglass::stats
