#pragma once

#include <vector>

namespace oddglass::stats {

/// How one paired choice came out.
enum class Choice { left, right, tie };

/// One paired choice: which samples stood left and right (from 0), and which was taken.
struct PairedChoice {
  int left = 0;
  int right = 0;
  Choice came = Choice::tie;
};

/// All choices of one pair in one order.
struct PairCount {
  int left = 0;
  int right = 0;
  double leftWins = 0.0;
  double rightWins = 0.0;
  double ties = 0.0;
};

/// Counts by ordered pair, in rising order of left and right. Samples from 0 to samples - 1 (2 or more), left and right unlike, at least one choice;
/// else BadInput.
std::vector<PairCount> countPairs(const std::vector<PairedChoice>& choices, int samples);

}  // namespace oddglass::stats
