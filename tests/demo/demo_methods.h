#pragma once

#include "demo/demo_shelf.h"

/// An evening for every other method and for what may happen at a table, played through the use cases of the program, with one sentence on what
/// it shows. The pourer's sheet, opened once as on any evening, tells which cups are right; the script says who finds them.
struct PlayedEvening {
  oddglass::SessionId session;
  const char* shows;
};

PlayedEvening playTetrad(DemoShelf& demo);            ///< two hop times: not shown
PlayedEvening playPair(DemoShelf& demo);              ///< is mine sweeter?: shown
PlayedEvening playPreference(DemoShelf& demo);        ///< with answers of no preference
PlayedEvening playAlike(DemoShelf& demo);             ///< alike within a limit
PlayedEvening playSequential(DemoShelf& demo);        ///< stopped after the second round
PlayedEvening playThreeComparisons(DemoShelf& demo);  ///< a batch and two vintages of the bought one
PlayedEvening playWrongPour(DemoShelf& demo);         ///< one cup was poured wrong
PlayedEvening playKnownDifference(DemoShelf& demo);   ///< a warm store that is known beforehand; who notices it?
PlayedEvening playErased(DemoShelf& demo);            ///< somebody asked to be forgotten
