#pragma once

#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

enum class Shape { flat, linear, quadratic, spline };

/// Small-sample AIC of each shape on session means, n ln(RSS / n) + 2 k + 2 k (k + 1) / (n - k - 1), with k counting the residual variance; less is better.
struct ShapeChoice {
  std::optional<double> flat, linear, quadratic, spline;
  std::optional<Shape> chosen;  ///< the least; of equals the simplest. A shape without any residual is chosen before all others and has no AICc
  std::optional<Reason> why;    ///< set where `chosen` is empty: fewSessions (below 5), oneAge; noSpread where a shape fits without residual
};

/// Flat and linear from 5 sessions, quadratic from 6, spline from 8 (natural cubic, inner knots at the thirds of the ages: 4 coefficients); these two
/// also need more different ages than coefficients. `scale` is the size of the scores, for rounding. Both vectors have the same length; BadInput otherwise.
/// Sources: Hurvich and Tsai 1989, Biometrika 76:297; natural cubic splines as in Hastie, Tibshirani and Friedman 2009, 5.2.1.
ShapeChoice chooseShape(const std::vector<double>& age, const std::vector<double>& mean, double scale = 0.0);

/// Where a quadratic of the session means is highest.
struct Peak {
  std::optional<double> age;        ///< empty where the curve opens upwards or is highest outside the ages seen
  std::optional<double> low, high;  ///< Fieller's limits; a side that is open within the ages seen is empty
  std::optional<Reason> why;        ///< notGiven: no peak within the ages seen; fewSessions; noSpread: no residual, so no limits
};

/// From 4 sessions with 3 different ages or more; t on sessions - 3 df. Source: Fieller 1954, J R Stat Soc B 16:175, for -b1 / (2 b2).
Peak peakOf(const std::vector<double>& age, const std::vector<double>& mean, double level, double scale = 0.0);

}  // namespace oddglass::stats
