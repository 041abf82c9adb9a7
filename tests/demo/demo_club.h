#pragma once

#include "demo/demo_methods.h"

/// A club of 24 in four waves, with two makers; and an evening on which everything goes wrong that can. Played on a shelf of their own, so that no other file changes
/// with them.
PlayedEvening playClub(DemoShelf& demo);
PlayedEvening playMishaps(DemoShelf& demo);
