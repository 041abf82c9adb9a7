#pragma once

namespace oddglass::blinding {

/// Throws Problem(outOfRange), naming the argument and both ends, unless low <= value <= high.
void needWithin(int value, int low, int high, const char* argument);

}  // namespace oddglass::blinding
