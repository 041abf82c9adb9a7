#pragma once

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Whether some places were chosen more often than an even hand would. statistic is Pearson's over the places; p_value by
/// chi-square with df; pExact is the chance of a statistic at least as large, by counting all outcomes.
struct PositionCheck {
  double statistic;
  int df;
  double pValue;
  std::optional<double> pExact;  ///< given where fewer than 5 are expected at a place and there are at most three million outcomes
  std::vector<int> counts;
};

/// Choices by place, every place equally likely. At least two places and one choice. Source: exact multinomial and Pearson 1900.
PositionCheck positionCheck(const std::vector<int>& counts);

/// A wrong answer in a triangle: the place chosen and the place of the odd cup, 0 to 2 and unlike.
struct WrongChoice {
  int chosen;
  int odd;
};

/// Position check from wrong answers only, for there a right answer would look like a habit. Each wrong choice falls by chance on
/// one of the two other places, so what is expected follows from where the odd cups stood. The p is exact over all outcomes.
/// Empty without wrong answers or with more than 300. Source: exact conditional distribution by counting.
struct HabitCheck {
  double statistic;  ///< sum of (count - expected)^2 / expected over places where something is expected
  double pExact;
  std::vector<int> counts;
  std::vector<double> expected;
};
std::optional<HabitCheck> habitCheck(const std::vector<WrongChoice>& wrong);

}  // namespace oddglass::stats
