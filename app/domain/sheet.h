#pragma once

#include "domain/numbers.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass {

/// What a question of a sheet asks for. What an answer may be stands in `answerForm`.
enum class ItemKind {
  choose,      ///< a cup, by its code (two such items where two cups are picked)
  same,        ///< 1 the same, 2 not
  prefer,      ///< a cup, by its code, or 0 for no preference
  sureness, clue,
  words,       ///< free words
  liking,      ///< nine points, 1 dislike extremely to 9 like extremely (Peryam and Pilgrim 1957)
  line,        ///< a place on a line between two named ends, 0 to 100
  magnitude,   ///< a place on a labelled magnitude line, in 1/1000 of its length (Green et al. 1993)
  justRight,   ///< 1 much too little, 3 just about right, 5 much too much
  check,       ///< a word that applies (1) or does not (0)
  rank,        ///< 1 the least to as many as there are cups, each once
  split,       ///< points out of five, given to the cups of a flight
  behaviour,   ///< 1 pour it away, 2 finish it, 3 ask for more
  worst,       ///< the worst thing about a cup, in words; 0: "I looked and found none"
  changeOne,   ///< the one thing to change, in words
  distance,    ///< how far from the marked cup: 0 no different to 10 as far as can be
};

/// When a question is asked. Look and smell are done for all cups before the first one is tasted.
enum class Part {
  look,   ///< before anything is smelled or tasted
  smell,  ///< by smell alone
  main,
  late,   ///< again, 45 s after swallowing, before the next cup
  last,   ///< about all cups together: ranks, points to split, words about the flight
};

/// What a lot is in a plan.
enum class LotRole {
  compared,
  reference,  ///< what the others are held against; several are the reference's own range
  control,    ///< flawed or thinned on purpose, to see how sharp the table is
  warmUp,     ///< one open cup before the first flight; never coded, never scored
};

/// One question of the sheet.
struct SheetItem {
  Item item;
  ItemKind kind = ItemKind::choose;
  bool required = true;
  std::optional<int> low, high;
  bool perCup = false;         ///< answered for each coded cup; otherwise once for the flight
  Part part = Part::main;
  std::string word = {};       ///< what is asked about: a tasting word, up to 60 letters; empty where the kind says it all
  std::optional<int> limit{};  ///< a gap to the reference that is too small to matter, in the question's own points; decided before
  bool isMain = false;         ///< one of the questions that the plan is about; all others are looked at afterwards
  bool operator==(const SheetItem&) const = default;
};

/// What an answer to a question may be.
struct AnswerForm {
  bool isText = false;        ///< in words; `worst` may be 0 instead
  bool isCode = false;        ///< the code of a cup
  std::optional<int> low{}, high{};  ///< of a number; a rank ends at the number of cups
  bool isScored = false;      ///< belongs on a score sheet and is answered for each cup
  bool needsWord = false;     ///< says nothing without a word
};
AnswerForm answerForm(ItemKind kind);

/// What only a score sheet has, while the plan is being made.
struct SheetDraft {
  std::vector<SheetItem> items;     ///< in the order of the sheet; numbered anew at the seal
  std::vector<LotRole> roles;       ///< of the lots, in their order; left out at the end: compared
  bool hasDuplicate = false;        ///< one lot is poured twice under two codes; which one is drawn
  int cupsAtOnce = 7;               ///< most coded cups in a flight; more samples are shared out in incomplete blocks; 2 to 12
  int pauseSeconds = 30;            ///< wait between two cups, 0 to 600
  std::string cleanser = {};        ///< the same for everybody, up to 60 letters
  bool operator==(const SheetDraft&) const = default;
};

/// What only a score sheet has, as it was sealed.
struct SheetPlan {
  /// The orders that places are dealt, from the first coded cup on, as samples numbered from 1: the lots that are coded, in the plan's order,
  /// and one more where a lot is doubled. Which sample is which lot is drawn.
  std::vector<std::vector<int>> orders;
  bool hasDuplicate = false;
  int pauseSeconds = 30;
  std::string cleanser = {};
  bool operator==(const SheetPlan&) const = default;
};

/// True when a sheet can be asked: 1 to 200 questions, each of a kind that is scored or is in words or is sureness, with a word where it needs
/// one, none twice, in its range; a distance only beside a marked cup, ranks and points to split only in the last part.
/// Otherwise the number of the first question that cannot (from 1), or 0 for the sheet as a whole.
std::optional<int> firstImpossible(const std::vector<SheetItem>& items, bool hasMarked);

/// Fills in number, range and whether each cup is asked about, for the questions of a sheet in their order.
std::vector<SheetItem> numbered(std::vector<SheetItem> items, int cupsInFlight);

}  // namespace oddglass
