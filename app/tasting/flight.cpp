#include "tasting/flight.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "tasting/table.h"

namespace oddglass::tasting {

using store::bound;

std::optional<Flight> nextFlight(store::Store& store, const SessionId& session, Place place) {
  return store::read(store, [&](SQLite::Database& db) -> std::optional<Flight> {
    const auto id = store::sessionRow(db, session);
    requireOpenTable(db, id);
    requireSeated(db, id, place);
    const int round = nextRound(db, id, place);
    if (round == 0) return std::nullopt;
    const Asked asked = askedIn(db, id);
    Flight flight{place, {round}, 1, asked.method, asked.attribute, {}, itemsIn(db, id), hasBegun(db, id, place, {round}), asked.pauseSeconds, asked.cleanser};
    for (const auto& [position, code] : currentCodes(db, id, place, {round}))
      flight.cups.push_back({code, position, asked.hasMarked && position == Position{1}});
    auto rounds = bound(db, "SELECT max(round) FROM cup WHERE session_id = ?", id);
    rounds.executeStep();
    flight.rounds = rounds.getColumn(0).getInt();
    return flight;
  });
}

void begin(store::Store& store, Clock& clock, const SessionId& session, Place place, Round round) {
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requireOpenTable(db, id);
    requireSeated(db, id, place);
    if (nextRound(db, id, place) != round.value)
      throw Problem(Trouble::notThisRound, "round", {{"round", std::to_string(round.value)}, {"place", std::to_string(place.value)}});
    const Millis at = clock.now();
    openTable(db, id, at);
    if (!hasBegun(db, id, place, round)) store::Log::append(db, id, at, Event::began, {{"place", place.value}, {"round", round.value}});
  });
}

}  // namespace oddglass::tasting
