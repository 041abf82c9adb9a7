#pragma once

#include "demo/demo_methods.h"

/// Evenings on which hands hid the key, played through the use cases of the program: what stood under the cups is read off afterwards.
PlayedEvening playAlone(DemoShelf& demo);    ///< five rounds of a triangle, one of which cannot be read
PlayedEvening playCouple(DemoShelf& demo);   ///< two people, two sheets, three rounds
