#include "planning/amounts.h"

#include "planning/alcohol.h"
#include "planning/flight_cups.h"
#include "planning/pace.h"
#include "planning/sheet_cups.h"

#include <algorithm>

namespace oddglass::planning {

namespace {

// Rounds are spread as evenly as they go; the first evenings take what is left over.
int roundsOn(const Setup& setup, int evening) { return setup.rounds / setup.evenings + (evening < setup.rounds % setup.evenings); }

int cupsOfRound(const Setup& setup, int lot) {
  if (setup.sheet) return worstSheetCups(setup, lot);
  int cups = 0;
  for (const auto& [lower, higher] : comparedLots(setup)) {
    if (lower == lot) cups += worstCups(setup, 1, setup.places());
    if (higher == lot) cups += worstCups(setup, 2, setup.places());
  }
  return cups;
}

LotAmount amountOf(const Setup& setup, int lot) {
  const int cups = cupsOfRound(setup, lot), first = setup.sheet ? warmUpCups(setup, lot) : 0;
  LotAmount amount;
  amount.cups = cups * setup.rounds + first * setup.evenings;
  amount.ml = amount.cups * setup.cupMl;
  const SetupLot& from = setup.lots[static_cast<std::size_t>(lot)];
  if (from.bottleMl <= 0) return amount;
  int bottles = 0;
  for (int evening = 0; evening < setup.evenings; ++evening) bottles += ((cups * roundsOn(setup, evening) + first) * setup.cupMl + from.bottleMl - 1) / from.bottleMl;
  amount.bottles = bottles;
  amount.enough = bottles <= from.freeBottles;
  return amount;
}

int codedSeconds(const Setup& setup) { return setup.sheet ? codedCups(setup) * (tasteSeconds + setup.sheet->pauseSeconds + questionSeconds * setup.sheet->questions) : 0; }

// From sitting down to the last lock, rounded up to 5. A forced choice is passed round; score sheets are filled in side by side.
int minutesOf(const Setup& setup, int cupsAnEvening) {
  const int passedRound = (pourSeconds + tasteSeconds) * cupsAnEvening * setup.places();
  const int sideBySide = pourSeconds * cupsAnEvening * setup.places() + setup.roundsAnEvening() * codedSeconds(setup);
  return (settleSeconds + (setup.sheet ? sideBySide : passedRound) + 299) / 300 * 5;
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
  const int inFlight = setup.sheet ? cupsOfSheet(setup) : cupsPoured(setup), inRound = inFlight * setup.comparisons();
  const bool hasWarmUp = setup.sheet && std::ranges::any_of(setup.lots, [](const SetupLot& lot) { return lot.role == LotRole::warmUp; });
  Amounts amounts;
  amounts.cupsPerPerson = inRound * setup.rounds + (hasWarmUp ? setup.evenings : 0);
  amounts.mlPerPerson = amounts.cupsPerPerson * setup.cupMl;
  amounts.cups = amounts.cupsPerPerson * setup.places();
  for (std::size_t i = 0; i < setup.lots.size(); ++i) amounts.lots.push_back(amountOf(setup, static_cast<int>(i)));
  amounts.evenings = setup.evenings;
  amounts.cupsAnEvening = inRound * setup.roundsAnEvening() + (hasWarmUp ? 1 : 0);
  amounts.mlAnEvening = amounts.cupsAnEvening * setup.cupMl;
  amounts.wave = waveOf(setup, inFlight);
  amounts.minutes = minutesOf(setup, amounts.cupsAnEvening);
  if (setup.sheet) {
    if (const auto sheet = gramsOfSheet(setup, setup.cupMl)) amounts.grams = sheet->flight * setup.roundsAnEvening() + sheet->warmUp;
  } else if (const auto round = gramsOfRound(setup, setup.cupMl)) {
    amounts.grams = *round * setup.roundsAnEvening();
  }
  amounts.aboveCeiling = amounts.grams && *amounts.grams > setup.ceilingGrams;
  amounts.drinkGrams = standardDrinkGrams(setup.country);
  if (amounts.grams && amounts.drinkGrams) amounts.drinks = *amounts.grams / *amounts.drinkGrams;
  return amounts;
}

}  // namespace oddglass::planning
