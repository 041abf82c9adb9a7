#include "ui/setup_of.h"

#include <algorithm>

namespace oddglass::ui {

planning::Setup setupOf(const Plan& plan) {
  planning::Setup setup;
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
  setup.rounds = plan.sheet ? plan.rounds : plan.roundsEach();
  setup.cupMl = plan.cupMl;
  for (const PlannedLot& lot : plan.lots) setup.lots.push_back({lot.abvBp, lot.bottleMl, 0, lot.role});
  if (plan.sheet) {
    const auto perCup = std::ranges::count_if(plan.items, [](const SheetItem& item) { return answerForm(item.kind).isScored; });
    const int cups = plan.sheet->orders.empty() ? 2 : static_cast<int>(plan.sheet->orders.front().size());
    // A single cup is served as it is; the setting begins at two.
    setup.sheet = planning::SheetSetup{plan.sheet->hasDuplicate, std::max(2, cups), static_cast<int>(perCup), plan.sheet->pauseSeconds};
  }
  setup.alphaPm = plan.alphaPm;
  setup.sought = plan.sought;
  setup.limitPm = plan.limitPm;
  setup.gammaPm = plan.gammaPm;
  setup.ceilingGrams = plan.ceilingGrams;
  setup.country = plan.country;
  return setup;
}

}  // namespace oddglass::ui
