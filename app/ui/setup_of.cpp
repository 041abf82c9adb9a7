#include "ui/setup_of.h"

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
  setup.rounds = plan.roundsEach();
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
