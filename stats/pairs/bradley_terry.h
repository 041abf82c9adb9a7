#pragma once

#include "stats/pairs/choices.h"
#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// A likelihood-ratio test.
struct LikelihoodRatio {
  double statistic;
  int df;
  double pValue;
};

/// Worths behind paired choices.
struct BradleyTerry {
  std::vector<double> worth;                    ///< log worths, adding up to zero; empty where there is no fit
  std::vector<std::vector<double>> covariance;  ///< of the worths
  std::optional<double> tie;                    ///< Davidson's nu; 0 without ties
  std::optional<double> order;                  ///< log odds that the left place gains
  std::optional<double> orderSe;
  std::optional<Reason> whyNoOrder;             ///< notGiven: every pair stood one way round only; noSpread: the place alone explains the choices
  bool isRegularised = false;                   ///< half a win was added to either side of every pair
  double logLikelihood = 0.0;                   ///< of the choices in their sequence, as fitted
  std::optional<LikelihoodRatio> equal;         ///< against all worths equal, tie and order still free
  std::optional<LikelihoodRatio> noOrder;       ///< against no advantage of a place
  std::optional<LikelihoodRatio> fit;           ///< against every pair its own chances (each way round, with an order effect); empty where df is 0 or regularised
  std::optional<Reason> why;                    ///< fewSamples, allTied, tooLarge, noConvergence: why there is no fit

  /// Standard error of a log worth, and of the difference of two.
  double se(int sample) const;
  double se(int a, int b) const;
};

/// With worths w and advantage g of the left place, left : right : tie = exp(w_left + g / 2) : exp(w_right - g / 2) : nu exp((w_left + w_right) / 2), so that
/// the chance of a tie is nu times the geometric mean of the other two. Maximum likelihood by Newton's method. The order effect is fitted where
/// some pair was tasted both ways round. Where a sample always wins, or the wins fall into parts, half a win is added to either side of every pair,
/// half of it in either order. Up to 300 samples.
/// Sources: Bradley and Terry 1952, Biometrika 39:324; Davidson 1970, JASA 65:317 (ties); Davidson and Beaver 1977, Biometrics 33:693 (order).
BradleyTerry bradleyTerry(const std::vector<PairedChoice>& choices, int samples);

}  // namespace oddglass::stats
