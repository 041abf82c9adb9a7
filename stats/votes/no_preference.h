#pragma once

#include <optional>

namespace oddglass::stats {

/// A preference test of so many votes: two-sided p, and the count of the larger side that reaches alpha (empty where none does).
struct VoteTest {
  int first;
  int second;
  double pValue;
  std::optional<int> critical;
  bool isShown;  ///< p at or below alpha
};

/// One vote a person, and some who have no preference: the test without them, and how it would change if they were counted.
struct NoPreference {
  double shareOfNone;       ///< of all asked; 0 when nobody was
  VoteTest without;         ///< the result: those without a preference are left out
  VoteTest splitEvenly;     ///< half to each side, an odd one to the side that is behind
  VoteTest splitAsVoted;    ///< in proportion to the votes, rounded, at an exact half towards the side that is behind
  bool changes;             ///< one of the two splits would be read otherwise than the result
};

/// Counts from 0, together at most 10 million; alpha in (0, 1). Source: exact sign test without ties (Dixon and Mood 1946); the splits are
/// *common practice* and shown only beside it.
NoPreference noPreference(int first, int second, int none, double alpha);

}  // namespace oddglass::stats
