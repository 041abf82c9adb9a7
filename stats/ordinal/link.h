#pragma once

namespace oddglass::stats {

/// How a cumulative chance depends on threshold and effects.
enum class Link { logit, probit };

/// log(F(a) - F(b)) for one answer, and its derivatives. A common shift of both limits is s.
struct Slice {
  double log = 0.0;        ///< log p
  double byA = 0.0;        ///< d log p / da
  double byB = 0.0;        ///< d log p / db
  double slope = 0.0;      ///< d log p / ds
  double slopeByA = 0.0;   ///< and its derivatives
  double slopeByB = 0.0;
  double bend = 0.0;       ///< d2 log p / ds2, never above zero
  double bendByA = 0.0;
  double bendByB = 0.0;
};

/// a > b; the ends may be plus or minus infinity. Source: McCullagh 1980, JRSS B 42:109.
Slice sliceOf(Link link, double a, double b);

}  // namespace oddglass::stats
