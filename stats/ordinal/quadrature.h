#pragma once

#include <vector>

namespace oddglass::stats {

/// Gauss-Hermite points for the weight exp(-x^2), weights summing to sqrt(pi). One point or more, at most 100.
struct Quadrature {
  std::vector<double> points;
  std::vector<double> weights;
};

/// BadInput outside 1..100. Source: Golub and Welsch 1969, Math Comp 23:221.
Quadrature gaussHermite(int points);

}  // namespace oddglass::stats
