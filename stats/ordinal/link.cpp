#include "stats/ordinal/link.h"

#include "stats/normal.h"

#include <cmath>
#include <numbers>

namespace oddglass::stats {
namespace {

double logistic(double x) { return x >= 0.0 ? 1.0 / (1.0 + std::exp(-x)) : std::exp(x) / (1.0 + std::exp(x)); }
double logOnePlusExp(double x) { return x > 0.0 ? x + std::log1p(std::exp(-x)) : std::log1p(std::exp(x)); }

// F(a) - F(b) = F(a) (1 - F(b)) (1 - exp(b - a)), so that the limits part.
Slice logit(double a, double b) {
  Slice slice;
  if (std::isfinite(a)) {
    const double above = logistic(-a), density = above * (1.0 - above), turn = density * (2.0 * above - 1.0);
    slice.log -= logOnePlusExp(-a);
    slice.byA += above;
    slice.slopeByA = -density;
    slice.bendByA = -turn;
  }
  if (std::isfinite(b)) {
    const double below = logistic(b), density = below * (1.0 - below), turn = density * (1.0 - 2.0 * below);
    slice.log -= logOnePlusExp(b);
    slice.byB -= below;
    slice.slopeByB = -density;
    slice.bendByB = -turn;
  }
  slice.slope = slice.byA + slice.byB;
  slice.bend = slice.slopeByA + slice.slopeByB;
  if (std::isfinite(a) && std::isfinite(b)) {
    slice.log += std::log(-std::expm1(b - a));
    const double gap = 1.0 / std::expm1(a - b);
    slice.byA += gap;
    slice.byB -= gap;
  }
  return slice;
}

struct Normal {
  double density = 0.0, turn = 0.0, second = 0.0;

  explicit Normal(double x) {
    if (!std::isfinite(x)) return;
    density = normalDensity(x);
    turn = -x * density;
    second = (x * x - 1.0) * density;
  }
};


Slice probit(double a, double b) {
  // From the nearer tail, so that nothing cancels.
  const double p = b > 0.0 ? normalBelow(-b) - normalBelow(-a) : normalBelow(a) - normalBelow(b);
  const Normal atA(a), atB(b);
  Slice slice;
  slice.log = std::log(p);
  slice.byA = atA.density / p;
  slice.byB = -atB.density / p;
  slice.slope = slice.byA + slice.byB;
  const double turns = (atA.turn - atB.turn) / p;
  slice.slopeByA = atA.turn / p - slice.slope * slice.byA;
  slice.slopeByB = -atB.turn / p - slice.slope * slice.byB;
  slice.bend = turns - slice.slope * slice.slope;
  slice.bendByA = atA.second / p - turns * slice.byA - 2.0 * slice.slope * slice.slopeByA;
  slice.bendByB = -atB.second / p - turns * slice.byB - 2.0 * slice.slope * slice.slopeByB;
  return slice;
}

}  // namespace

Slice sliceOf(Link link, double a, double b) { return link == Link::logit ? logit(a, b) : probit(a, b); }

}  // namespace oddglass::stats
