#include "planning/setup.h"

#include "domain/problem.h"

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
  return setup.rounds > 1 ? Claim::table : Claim::people;
}

void requireSetup(const Setup& setup) {
  within("panel", setup.panel, 0, 500);
  within("makers", setup.makers, 0, 500);
  within("spares", setup.spares, 0, 500);
  within("rounds", setup.rounds, 1, 20);
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
