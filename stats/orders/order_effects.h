#pragma once

#include "stats/estimated.h"
#include "stats/long_rows.h"

#include <vector>

namespace oddglass::stats {

/// What the place of a cup did to its score, from orders that were balanced beforehand. Both are fitted by least squares beside samples and flights; a flight is one
/// taster, and with rounds or sessions one taster's round and session. Where a taster had a sample more than once, taster by sample stands in the model as well.
struct OrderEffects {
  Estimated firstPosition;  ///< the first cup of a flight minus the others
  struct CarryOver {
    std::optional<double> F, df1, df2, pValue;  ///< do the scores depend on what stood before
    struct Previous {
      int sample = 0;
      Estimated effect;                         ///< on the cup that follows this sample; they sum to 0
    };
    std::vector<Previous> previous;
    std::optional<Reason> why;
  } carryOver;
};

/// `position` of the rows holds the place in the flight with label 0 for the first. `previous` says for each row which sample was tasted before, -1 for none (the first
/// cup); empty when it was not recorded (carry-over is then notGiven). Carry-over is fitted beside all positions.
/// An effect that the orders do not set apart from samples, flights and positions: emptyCell. No degrees of freedom left: fewTasters. No residual: noSpread.
/// More than 800 flights, samples and positions together: tooLarge. BadInput as requireSound, for a missing position, and for a previous label that is no sample.
/// Source: crossover models with first-order carry-over (Williams 1949, Aust J Sci Res A 2:149; Jones and Kenward 2014).
OrderEffects orderEffects(const ScoreRows& rows, const std::vector<int>& previous, double level);

/// Halo: how far two questions of one sheet move together within tasters and samples, beyond what tasters and samples explain of each.
struct Halo {
  std::optional<double> correlation;  ///< of the residuals of response ~ taster + sample
  std::optional<double> pValue;       ///< two-sided, t with df
  std::optional<int> df;              ///< residual df less one
  std::optional<Reason> why;
};

/// `second` holds the other question's answer for each row. Rounds and repeats are averaged. Both need spread and residual df of 2 or more.
/// Source: partial correlation (Fisher 1924, Metron 3:329).
Halo halo(const ScoreRows& rows, const std::vector<double>& second);

}  // namespace oddglass::stats
