#pragma once

#include "domain/series.h"
#include "planning/gap.h"

#include <optional>
#include <vector>

namespace oddglass::planning {

/// What an aging series would be: sittings at these ages, with so many bottles of each drink.
struct AgingSetup {
  std::vector<int> ages;           ///< days after bottling, rising, 1 to 24 of them; each 0 to 36500
  ControlKind control = ControlKind::twin;
  int bottlesEach = 1;             ///< of the batch, and of its control, for one sitting
  int reserve = 2;
  int bottles = 0;                 ///< there are of the batch, its twin included
  int people = 0;                  ///< that are likely to come and count
  bool operator==(const AgingSetup&) const = default;
};

/// The ages that are offered: 2 weeks, 1, 2, 3, 6 and 12 months (common practice).
const std::vector<int>& usualAges();

/// What a series would have to bear in mind.
enum class AgingWarning {
  tooFewBottles,   ///< more bottles than there are
  noControl,       ///< a changed drink and a changed day cannot be told apart
  referenceAges,   ///< the control is a bought drink, which ages too
  dotsOnly,        ///< fewer than three sittings: dots without a line
  noPeak,          ///< fewer than six sittings: no *highest when*
  fewPeople,       ///< fewer than three people: no interval
};

struct AgingOutlook {
  int batchBottles = 0;            ///< sittings times bottles, and the reserve
  int controlBottles = 0;          ///< of the twin or of the reference
  int needed = 0;                  ///< of this bottling: both for a twin
  std::vector<AgingWarning> warnings;
  std::optional<AgingSetup> cheaper;   ///< a plan that these bottles do for; nothing where they suffice or nothing smaller is worth it
  std::optional<double> smallestChange;  ///< on nine points of liking, between two sittings; nothing below 3 people, or where it would not fit on the scale
};

/// What it takes, and what it would find. The change between two sittings is that of batch minus control, which holds twice the variance of one gap
/// (differences of paired differences); without a control it is the same figure, of drink and day together. `spread` as for a score sheet.
/// The cheaper plan keeps the control and drops ages: four ages with a twin say more than six without.
/// Problem outOfRange ("ages", "bottles_each", "reserve", "people").
AgingOutlook agingOutlook(const AgingSetup& setup, const Spread& spread = {});

/// So many of these ages, the first and the last among them, the others spread evenly over the list.
std::vector<int> fewerAges(const std::vector<int>& ages, int count);

}  // namespace oddglass::planning
