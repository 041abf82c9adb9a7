#include "ui/setup_of.h"

namespace oddglass::ui {

planning::Setup setupOf(const Plan& plan) {
  planning::Setup setup;
  setup.panel = plan.panelPlanned;
  setup.makers = plan.makersPlanned;
  setup.spares = plan.spares;
  setup.rounds = plan.rounds;
  setup.cupMl = plan.cupMl;
  for (const PlannedLot& lot : plan.lots) setup.lots.push_back({lot.abvBp, lot.bottleMl, 0});
  setup.alphaPm = plan.alphaPm;
  setup.sought = plan.sought;
  setup.limitPm = plan.limitPm;
  setup.gammaPm = plan.gammaPm;
  setup.ceilingGrams = plan.ceilingGrams;
  setup.country = plan.country;
  return setup;
}

}  // namespace oddglass::ui
