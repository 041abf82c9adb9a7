#pragma once

#include "domain/plan.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::planning {

/// One lot of the plan as far as amounts go.
struct SetupLot {
  std::optional<int> abvBp;  ///< strength in 1/100 % by volume, 0 to 9600; nothing when it is not known
  int bottleMl = 0;          ///< 0 when not known
  int freeBottles = 0;       ///< in stock and not held for another session
  LotRole role = LotRole::compared;  ///< on a score sheet
  bool operator==(const SetupLot&) const = default;
};

/// What amounts follow from on a score sheet.
struct SheetSetup {
  bool hasDuplicate = false;  ///< one lot is poured twice; which one is drawn, a control never
  int cupsAtOnce = 7;         ///< most coded cups in a flight, 2 to 12
  int questions = 1;          ///< asked of each cup
  int pauseSeconds = 30;
  bool operator==(const SheetSetup&) const = default;
};

/// All of a plan that amounts and chances follow from. Numbers only: no names, no lots' ids.
struct Setup {
  int panel = 0;   ///< people who made none of the drinks, the pourer not among them
  int makers = 0;  ///< tasters who made one
  int spares = 0;  ///< places for people who might still come
  Method method = Method::triangle;
  Routine routine = Routine::pourer;
  std::optional<Slot> expected;  ///< the lot that is asked about as having more; 1 or 2
  std::optional<Slot> marked;    ///< the lot in the marked cup; nothing: either
  bool thingNamed = false;       ///< one thing is named that one of them might have more of
  bool lingers = false;          ///< a strong taste that stays from one cup to the next
  bool mayHaveNone = false;      ///< "no preference" may be answered
  std::optional<Stopping> stopping;
  std::optional<SheetSetup> sheet;  ///< of a score sheet, and there always
  int evenings = 1;  ///< the rounds are spread over them; 1 to 6
  int wave = 0;      ///< places served at a time; 0: all at once, up to 999
  int rounds = 1;  ///< of each comparison, 1 to 20
  int cupMl = 30;  ///< 5 to 200
  std::vector<SetupLot> lots;
  int alphaPm = 50;  ///< 1 to 200
  Sought sought = Sought::difference;
  std::optional<int> limitPm;  ///< share of people in 1/1000
  int gammaPm = 300;           ///< how much people are taken to differ, 0 to 1000
  int ceilingGrams = 20;
  std::string country = "GB";

  int comparisons() const { return sheet ? 1 : comparisonsOf(lots.size()); }
  /// Flights of each taster in all.
  int flights() const { return rounds * comparisons(); }
  int places() const { return panel + makers + spares; }
  /// The people whose answers are the data: the panel, or, when there is none, a single maker tasting alone.
  int counting() const { return panel > 0 ? panel : (makers == 1 ? 1 : 0); }
  /// How much the counting people are taken to differ, 0 to 1. Alone there is only one person to speak of: 0.
  double gamma() const { return panel > 0 ? gammaPm / 1000.0 : 0.0; }
  double alpha() const { return alphaPm / 1000.0; }
  /// Rounds of each comparison on the longest evening.
  int roundsAnEvening() const { return (rounds + evenings - 1) / evenings; }
  bool operator==(const Setup&) const = default;
};

/// Whom a verdict of this plan is about: `me` alone, `people` like these after one round, `table` after several. Scores are worked out with the
/// person as the unit, so they speak of people like these after any number of rounds.
Claim claimOf(const Setup& setup);

/// True where a lot is as strong as spirits: 20 % by volume and above (own figure).
bool isStrong(const Setup& setup);

/// Throws Problem(outOfRange), naming the field, when a number lies outside what is written above.
void requireSetup(const Setup& setup);

}  // namespace oddglass::planning
