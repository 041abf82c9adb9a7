#include "planning/amounts.h"

#include "planning/alcohol.h"

#include <algorithm>

namespace oddglass::planning {

namespace {

constexpr int cupsInFlight = 3;

int minutesFor(const Setup& setup, int cups) {
  const int flights = setup.places() * setup.rounds;
  const int seconds = 600 + 20 * cups + 90 * flights;
  return (seconds + 299) / 300 * 5;
}

}  // namespace

int worstCups(int places) {
  const int blocks = places / 6, left = places % 6;
  return blocks * 9 + left + std::min(left, 3);
}

std::optional<double> gramsPerRound(const Setup& setup, int cupMl) {
  if (setup.lots.size() != 2 || !setup.lots[0].abvBp || !setup.lots[1].abvBp) return std::nullopt;
  const auto [weak, strong] = std::minmax(*setup.lots[0].abvBp, *setup.lots[1].abvBp);
  return ethanolGrams(2.0 * cupMl, strong / 100.0) + ethanolGrams(cupMl, weak / 100.0);
}

Amounts amountsOf(const Setup& setup) {
  requireSetup(setup);
  Amounts amounts;
  amounts.cupsPerPerson = cupsInFlight * setup.rounds;
  amounts.mlPerPerson = amounts.cupsPerPerson * setup.cupMl;
  amounts.cups = amounts.cupsPerPerson * setup.places();
  for (const auto& lot : setup.lots) {
    LotAmount amount;
    amount.cups = worstCups(setup.places()) * setup.rounds;
    amount.ml = amount.cups * setup.cupMl;
    if (lot.bottleMl > 0) {
      amount.bottles = (amount.ml + lot.bottleMl - 1) / lot.bottleMl;
      amount.enough = *amount.bottles <= lot.freeBottles;
    }
    amounts.lots.push_back(amount);
  }
  amounts.minutes = minutesFor(setup, amounts.cups);
  if (const auto round = gramsPerRound(setup, setup.cupMl)) {
    amounts.grams = *round * setup.rounds;
    amounts.aboveCeiling = *amounts.grams > setup.ceilingGrams;
  }
  amounts.drinkGrams = standardDrinkGrams(setup.country);
  if (amounts.grams && amounts.drinkGrams) amounts.drinks = *amounts.grams / *amounts.drinkGrams;
  return amounts;
}

}  // namespace oddglass::planning
