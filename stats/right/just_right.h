#pragma once

#include "stats/estimated.h"
#include "stats/long_rows.h"
#include "stats/right/label_splits.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Just-about-right answers with liking, one row for each taster and sample. Columns are of one length.
struct RightRows {
  std::vector<int> category;  ///< 1 and 2 too little, 3 just about right, 4 and 5 too much
  std::vector<double> liking;
  Factor sample;
  Factor taster;
};

/// What one side of "just about right" costs in liking. Mean(right) - mean(side): above 0 where those on this side like it less.
struct LikingDrop {
  int answers = 0;                  ///< how many are on this side
  double share = 0.0;               ///< of all who answered for this sample
  Estimated drop;                   ///< by the pooled variance, n_right + n_side - 2 df; `why` underFifth or fewAnswers where it stands alone
  std::optional<SplitP> permuted;   ///< by dealing the labels; also where there is no spread within right and side, but between them
  std::optional<Reason> whyNoSplit; ///< set where `permuted` is empty
  std::optional<double> penalty;    ///< share x drop
};

/// One sample. Shares add up to 1.
struct RightSample {
  int sample = 0;
  int answers = 0;
  double lowShare = 0.0, rightShare = 0.0, highShare = 0.0;
  std::optional<double> meanLiking, meanRight;
  LikingDrop low, high;
  std::optional<double> totalPenalty;  ///< both penalties together: mean(right) - mean(all); empty where nobody said right
  std::optional<double> pSides;        ///< exact two-sided sign test, too little against too much; empty where nobody said either
};

/// A side is judged from one in so many of those who answered, 20 %. Source: common practice.
inline constexpr int leastSideOneIn = 5;
/// The fewest answers on a side, and right, between which a drop is judged.
inline constexpr int leastSideAnswers = 2;

/// One entry for each sample, also where it has no answers. `why` of a drop is emptyCell where the side or the right is empty; underFifth where fewer
/// than 20 % are on the side; fewAnswers below two on the side or two right; noSpread where liking does not vary within right and side; for the
/// permutation also tooLarge above 1,000 answers. BadInput names the column: category outside 1..5, liking not finite or above 1e100 in size, a
/// taster with two answers for a sample, columns of unlike length; level in (0, 1).
/// Sources: mean drop and total penalty as in Rothman and Parker 2009 (ASTM MNL63) and Popper and Kroll 2005; Student's pooled t; permutation of the
/// labels, Fisher 1935; sign test between the sides.
std::vector<RightSample> justRight(const RightRows& rows, double level);

}  // namespace oddglass::stats
