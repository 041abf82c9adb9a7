#pragma once

#include "demo/demo_shelf.h"
#include "domain/series.h"

/// Two years of one recipe, invented: three batches of a hedge mead, a bought one of two vintages, nine sittings, six friends of different kindness and the maker.
/// Everything that is said comes from the model below, so what is true is known.
///
/// A score on a line of 0 to 100 is the drink's true value at that age, plus the friend's own habit with that word (sd 8), what they make of that one drink
/// (sd 3), the day (sd 4, one for all cups) and chance (sd 6), rounded. Liking is the true value plus the friend's kindness, the day (sd 0.3) and chance (sd 0.7),
/// rounded and kept within 1 to 9. Numbers are drawn by Box and Muller's way from the generator of std::mt19937 with seed 20240803.
namespace two_years {

inline const std::vector<const char*> friends{"Ilse", "Bram", "Tove", "Nia", "Ruan", "Ebba"};
inline constexpr double kindness[]{0.9, 0.6, 0.2, 0.0, -0.4, -0.8};

// True values, points of the line.
inline constexpr double cardboardEachMonth = 1.6;      ///< of batch 1, above that of its cold twin
inline constexpr double cardboardOfTwin = 0.4;         ///< the cold twin's own, each month
inline constexpr double honeyEachMonth = 0.0;
inline constexpr double sourOfNewYeast = 15.0;         ///< batch 2 minus batch 1
inline constexpr double honeyOfNewYeast = -12.0;
inline constexpr double ofOtherWater = 0.0;            ///< batch 3 minus batch 2, in everything
inline constexpr double honeyOfOlderVintage = 10.0;    ///< vintage 2022 minus vintage 2023
// Points of nine.
inline constexpr double leanOfMaker = 1.8;             ///< added to the maker's liking of every own drink

struct Years {
  oddglass::LotId first, firstCold, second, third, younger, older;
  oddglass::SeriesId series;
  std::vector<oddglass::SessionId> sessions;           ///< nine, by their day
};

/// Plays all of it in the demo's store.
Years play(DemoShelf& demo);

}  // namespace two_years
