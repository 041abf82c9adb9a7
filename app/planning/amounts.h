#pragma once

#include "planning/setup.h"

#include <optional>
#include <vector>

namespace oddglass::planning {

/// What one lot must be able to give, whatever orders are drawn.
struct LotAmount {
  int cups = 0;
  int ml = 0;
  std::optional<int> bottles;  ///< whole ones; nothing when the bottle's size is not known
  bool enough = true;          ///< no more than are free
};

/// What a plan takes, the worst case over all orders, so that nothing of the key shows in it; makers' cups and spare places
/// included. Spilled cups come on top.
struct Amounts {
  int cupsPerPerson = 0;
  int mlPerPerson = 0;
  int cups = 0;                 ///< on the table in all
  std::vector<LotAmount> lots;  ///< in the order of the setup; alike for both, since either may be poured more often
  int minutes = 0;              ///< from sitting down to the last lock, rounded up to 5
  std::optional<double> grams;  ///< ethanol a person takes in an evening if everything is swallowed; nothing without a strength
  std::optional<double> drinkGrams;  ///< of a standard drink where the host lives; nothing for a country that is not listed
  std::optional<double> drinks;      ///< grams in standard drinks
  bool aboveCeiling = false;
};

/// Amounts of a triangle plan. In each round whole blocks of six places hold 9 cups of each lot; of a block that is not full up to three
/// places may have two cups of a lot. Minutes: 10 to settle, 20 s to pour a cup, 90 s a flight; own figures.
/// Source of the worst case: counting over the six orders (ISO 4120). Problem outOfRange.
Amounts amountsOf(const Setup& setup);

/// Grams for one person and round of a triangle: two cups of the stronger lot and one of the other; nothing without both strengths.
std::optional<double> gramsPerRound(const Setup& setup, int cupMl);

/// Cups of one lot in one round over `places`, at worst.
int worstCups(int places);

}  // namespace oddglass::planning
