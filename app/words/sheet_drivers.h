#pragma once

#include "insight/drivers.h"
#include "words/came_out.h"

namespace oddglass::words {

/// Which words go with liking, as a hint for the maker's page; where there is no telling, the reason. Empty where the sheet asks no liking or no words.
OutSection driversSection(const Voice& voice, const insight::Drivers& drivers, int alphaPm);

}  // namespace oddglass::words
