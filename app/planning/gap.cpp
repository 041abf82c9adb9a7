#include "planning/gap.h"

#include "domain/item_kinds.h"
#include "planning/sheet_cups.h"
#include "stats/scores/power.h"

#include <algorithm>
#include <cmath>

namespace oddglass::planning {
namespace {

// People who get both cups of a pair: all of them, or in incomplete blocks k (k - 1) of t (t - 1).
int peopleOfPair(const Setup& setup) {
  const double samples = samplesOf(setup), cups = codedCups(setup);
  if (samples <= cups) return setup.counting();
  return static_cast<int>(std::lround(setup.counting() * cups * (cups - 1) / (samples * (samples - 1))));
}

}  // namespace

SheetOutlook sheetOutlook(const Setup& setup, const std::vector<SheetItem>& items, const Spread& spread) {
  requireSetup(setup);
  SheetOutlook outlook;
  outlook.people = setup.counting();
  outlook.samples = samplesOf(setup);
  outlook.cups = codedCups(setup);
  outlook.isComplete = outlook.samples <= outlook.cups;
  outlook.spread = spread;
  outlook.dotsOnly = outlook.people <= 1;
  outlook.noIntervals = outlook.people < 3;
  outlook.willBeGuessed = setup.panel > 0 && setup.panel < 4;
  outlook.noReference = std::ranges::none_of(setup.lots, [](const SetupLot& lot) { return lot.role == LotRole::reference; });
  // Six tasters earned it 2 times in 100 where it was true (simulated; see tests/planning); twelve are taken as the least that may.
  outlook.withinUnlikely = outlook.people < 12 && std::ranges::any_of(items, [](const SheetItem& item) { return item.limit.has_value(); });
  const auto isMain = [](const SheetItem& item) { return item.isMain && hasPoints(item.kind); };
  const int questions = std::max(1, static_cast<int>(std::ranges::count_if(items, isMain)));
  const int tasters = peopleOfPair(setup);
  for (const SheetItem& item : items) {
    if (!hasPoints(item.kind) || std::ranges::find(outlook.gaps, item.kind, &Gap::kind) != outlook.gaps.end()) continue;
    const AnswerForm form = answerForm(item.kind);
    Gap gap{item.kind, static_cast<double>(*form.high - *form.low), std::nullopt, questions};
    if (tasters >= 3) {
      const stats::ScorePlan plan{tasters, 2, setup.rounds, spread.interaction * gap.scale, spread.repeat * gap.scale};
      gap.smallest = stats::scorePower(plan, 0.0, setup.alpha() / questions).smallestDifference;
      if (gap.smallest && *gap.smallest > gap.scale) gap.smallest.reset();
    }
    outlook.gaps.push_back(gap);
  }
  return outlook;
}

}  // namespace oddglass::planning
