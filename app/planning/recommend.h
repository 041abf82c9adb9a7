#pragma once

#include "planning/amounts.h"
#include "planning/setup.h"

#include <array>
#include <optional>
#include <vector>

namespace oddglass::planning {

/// Why a method stands where it stands: what speaks for it, then what speaks against it.
enum class Because {
  natureUnknown,   ///< nobody has said what the difference would be, so the question is which cups belong together
  thingNamed,      ///< one thing is named: asking for it finds most
  findsMost,       ///< of the methods that need no named thing it finds the same difference most often
  fewerCups,       ///< less to drink, and less that stays from cup to cup
  knownDrink,      ///< a marked cup of a drink that people know helps them
  strong,          ///< at the strength of spirits more cups tire
  lingers,         ///< a taste that lingers is carried on into every further cup
  littleLiquid,    ///< there are not enough bottles for more cups
  ceiling,         ///< more cups would go beyond the ceiling of an evening
  oneVote,         ///< a preference is one vote a person, however often they taste
  needsAName,      ///< against: the thing has to be named first
  moreCups,        ///< against: more to drink
  findsLess,       ///< against: the same difference is found less often
  readiness,       ///< against: depends on how readily people say "different"
  tooFewVotes,     ///< against: fewer than six people cannot show a preference, whatever they answer
};

/// One method with its reasons, its chance and its price.
struct Choice {
  Method method = Method::triangle;
  std::vector<Because> because;     ///< never empty
  std::optional<int> needed;        ///< right answers, or votes of the larger side, the strongest of several comparisons; nothing where it is not one number
  double chance = 0.0;              ///< to show one and the same difference: the d' at which half of people can tell in a triangle. A preference: what 9 in 10 prefer
  Amounts amounts;                  ///< its price: cups, millilitres, grams
  bool enoughBottles = true;
};

/// One pair of three lots by itself.
struct PairChoice {
  std::array<int, 2> lots;          ///< two indices into the setup's lots, lower first
  Choice choice;
};

/// For three lots, such as a batch and two vintages of the reference: what each way of asking costs and finds.
struct TwoReferences {
  std::vector<PairChoice> pairs;    ///< one target alone: each of the three pairs, by the method of the three comparisons
  Choice oneTarget;                 ///< the dearest of these
  Choice three;                     ///< three short comparisons, each pair by itself
  std::vector<std::optional<int>> neededInTurn;  ///< of the three: strongest, second, third (Holm 1979)
  int trials = 0;                   ///< that count in each comparison
  bool oneIsBetter = true;          ///< fewer than ten people, own figure
};

struct Recommendation {
  std::vector<Choice> choices;      ///< the recommended one first; never empty. The brewer may take any of them
  std::optional<TwoReferences> references;  ///< only for three lots
  const Choice& best() const { return choices.front(); }
};

/// The methods that answer a question, ranked, for this panel, these lots and this thing (`setup.thingNamed`, `lingers`, strengths, free bottles,
/// ceiling); the setup's own method plays no part. For three lots each choice is for three comparisons.
/// Rules (*common practice*; sensory texts): a named thing, directional pair before 3-AFC; otherwise a tetrad, or a triangle and then a
/// duo-trio where a lot is strong (20 % and above, own figure), a taste lingers, or four cups are too much liquid. Problem outOfRange.
Recommendation recommend(Question question, const Setup& setup);

}  // namespace oddglass::planning
