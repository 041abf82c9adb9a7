#include "stats/people.h"

#include "stats/check.h"

#include <map>
#include <utility>

namespace oddglass::stats {

void requireRounds(int trials) {
  if (trials < 0) throw BadInput("rounds", "must not be negative");
  if (trials > 200) throw BadInput("rounds", "must not be above 200 for one person");
}

People groupPeople(const std::vector<PersonCount>& people, double guess) {
  if (!(guess >= 0.0 && guess < 1.0)) throw BadInput("guess", "must be from 0 to below 1");
  std::map<std::pair<int, int>, int> heads;
  for (const auto& person : people) {
    requireCount("correct", person.correct, person.trials);
    requireRounds(person.trials);
    if (person.trials > 0) ++heads[{person.correct, person.trials}];
  }
  People groups;
  for (const auto& [counts, number] : heads) groups.push_back({CountMixture(counts.first, counts.second, guess), number});
  return groups;
}

}  // namespace oddglass::stats
