#pragma once

#include "stats/designs.h"

#include <optional>
#include <string_view>
#include <vector>

namespace oddglass::stats {

/// The cups of one taster's trial, from the first that is tasted to the last, as sides.
using CupOrder = std::vector<Side>;

/// How a trial of two sides is served. A is side 1 and B side 2.
enum class Serving {
  triangle,         ///< three coded cups, two alike and one odd
  duoTrio,          ///< a marked cup (the reference), then one coded cup of each side; the reference is A as often as B
  duoTrioAlwaysA,   ///< the same with A as the reference throughout
  duoTrioAlwaysB,   ///< the same with B
  tetrad,           ///< four coded cups, two of each side
  twoOutOfFive,     ///< five coded cups, two of one side and three of the other
  pair,             ///< one coded cup of each side (directional pair)
  threeAfcOfA,      ///< three coded cups, one A (the target) and two B
  threeAfcOfB,      ///< one B (the target) and two A
  sameDifferent,    ///< two coded cups, alike or not
  aNotA,            ///< one coded cup, A or B
  aNotALearned,     ///< a marked cup of A to learn it, then one coded cup, A or B
  aNotALearnedOfB,  ///< the same with B in the marked cup
  preference,       ///< one coded cup of each side
};

/// All orders of a serving. Over a whole block, in which each is used once, every side stands equally often in every coded cup
/// (3-AFC and two-out-of-five: every coded cup is as often the target, or one of the two).
struct Served {
  int marked = 0;                ///< how many cups at the beginning carry a mark in place of a code
  std::vector<CupOrder> orders;  ///< never empty, all of one length, none twice
};

/// The orders of a serving: triangle 6, duo-trio 4 (2 with a constant reference), tetrad 6, two-out-of-five 20, pair and
/// preference 2, 3-AFC 3, same-different 4 (AA BB AB BA), A-not-A 2.
/// Sources: ISO 4120, ISO 10399, ISO 5495 (all orders equally often); by counting for the others.
const Served& served(Serving serving);

/// The serving of a method by its name ("duo-trio"; "a-not-a" with a cup to learn it). `marked`: the side that stands in the marked cup, where it is
/// always the same one; A-not-A takes A when it is not given. `target`: the side that a 3-AFC shows once, A when not given. Other methods leave
/// both aside. BadInput for another name or side.
Serving servingNamed(std::string_view method, std::optional<Side> marked = std::nullopt, std::optional<Side> target = std::nullopt);

}  // namespace oddglass::stats
