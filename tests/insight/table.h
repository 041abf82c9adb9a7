#pragma once

#include "domain/trial.h"
#include "stats/designs.h"

#include <algorithm>
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

/// Orders of a method in turn; lots 1 and 2, what is asked about as having more is lot 1, the marked cup of an A-not-A lot 1.
inline std::vector<std::vector<int>> ordersOf(Method method) {
  switch (method) {
    case Method::triangle: return {{1, 1, 2}, {1, 2, 1}, {2, 1, 1}, {2, 2, 1}, {2, 1, 2}, {1, 2, 2}};
    case Method::duoTrio: return {{1, 1, 2}, {1, 2, 1}, {2, 1, 2}, {2, 2, 1}};
    case Method::tetrad: return {{1, 1, 2, 2}, {1, 2, 1, 2}, {1, 2, 2, 1}, {2, 2, 1, 1}, {2, 1, 2, 1}, {2, 1, 1, 2}};
    case Method::twoOutOfFive: return {{1, 1, 2, 2, 2}, {2, 1, 2, 1, 2}, {2, 2, 1, 1, 1}, {1, 2, 1, 2, 1}};
    case Method::pair:
    case Method::preference: return {{1, 2}, {2, 1}};
    case Method::sheet: return {};
    case Method::threeAfc: return {{1, 2, 2}, {2, 1, 2}, {2, 2, 1}};
    case Method::sameDifferent: return {{1, 1}, {1, 2}, {2, 2}, {2, 1}};
    case Method::aNotA: return {{1, 1}, {1, 2}};
  }
  return {};
}

/// Answers a flight right or wrong; a preference goes to lot 1 (right) or lot 2.
inline void answer(RevealedFlight& flight, const Plan& plan, bool right) {
  flight.picks.clear();
  if (plan.method == Method::preference) {
    for (std::size_t i = 0; i < flight.drawn.size(); ++i)
      if (flight.drawn[i] == Slot{right ? 1 : 2}) flight.preferred = Position{static_cast<int>(i) + 1};
    return;
  }
  if (const auto same = isSame(plan, flight)) {
    flight.saidSame = right == *same;
    return;
  }
  const auto cups = rightCups(plan, flight).value();
  if (right) {
    flight.picks = cups;
    return;
  }
  const int from = plan.method == Method::duoTrio ? 2 : 1;
  int wrong = from;
  while (std::ranges::find(cups, Position{wrong}) != cups.end()) ++wrong;
  flight.picks = {Position{wrong}};
  if (cups.size() == 2) flight.picks.push_back(cups.front());
}

/// A session of two lots by any method, in which person k has right[k] of `rounds`; locks as in `panel`.
inline RevealedSession panelOf(Method method, const std::vector<int>& right, int rounds) {
  RevealedSession made = session(rounds, rounds > 1 ? Claim::table : Claim::people);
  made.plan.method = method;
  made.plan.panelPlanned = static_cast<int>(right.size());
  made.plan.lots.resize(2);
  made.plan.lots[0].slot = Slot{1};
  made.plan.lots[0].beverageName = "Heather mead";
  made.plan.lots[1].slot = Slot{2};
  made.plan.lots[1].beverageName = "Linden mead";
  if (method == Method::pair || method == Method::threeAfc) {
    made.plan.question = Question::more;
    made.plan.attribute = "bitter";
    made.plan.expected = Slot{1};
  }
  if (method == Method::preference) made.plan.question = Question::prefer;
  if (method == Method::aNotA) made.plan.marked = Slot{1};
  const auto orders = ordersOf(method);
  for (std::size_t k = 0; k < right.size(); ++k) {
    const int place = static_cast<int>(k) + 1;
    made.people.push_back({});
    made.people.back().place = Place{place};
    for (int round = 1; round <= rounds; ++round) {
      PanelFlight flight;
      flight.place = Place{place};
      flight.round = Round{round};
      flight.lockedAt = Seq{100 * round + place};
      for (const int lot : orders[static_cast<std::size_t>(place + round) % orders.size()]) flight.drawn.push_back(Slot{lot});
      answer(flight, made.plan, round <= right[k]);
      made.panel.push_back(flight);
    }
  }
  return made;
}

/// `right` of people x rounds, dealt to the people as evenly as it goes.
inline std::vector<int> dealt(int people, int right) {
  std::vector<int> each(static_cast<std::size_t>(people), right / people);
  for (int i = 0; i < right % people; ++i) ++each[static_cast<std::size_t>(i)];
  return each;
}

/// Three lots in three pairs by tetrads, everybody once each: right[0] of `people` for lots 1 and 2, right[1] for 1 and 3, right[2] for 2 and 3.
inline RevealedSession threePairs(int people, const std::vector<int>& right) {
  RevealedSession made = panelOf(Method::tetrad, std::vector<int>(static_cast<std::size_t>(people), 0), 3);
  made.plan.lots.push_back(made.plan.lots[1]);
  made.plan.lots[2].slot = Slot{3};
  made.plan.lots[2].lotName = "vintage 2021";
  made.plan.lots[1].lotName = "vintage 2019";
  for (PanelFlight& flight : made.panel) {
    const auto pair = static_cast<std::size_t>(flight.round.value) - 1;
    for (Slot& lot : flight.drawn) lot = lot == Slot{1} ? Slot{pair == 2 ? 2 : 1} : Slot{pair == 0 ? 2 : 3};
    answer(flight, made.plan, flight.place.value <= right[pair]);
  }
  return made;
}

}  // namespace table
