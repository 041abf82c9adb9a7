#pragma once

#include "domain/plan.h"

#include <array>
#include <optional>

namespace oddglass {

/// What hands can hide. In every routine but `pourer` the program draws no key: hands hide which cup holds what, and it is read off afterwards.
/// Source of the routines: *common practice* among people who test at home; what is right in a flight of each method stands in domain/flight_form.h.

/// True where the program draws which code holds which lot.
constexpr bool isDrawn(Routine routine) { return routine == Routine::pourer; }

/// What hands pour for one flight, the marked cup apart.
struct HandPoured {
  std::array<int, 2> cups{};  ///< of lot 1 and of lot 2
  bool setsOneAside = false;  ///< one of them is set aside unseen, gets no code and is turned over last
  int total() const { return cups[0] + cups[1]; }
  bool operator==(const HandPoured&) const = default;
};

/// What is poured for a flight of a method; nothing where hands cannot hide it, and for a score sheet, which whole bottles hide. `expected`: the lot that a
/// 3-AFC shows once, 1 or 2. Triangle: two and two, one of the four set aside, so that each of the six orders comes up equally often.
std::optional<HandPoured> pouredByHand(Routine routine, Method method, std::optional<Slot> expected);

/// True where a routine may be chosen for a method; always so where the key is drawn.
bool mayHide(Routine routine, Method method);

/// Why hands cannot do a plan.
enum class NotByHand {
  method,        ///< this method needs a key that is drawn
  threeLots,     ///< more than one pair of lots
  eitherMarked,  ///< the marked cup is open, so it must be said which lot it holds
  stopsEarly,    ///< a plan that is looked at needs a key to look into
  duplicate,     ///< nothing can be poured twice unseen
  markedSheet,   ///< a marked cup beside whole bottles tells one of them
  onlyOne,       ///< alone is one person
  needsTwo,      ///< a couple is two people or more
  needsPourer,   ///< somebody has to throw the die and pour
  noPourer,      ///< nobody may stand by who knows
  spares,        ///< alone nobody comes late
  oneBottle,     ///< one bottle of each, or its second one could be told
  oneEvening     ///< labels are peeled once
};

/// What stands in the way of a draft's routine, for `tasters` people who taste; nothing where all is well. The number of bottles is not looked at.
std::optional<NotByHand> whyNotByHand(const Draft& draft, int tasters, bool hasPourer);

/// Who reads it off where nobody says otherwise: whoever tastes alone, whoever keeps the list, two people from two sheets.
ReadBy usualReader(Routine routine);

/// How many lettered bottles a plan has: one for each coded lot; 0 for every other routine.
int letteredBottles(const Plan& plan);

}  // namespace oddglass
