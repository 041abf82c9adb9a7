#include "ui/setup_of.h"

namespace oddglass::ui {

planning::Setup setupOf(const session::DraftFacts& facts) {
  planning::Setup setup;
  setup.panel = static_cast<int>(facts.panel.size());
  setup.makers = static_cast<int>(facts.makers.size());
  setup.spares = facts.draft.spares;
  setup.rounds = facts.draft.rounds;
  setup.cupMl = facts.draft.cupMl;
  for (const session::DraftLot& lot : facts.lots) setup.lots.push_back({lot.lot.abvBp, lot.lot.bottleMl, lot.freeBottles});
  setup.alphaPm = facts.draft.alphaPm;
  setup.sought = facts.draft.sought;
  setup.limitPm = facts.draft.limitPm;
  setup.ceilingGrams = facts.rules.ceilingGrams;
  setup.country = facts.rules.country;
  return setup;
}

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
