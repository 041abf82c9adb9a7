#include "planning/setup_of.h"

#include <algorithm>

namespace oddglass::planning {
namespace {

SheetSetup sheetSetupOf(const Plan& plan) {
  SheetSetup sheet;
  sheet.hasDuplicate = plan.sheet->hasDuplicate;
  sheet.pauseSeconds = plan.sheet->pauseSeconds;
  sheet.questions = std::max(1, static_cast<int>(std::ranges::count_if(plan.items, &SheetItem::perCup)));
  if (!plan.sheet->orders.empty()) sheet.cupsAtOnce = std::max(2, static_cast<int>(plan.sheet->orders.front().size()));
  return sheet;
}

}  // namespace

Setup setupOf(const Plan& plan) {
  Setup setup;
  setup.panel = plan.panelPlanned;
  setup.makers = plan.makersPlanned;
  setup.spares = plan.spares;
  setup.method = plan.method;
  setup.expected = plan.expected;
  setup.marked = plan.marked;
  setup.mayHaveNone = plan.mayHaveNone;
  setup.stopping = plan.stopping;
  setup.evenings = plan.evenings;
  setup.wave = plan.wave;
  setup.rounds = plan.roundsEach();
  if (plan.sheet) setup.sheet = sheetSetupOf(plan);
  setup.cupMl = plan.cupMl;
  for (const PlannedLot& lot : plan.lots) setup.lots.push_back({lot.abvBp, lot.bottleMl, 0, lot.role});
  setup.alphaPm = plan.alphaPm;
  setup.sought = plan.sought;
  setup.limitPm = plan.limitPm;
  setup.gammaPm = plan.gammaPm;
  setup.ceilingGrams = plan.ceilingGrams;
  setup.country = plan.country;
  return setup;
}

}  // namespace oddglass::planning
