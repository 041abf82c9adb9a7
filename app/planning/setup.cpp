#include "planning/setup.h"

#include "domain/problem.h"

#include <algorithm>

namespace oddglass::planning {

namespace {

void within(const char* argument, int value, int low, int high) {
  if (value < low || value > high)
    throw Problem(Trouble::outOfRange, argument,
                  {{"text", std::to_string(value)}, {"low", std::to_string(low)}, {"high", std::to_string(high)}});
}

}  // namespace

Claim claimOf(const Setup& setup) {
  if (setup.panel == 0) return Claim::me;
  return setup.rounds > 1 && !setup.sheet ? Claim::table : Claim::people;
}

bool isStrong(const Setup& setup) {
  return std::ranges::any_of(setup.lots, [](const SetupLot& lot) { return lot.abvBp.value_or(0) >= 2000; });
}

void requireSetup(const Setup& setup) {
  within("panel", setup.panel, 0, 500);
  within("makers", setup.makers, 0, 500);
  within("spares", setup.spares, 0, 500);
  within("rounds", setup.rounds, 1, 20);
  within("evenings", setup.evenings, 1, 6);
  within("wave", setup.wave, 0, 999);
  if (setup.expected) within("expected", setup.expected->value, 1, 2);
  if (setup.marked) within("marked", setup.marked->value, 1, setup.sheet ? 40 : 2);
  if (setup.stopping) {
    within("share_pm", setup.stopping->sharePm, 1, 1000);
    within("beta_pm", setup.stopping->betaPm, 10, 500);
  }
  if (setup.sheet) {
    within("cups_at_once", setup.sheet->cupsAtOnce, 2, 12);
    within("pause_s", setup.sheet->pauseSeconds, 0, 600);
  }
  within("cup_ml", setup.cupMl, 5, 200);
  within("alpha_pm", setup.alphaPm, 1, 200);
  within("gamma_pm", setup.gammaPm, 0, 1000);
  within("ceiling_grams", setup.ceilingGrams, 0, 1000);
  if (setup.limitPm) within("limit_pm", *setup.limitPm, 1, 999);
  for (const auto& lot : setup.lots) {
    if (lot.abvBp) within("abv", *lot.abvBp, 0, 9600);
    within("bottle_ml", lot.bottleMl, 0, 100'000);
  }
}

}  // namespace oddglass::planning
