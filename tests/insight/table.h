#pragma once

#include "domain/trial.h"
#include "stats/designs.h"

#include <optional>
#include <utility>
#include <vector>

/// Makes revealed sessions by hand, one person after the other.
namespace table {

using namespace oddglass;

inline RevealedSession session(int rounds, Claim claim) {
  RevealedSession made;
  made.plan.rounds = rounds;
  made.plan.claim = claim;
  made.plan.panelPlanned = 6;
  made.plan.makersPlanned = 1;
  made.commitmentHolds = true;
  made.pourSheetOpenings = 1;
  return made;
}

/// Where the odd cup of a triangle stands, by what was poured.
inline std::optional<Position> oddAsPoured(const RevealedFlight& flight) {
  const auto right = rightCups(Plan{}, flight);
  return right && right->size() == 1 ? std::optional(right->front()) : std::nullopt;
}

/// One answered flight: right or wrong, the orders taken in turn; locked at the next number.
template <class Flight>
Flight flight(int place, int round, bool right, int lockedAt) {
  Flight made;
  made.place = Place{place};
  made.round = Round{round};
  made.lockedAt = Seq{lockedAt};
  const auto& order = stats::triangleOrders[static_cast<std::size_t>((place + round) % 6)];
  for (const auto side : order) {
    made.drawn.push_back(Slot{side});
    made.poured.push_back(Slot{side});
  }
  const int odd = *stats::oddCup(order) + 1;
  made.picks = {Position{right ? odd : odd % 3 + 1}};
  return made;
}

/// A panel in which person k has right[k] of `rounds`; locks are numbered round by round, from 100 on.
inline RevealedSession panel(const std::vector<int>& right, int rounds) {
  RevealedSession made = session(rounds, rounds > 1 ? Claim::table : Claim::people);
  made.plan.panelPlanned = static_cast<int>(right.size());
  for (std::size_t k = 0; k < right.size(); ++k) {
    const int place = static_cast<int>(k) + 1;
    ShownPerson person;
    person.place = Place{place};
    made.people.push_back(person);
    for (int round = 1; round <= rounds; ++round)
      made.panel.push_back(flight<PanelFlight>(place, round, round <= right[k], 100 * round + place));
  }
  return made;
}

}  // namespace table
