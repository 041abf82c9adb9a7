#pragma once

#include "stats/methods.h"
#include "stats/tail_walk.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Critical number and power for one more trial after the other. guess < pc <= 1; alpha in (0, 1).
/// Critical numbers are those of criticalNumber, also at exact ties: what lies within a billionth of alpha is looked at by the exact integral.
class PowerWalk {
 public:
  PowerWalk(double guess, double pc, double alpha);

  int trials() const { return byGuessing_.trials(); }
  /// Empty while no count reaches alpha.
  std::optional<int> critical() const;
  double alphaActual() const;
  double power() const;
  void oneMoreTrial();

 private:
  bool reaches() const;
  void settle();

  TailWalk byGuessing_, truly_;
  double guess_, alpha_;
};

/// One point of a power curve.
struct PowerPoint {
  int trials;
  std::optional<int> critical;
  double alphaActual;
  double power;
};

/// Power for 1, 2, ... `last` trials when an answer is right with chance pc, above guessing and at most 1; 1 <= last <= 100,000.
/// Not for a preference. Source: exact binomial, by recursion; accurate to about 1e-12.
std::vector<PowerPoint> powerCurve(Method method, double pc, double alpha, int last);

}  // namespace oddglass::stats
