#pragma once

#include "demo/demo_methods.h"

/// Evenings with score sheets, each with one sentence on what it shows.

PlayedEvening playMarkedCup(DemoShelf& demo);     ///< two vintages of the bought mead, one marked; how far is the batch?
PlayedEvening playKindFriends(DemoShelf& demo);   ///< kind friends and a frank one
PlayedEvening playMovedTwice(DemoShelf& demo);    ///< the same drink twice, and far apart
PlayedEvening playTwoWords(DemoShelf& demo);      ///< a batch that really differs in two words
