#pragma once

#include "planning/setup.h"

#include <optional>
#include <vector>

namespace oddglass::planning {

/// How a score sheet is served. Only for a setup with a sheet.

/// Coded samples: the lots but the warm-up cup's, and one more where one is poured twice.
int samplesOf(const Setup& setup);

/// Coded cups in a flight: all samples, or as many as are served at once.
int codedCups(const Setup& setup);

/// All cups of a flight, the marked one among them.
int cupsOfSheet(const Setup& setup);

/// The orders that so many places are dealt, as samples from 1 on: Williams squares where all samples stand in a flight, so that each stands
/// equally often in each position and after each other one; else incomplete blocks, one for each place, as even as they come.
/// Source: Williams 1949 (stats/design/williams.h); stats/design/incomplete.h.
std::vector<std::vector<int>> sheetOrders(int samples, int cupsInFlight, int places);

/// Cups of one lot in one round over all places, at worst: whichever lot is doubled, and whichever sample it is drawn to be.
int worstSheetCups(const Setup& setup, int lot);

/// Cups of the warm-up lot on one evening: one for each place; 0 for every other lot.
int warmUpCups(const Setup& setup, int lot);

/// Grams of ethanol in one flight of a person at worst, and of the warm-up cup that comes once an evening; nothing where a strength is missing.
struct SheetGrams {
  double flight = 0.0, warmUp = 0.0;
};
std::optional<SheetGrams> gramsOfSheet(const Setup& setup, int cupMl);

}  // namespace oddglass::planning
