#pragma once

#include "insight/sheets.h"
#include "stats/reason.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::insight {

/// What is counted on a score sheet, lot by lot. People are counted by what they said when they first had a lot.

/// A question of just about right.
struct RightSide {
  int people = 0;
  std::optional<double> drop;       ///< how much less this side likes it than those who said just about right
  std::optional<double> low, high;  ///< only where it may be judged
  std::optional<double> pValue;     ///< by dealing the labels
  std::optional<double> penalty;    ///< share times drop
  std::optional<stats::Reason> why;
};
struct RightLot {
  Slot lot;
  int people = 0, right = 0;
  RightSide little, much;
};
struct RightLine {
  Item item;
  std::string word;
  std::vector<RightLot> lots;
};

/// Words that apply, over the lots.
struct TickedLine {
  Item item;
  std::string word;
  std::vector<int> ticked;          ///< for each coded lot, how many ticked it
  std::vector<int> people;          ///< for each coded lot, how many were asked
  std::optional<double> pValue;     ///< that people tick it equally often for all lots, adjusted over the words (Holm); exact where it can be
  std::optional<stats::Reason> why;
};

/// One order of all lots.
struct RankedLine {
  Item item;
  std::string word;                 ///< empty: by liking
  std::vector<std::vector<int>> given;  ///< for each coded lot, how often each rank was given, from the least
  std::vector<double> sums;         ///< rank sums over people, a doubled lot's two ranks averaged
  int people = 0;
  std::optional<double> pValue;     ///< Friedman's, exact or drawn
  std::optional<double> agreement;  ///< Kendall's W
  std::optional<stats::Reason> why;
};

/// How often each answer was given: behaviour (pour it away, finish it, ask for more), or points split (mean points).
struct BehaviourLine {
  Item item;
  std::vector<std::vector<int>> counts;  ///< for each coded lot: 1, 2, 3
};
struct SplitLine {
  Item item;
  std::vector<double> points;       ///< for each coded lot, mean over people; a doubled lot's cups together
  int people = 0;
};

/// Words that somebody wrote about the lots, most often named first.
struct WordCount {
  std::string word;                 ///< as it was written; where two names of one tasting word were, its own
  std::vector<int> people;          ///< for each coded lot
};
struct SaidLine {
  Item item;
  ItemKind kind = ItemKind::worst;
  std::vector<int> asked;           ///< for each coded lot, people who answered
  std::vector<int> none;            ///< of them, looked and found none
  std::vector<WordCount> words;
};

/// How sure people were of a whole sheet, over all sheets: a guess, fairly sure, sure.
struct SheetSureLine {
  Item item;
  std::vector<int> counts;
};

/// All that is counted, each kind in the order of the sheet.
struct Counts {
  std::vector<RightLine> right;
  std::vector<TickedLine> ticked;
  std::vector<RankedLine> ranked;
  std::vector<BehaviourLine> behaviour;
  std::vector<SplitLine> split;
  std::vector<SaidLine> said;
  std::vector<SheetSureLine> sure;
};

/// From one group's sheets; the columns are the coded lots in the order of the plan. Sources: stats/right, stats/checks, stats/ranks. Words are
/// counted as names are compared: without case, in one Unicode form; names of one of the program's own tasting words count together.
template <class Flight>
Counts countsOf(const Plan& plan, const Sheets<Flight>& sheets);

}  // namespace oddglass::insight
