#pragma once

#include "domain/numbers.h"

namespace oddglass {

/// How many rounds an evening has, from 1 on: they are spread as evenly as they go, and the first evenings take what is left over.
constexpr int roundsOn(int evening, int rounds, int evenings) { return rounds / evenings + (evening <= rounds % evenings ? 1 : 0); }

/// The evening on which a round is tasted, from 1 on.
constexpr int eveningOf(Round round, int rounds, int evenings) {
  int evening = 1;
  for (int last = roundsOn(1, rounds, evenings); evening < evenings && round.value > last; last += roundsOn(evening, rounds, evenings)) ++evening;
  return evening;
}

/// The wave in which a place is served, from 1 on; 1 where all are served at once.
constexpr int waveOf(Place place, int wave) { return wave > 0 ? (place.value - 1) / wave + 1 : 1; }

}  // namespace oddglass
