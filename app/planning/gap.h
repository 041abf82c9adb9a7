#pragma once

#include "planning/setup.h"

#include <optional>
#include <vector>

namespace oddglass::planning {

/// How much a panel's scores are taken to spread, in shares of the scale's length.
struct Spread {
  double interaction = 1.0 / 8.0;  ///< how much people differ in what they find between cups
  double repeat = 1.0 / 8.0;       ///< how much one person differs from cup to cup of the same drink
  bool fromPast = false;           ///< from this panel's own sessions; otherwise the stated defaults: one point each on nine points
  int tables = 0;                  ///< how many past score sheets they come from
};

/// The smallest gap between two cups' means that a plan shows 8 times in 10, for one kind of question.
struct Gap {
  ItemKind kind = ItemKind::liking;
  double scale = 8.0;              ///< length of the scale, in the question's own points
  std::optional<double> smallest;  ///< in the same points; nothing for fewer than 3 people, or where it would not fit on the scale
  int questions = 1;               ///< main questions of the plan together; the strongest is held against alpha over these (Holm 1979)
};

/// What a score sheet can find, said before anything is poured.
struct SheetOutlook {
  int people = 0;                 ///< that count
  int samples = 0, cups = 0;      ///< coded samples, and how many of them stand before one person
  bool isComplete = true;         ///< everybody gets all samples
  Spread spread;
  std::vector<Gap> gaps;          ///< one for each kind of question with points that the sheet asks, in the order of the sheet
  bool dotsOnly = false;          ///< one person: answers as they are, no mean
  bool noIntervals = false;       ///< fewer than three: no interval, no verdict
  bool willBeGuessed = false;     ///< fewer than four friends will guess who wrote what
  bool noReference = false;       ///< nothing to hold it against: a score by itself says little
  bool withinUnlikely = false;    ///< limits are set, and a panel of this size seldom earns *within the limit*
};

/// `items` are the questions of the sheet. Source: two-sided paired t over people after averaging rounds (stats/scores/power.h); in incomplete
/// blocks the people who get both cups of a pair are counted, to the nearest one. Problem outOfRange.
SheetOutlook sheetOutlook(const Setup& setup, const std::vector<SheetItem>& items, const Spread& spread = {});

}  // namespace oddglass::planning
