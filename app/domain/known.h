#pragma once

#include "domain/revealed.h"

#include <map>
#include <vector>

namespace oddglass {

/// A revealed session about a known difference, as far as findings about people need it. Of the session there is the plan without its cups, the flights
/// that were answered, what was said aloud and set aside. No names and no words but the one that was there to be noticed.
struct KnownDifference {
  RevealedSession session;
  std::map<Place, TasterId> who;  ///< those who sat by name or nickname, makers too; whoever asked to be only in the sums is not among them
};

/// By the day of the reveal. Sessions whose seal was broken or does not hold are not among them.
using KnownDifferences = std::vector<KnownDifference>;

}  // namespace oddglass
