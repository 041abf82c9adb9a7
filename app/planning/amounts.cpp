#include "planning/amounts.h"

#include "domain/flight_form.h"
#include "planning/alcohol.h"
#include "planning/flight_cups.h"

#include <algorithm>

namespace oddglass::planning {

namespace {

int roundedUpMinutes(int cups) {
  const int seconds = 600 + 50 * cups;
  return (seconds + 299) / 300 * 5;
}

// Rounds are spread as evenly as they go; the first evenings take what is left over.
int roundsOn(const Setup& setup, int evening) { return setup.rounds / setup.evenings + (evening < setup.rounds % setup.evenings); }

LotAmount amountOf(const Setup& setup, int lot) {
  int cups = 0;
  for (const auto& [lower, higher] : comparedLots(setup)) {
    if (lower == lot) cups += worstCups(setup, 1, setup.places());
    if (higher == lot) cups += worstCups(setup, 2, setup.places());
  }
  LotAmount amount;
  amount.cups = cups * setup.rounds;
  amount.ml = amount.cups * setup.cupMl;
  const SetupLot& from = setup.lots[static_cast<std::size_t>(lot)];
  if (from.bottleMl <= 0) return amount;
  int bottles = 0;
  for (int evening = 0; evening < setup.evenings; ++evening) bottles += (cups * roundsOn(setup, evening) * setup.cupMl + from.bottleMl - 1) / from.bottleMl;
  amount.bottles = bottles;
  amount.enough = bottles <= from.freeBottles;
  return amount;
}

std::optional<WaveAmount> waveOf(const Setup& setup, int cupsInFlight) {
  if (setup.wave <= 0 || setup.wave >= setup.places()) return std::nullopt;
  WaveAmount wave;
  wave.waves = (setup.places() + setup.wave - 1) / setup.wave;
  wave.places = setup.wave;
  wave.cups = setup.wave * cupsInFlight;
  wave.ml = wave.cups * setup.cupMl;
  return wave;
}

}  // namespace

Amounts amountsOf(const Setup& setup) {
  requireSetup(setup);
  const int inFlight = formOf(setup.method).cups, inRound = inFlight * setup.comparisons();
  Amounts amounts;
  amounts.cupsPerPerson = inRound * setup.rounds;
  amounts.mlPerPerson = amounts.cupsPerPerson * setup.cupMl;
  amounts.cups = amounts.cupsPerPerson * setup.places();
  for (std::size_t i = 0; i < setup.lots.size(); ++i) amounts.lots.push_back(amountOf(setup, static_cast<int>(i)));
  amounts.evenings = setup.evenings;
  amounts.cupsAnEvening = inRound * setup.roundsAnEvening();
  amounts.mlAnEvening = amounts.cupsAnEvening * setup.cupMl;
  amounts.wave = waveOf(setup, inFlight);
  amounts.minutes = roundedUpMinutes(amounts.cupsAnEvening * setup.places());
  if (const auto round = gramsOfRound(setup, setup.cupMl)) {
    amounts.grams = *round * setup.roundsAnEvening();
    amounts.aboveCeiling = *amounts.grams > setup.ceilingGrams;
  }
  amounts.drinkGrams = standardDrinkGrams(setup.country);
  if (amounts.grams && amounts.drinkGrams) amounts.drinks = *amounts.grams / *amounts.drinkGrams;
  return amounts;
}

}  // namespace oddglass::planning
