#include "insight/trials.h"

#include "stats/designs.h"

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
    const auto odd = oddAsPoured(flight);
    // A flight set aside is void whether or not somebody answered it before; an answer never given is missing.
    if (flight.voided || (flight.chosen && !odd))
      ++tasted.voided;
    else if (!flight.chosen)
      ++tasted.missing;
    else
      tasted.trials.push_back({flight.place, flight.round, flight.lockedAt, *flight.chosen, *odd, flight.sureness, flight.clue});
  }
  return tasted;
}

}  // namespace

std::optional<Position> oddAsPoured(const RevealedFlight& flight) {
  stats::TriangleOrder order{};
  if (flight.drawn.size() != order.size() || (!flight.poured.empty() && flight.poured.size() != order.size())) return std::nullopt;
  for (std::size_t cup = 0; cup < order.size(); ++cup) {
    const std::optional<Slot> slot = flight.poured.empty() ? std::optional(flight.drawn[cup]) : flight.poured[cup];
    if (!slot) return std::nullopt;
    order[cup] = slot->value;
  }
  const auto odd = stats::oddCup(order);
  if (!odd) return std::nullopt;
  return Position{*odd + 1};
}

Tasted<PanelFlight> panelTasted(const RevealedSession& session) { return sorted(session.panel, session); }

Tasted<MakerFlight> makersTasted(const RevealedSession& session) { return sorted(session.makers, session); }

bool byLookOrFizz(const Trial& trial) { return trial.clue == Clue::look || trial.clue == Clue::fizz; }

bool afterSaid(const Trial& trial, const std::vector<SaidAloud>& said) {
  return std::any_of(said.begin(), said.end(), [&](const SaidAloud& remark) {
    return remark.seq < trial.lockedAt && (remark.heardBy.empty() || remark.heardBy.contains(trial.place));
  });
}

}  // namespace oddglass::insight
