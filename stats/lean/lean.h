#pragma once

#include "stats/estimated.h"
#include "stats/long_rows.h"

#include <vector>

namespace oddglass::stats {

/// What one person's answers of one session say of a drink: their own minus the reference, or that of the open cups minus that of the blind ones.
struct PersonDifference {
  int person = 0;
  int session = 0;
  double difference = 0.0;
};

/// One person against a few others: the maker's mean difference minus the mean of the friends'.
struct MakerContrast {
  Estimated lean;     ///< positive: the maker is kinder than the friends
  int friends = 0;    ///< how many the maker was compared with
  struct Session {
    int session = 0;
    int friends = 0;
    Estimated lean;   ///< empty with notGiven where the maker was not there, with fewTasters where no friend was
  };
  std::vector<Session> sessions;  ///< every session that holds a difference, by its number
};

/// The contrast over sessions and for each. se = s sqrt(1 + 1/k), df k - 1, with s the spread of the friends' mean differences: people are the unit, so that
/// more sessions sharpen the differences but add no degrees of freedom. Where visits are missing a person's mean is their effect from the least-squares
/// fit difference ~ person + session; friends who share no session with the maker, not even through others, are left out.
/// Fewer than 3 friends: the estimate alone, fewTasters; friends who do not differ: the estimate alone, noSpread. The maker not there: notGiven.
/// At most one difference for each person and session; BadInput otherwise, and for numbers outside their range. `scale` is the size of the scores, for rounding.
/// Source: Crawford and Howell 1998, Clin Neuropsychol 12:482 (one person against a small sample).
MakerContrast makerContrast(const std::vector<PersonDifference>& differences, int maker, double level, double scale = 0.0);

/// Mean of `own` minus mean of `reference` for each person and session in which both were answered; rounds and repeats are averaged. Without a session
/// column everything is session 0. BadInput for labels that are not among the samples, or twice the same.
std::vector<PersonDifference> ownMinusReference(const ScoreRows& rows, int own, int reference);

/// The same, open minus blind: `isOpen` says for each row whether its taster knew what stood in the glass. People and sessions that lack one side are left out.
/// Open cups come after blind ones, so that the order and the label cannot be told apart.
std::vector<PersonDifference> openMinusBlind(const ScoreRows& rows, const std::vector<bool>& isOpen, int own, int reference);

/// The largest score, without its sign: what rounding is measured by.
double sizeOf(const ScoreRows& rows);

}  // namespace oddglass::stats
