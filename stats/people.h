#pragma once

#include "stats/beta_mixture.h"
#include "stats/replicated.h"

#include <vector>

namespace oddglass::stats {

/// People with the same count of the same number of rounds, taken together.
struct PeopleAlike {
  CountMixture mixture;
  int heads;
};
using People = std::vector<PeopleAlike>;

/// Throws BadInput unless 0 <= trials <= 200, the most rounds of one person.
void requireRounds(int trials);

/// Groups people by count; people without trials are left out. BadInput for impossible counts or a guess outside [0, 1).
People groupPeople(const std::vector<PersonCount>& people, double guess);

}  // namespace oddglass::stats
