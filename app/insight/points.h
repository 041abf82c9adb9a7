#pragma once

#include "insight/sheets.h"
#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::insight {

/// People below which an average has no range, and a gap no verdict (own rule).
constexpr int fewestForARange = 3;

/// Where the panel puts one lot on one question's scale.
struct LotMean {
  Slot lot;
  int people = 0;
  std::optional<double> mean;        ///< over people, each one's cups and rounds averaged first; nothing for a single person
  std::optional<double> low, high;   ///< at level 1 - alpha over people; from three people on
  std::vector<double> values;        ///< one for each person, rising: nobody is named
  std::optional<stats::Reason> why;  ///< oneTaster, fewTasters, noSpread, emptyCell
};

/// What a lot is in one thing against the reference.
enum class GapVerdict { less, more, within, cannotTell };

/// A lot minus the reference in one thing, by the people who had both.
struct LotGap {
  Slot lot;
  int people = 0;
  std::optional<double> difference;
  std::optional<double> low, high;             ///< at level 1 - alpha
  std::optional<double> limitLow, limitHigh;   ///< at level 1 - 2 alpha: inside the limit just where it is within it
  std::optional<double> pDifference, pWithin;  ///< adjusted over the questions looked at together
  GapVerdict verdict = GapVerdict::cannotTell;
  bool weaker = false;                         ///< all answers say more than those who had heard nothing; the weaker is printed
  bool lacks = false;                          ///< less, and more than half of those asked said too little
  int saidTooLittle = 0, askedRight = 0;       ///< just-about-right answers to the same word; 0 of 0 where it was not asked
  std::optional<stats::Reason> why;
};

/// One question whose answers are points on a scale, over the whole table.
struct PointsLine {
  Item item;
  ItemKind kind = ItemKind::liking;
  Part part = Part::main;
  std::string word;
  int low = 0, high = 0;                      ///< ends of the scale
  std::optional<int> limit;
  bool isMain = false;
  std::vector<LotMean> lots;                  ///< in the order of the plan, those that were coded
  std::vector<LotGap> gaps;                   ///< every lot but the target reference; empty without one
  std::optional<double> rangeLow, rangeHigh;  ///< the reference's own range: its other vintages minus the target, 0 among them
  int twice = 0;                              ///< pairs of cups of the same drink
  std::optional<double> moved;                ///< mean distance between the two cups of such a pair: read smaller gaps as nothing
};

/// The lot that the others are held against: the marked one, else the first with that role; nothing without one.
std::optional<Slot> targetOf(const Plan& plan);

/// The coded lots, in the order of the plan.
std::vector<Slot> codedLots(const Plan& plan);

/// All questions with points, in the order of the sheet, from one group's sheets. The gaps of the main questions are held together (Holm), those of
/// all others together (Benjamini and Hochberg).
/// Source: stats/profile; means by Student's t over people.
template <class Flight>
std::vector<PointsLine> pointsOf(const Plan& plan, const Sheets<Flight>& sheets);

/// Prints the weaker of two readings of the same questions: a verdict that does not hold among those who had heard nothing becomes *cannot tell yet*.
void weaken(std::vector<PointsLine>& all, const std::vector<PointsLine>& unheard);

}  // namespace oddglass::insight
