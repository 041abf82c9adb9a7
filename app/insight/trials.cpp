#include "insight/trials.h"

#include "domain/trial.h"

#include <algorithm>
#include <set>

namespace oddglass::insight {

namespace {

template <class Flight>
Tasted<Flight> sorted(const std::vector<Flight>& flights, const RevealedSession& session) {
  std::set<Place> erased;
  for (const auto& person : session.people)
    if (person.erased) erased.insert(person.place);
  Tasted<Flight> tasted;
  for (const auto& flight : flights) {
    if (erased.contains(flight.place)) continue;
    ++tasted.flights;
    const auto right = isRight(session.plan, flight);
    // A flight set aside is void whether or not somebody answered it before; an answer never given is missing.
    if (flight.voided || (flight.isAnswered() && !right))
      ++tasted.voided;
    else if (!flight.isAnswered())
      ++tasted.missing;
    else
      tasted.trials.push_back({flight.place, flight.round, flight.lockedAt, flight.picks, rightCups(session.plan, flight).value_or(std::vector<Position>{}), *right,
                               flight.sureness, flight.clue});
  }
  return tasted;
}

}  // namespace

Tasted<PanelFlight> panelTasted(const RevealedSession& session) { return sorted(session.panel, session); }

Tasted<MakerFlight> makersTasted(const RevealedSession& session) { return sorted(session.makers, session); }

bool byLookOrFizz(const Trial& trial) { return trial.clue == Clue::look || trial.clue == Clue::fizz; }

bool afterSaid(const Trial& trial, const std::vector<SaidAloud>& said) {
  return std::any_of(said.begin(), said.end(), [&](const SaidAloud& remark) {
    return remark.seq < trial.lockedAt && (remark.heardBy.empty() || remark.heardBy.contains(trial.place));
  });
}

}  // namespace oddglass::insight
