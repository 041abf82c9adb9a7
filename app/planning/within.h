#pragma once

namespace oddglass::planning {

/// Throws Problem(outOfRange), naming the argument and both ends, unless low <= value <= high; also for what is not a number.
void requireWithin(const char* argument, double value, double low, double high);

}  // namespace oddglass::planning
