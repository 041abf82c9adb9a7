#pragma once

#include "planning/setup.h"

#include <optional>
#include <vector>

namespace oddglass::planning {

/// What one lot must be able to give, whatever orders are drawn.
struct LotAmount {
  int cups = 0;
  int ml = 0;
  std::optional<int> bottles;  ///< whole ones, fresh for each evening; nothing when the bottle's size is not known
  bool enough = true;          ///< no more than are free
};

/// What is on trays at once where places are served in waves: one flight for each place of a wave.
struct WaveAmount {
  int waves = 0;
  int places = 0;  ///< of a full wave
  int cups = 0;
  int ml = 0;
};

/// What a plan takes, the worst case over all orders, so that nothing of the key shows in it; makers' cups, marked cups and spare places
/// included, the same for everybody. Spilled cups come on top.
struct Amounts {
  int cupsPerPerson = 0;        ///< over all evenings
  int mlPerPerson = 0;
  int cups = 0;                 ///< poured in all, over all evenings
  std::vector<LotAmount> lots;  ///< in the order of the setup
  int evenings = 1;
  int cupsAnEvening = 0;        ///< of a person, on the longest evening
  int mlAnEvening = 0;
  std::optional<WaveAmount> wave;  ///< only where there is more than one wave
  int minutes = 0;              ///< of the longest evening, from sitting down to the last lock, rounded up to 5
  std::optional<double> grams;  ///< ethanol a person takes on the longest evening if everything is swallowed; nothing without a strength
  std::optional<double> drinkGrams;  ///< of a standard drink where the host lives; nothing for a country that is not listed
  std::optional<double> drinks;      ///< grams in standard drinks
  bool aboveCeiling = false;
};

/// Amounts of a plan of any method. Minutes: by planning/pace.h; on a score sheet, which all fill in at once, the pause and the questions
/// beside.
/// Source of the worst case: counting over the orders (planning/flight_cups.h). Problem outOfRange.
Amounts amountsOf(const Setup& setup);

}  // namespace oddglass::planning
