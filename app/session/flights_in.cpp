#include "session/flights_in.h"

#include "canon/canonical.h"
#include "domain/problem.h"
#include "session/choice_reply.h"

namespace oddglass::session {
namespace {

using canon::Json;

SQLite::Statement& asked(SQLite::Statement& statement, std::int64_t id) {
  statement.reset();
  statement.bind(1, id);
  return statement;
}

}  // namespace

std::map<Place, std::int64_t> FlightsIn::seats(std::int64_t id, RevealedSession& session) {
  isMaker_.clear();
  std::map<Place, std::int64_t> known;
  for (auto& rows = asked(people_, id); rows.executeStep();) {
    const Place place{rows.getColumn(0).getInt()};
    const bool maker = rows.getColumn(1).getInt() != 0;
    isMaker_[place] = maker;
    session.people.push_back({place, ShownAs::loose, {}, maker, false, false, false});
    if (!rows.getColumn(2).isNull()) known[place] = rows.getColumn(2).getInt64();
  }
  readSaid(id, session);
  readVoided(id);
  return known;
}

void FlightsIn::readSaid(std::int64_t id, RevealedSession& session) {
  for (auto& rows = asked(said_, id); rows.executeStep();) {
    SaidAloud said{{rows.getColumn(0).getInt()}, 0, {}, {}};
    const Json body = Json::parse(rows.getColumn(1).getString());
    for (const Json& place : body.at("heard")) said.heardBy.insert({place.get<int>()});
    session.said.push_back(std::move(said));
  }
}

void FlightsIn::readVoided(std::int64_t id) {
  voided_.clear();
  for (auto& rows = asked(voids_, id); rows.executeStep();) voided_.insert({Place{rows.getColumn(0).getInt()}, Round{rows.getColumn(1).getInt()}});
}

// A flight begins with its first row; its cups are counted as they come.
void FlightsIn::scores(std::int64_t id, Item item, RevealedSession& session) {
  scores_.reset();
  scores_.bind(2, item.value);
  RevealedFlight flight;
  for (auto& rows = asked(scores_, id); rows.executeStep();) {
    begin(flight, rows, session);
    const auto slot = rows.getColumn(5).isNull() ? std::nullopt : std::optional(Slot{rows.getColumn(5).getInt()});
    flight.drawn.push_back({rows.getColumn(4).getInt()});
    flight.poured.push_back(slot);
    flight.replies.push_back({item, Position{static_cast<int>(flight.drawn.size())}, rows.getColumn(3).getInt(), {}});
  }
  end(flight, session);
}

void FlightsIn::choices(std::int64_t id, RevealedSession& session) {
  std::map<Code, Code> replaced;
  for (auto& rows = asked(spilled_, id); rows.executeStep();) replaced[{rows.getColumn(0).getInt()}] = {rows.getColumn(1).getInt()};
  struct Line {
    Slot drawn;
    std::optional<Slot> poured;
  };
  std::map<std::pair<Place, Round>, std::vector<Code>> first;
  std::map<Code, Line> lines;
  for (auto& rows = asked(cups_, id); rows.executeStep();) {
    const Code code{rows.getColumn(3).getInt()};
    if (rows.getColumn(2).getInt() == 0) first[{Place{rows.getColumn(0).getInt()}, Round{rows.getColumn(1).getInt()}}].push_back(code);
    lines[code] = {{rows.getColumn(4).getInt()}, rows.getColumn(5).isNull() ? std::nullopt : std::optional(Slot{rows.getColumn(5).getInt()})};
  }
  RevealedFlight flight;
  std::vector<Code> codes;
  for (auto& rows = asked(choices_, id); rows.executeStep();) {
    if (begin(flight, rows, session)) {
      codes.clear();
      for (Code code : first[{flight.place, flight.round}]) {
        const auto drawn = lines.find(code);
        if (drawn != lines.end()) flight.drawn.push_back(drawn->second.drawn);
        int steps = 0;
        for (auto next = replaced.find(code); next != replaced.end() && steps < 9; next = replaced.find(code), ++steps) code = next->second;
        codes.push_back(code);
        // Where hands hid the key, a cup that could not be read has no line.
        const auto line = lines.find(code);
        flight.poured.push_back(line == lines.end() ? std::nullopt : line->second.poured);
      }
    }
    if (!rows.getColumn(4).isNull()) addReply(flight, session.plan, {rows.getColumn(3).getInt()}, rows.getColumn(4).getInt(), codes);
  }
  end(flight, session);
}

// Place, round and entry stand first in a row. True where another flight begins.
bool FlightsIn::begin(RevealedFlight& flight, SQLite::Statement& rows, RevealedSession& session) {
  const Place place{rows.getColumn(0).getInt()};
  const Round round{rows.getColumn(1).getInt()};
  if (flight.place == place && flight.round == round) return false;
  end(flight, session);
  flight.place = place;
  flight.round = round;
  flight.lockedAt = {rows.getColumn(2).getInt()};
  if (voided_.contains({place, round})) flight.voided = VoidReason::other;
  return true;
}

void FlightsIn::end(RevealedFlight& flight, RevealedSession& session) {
  if (flight.place.value > 0) {
    const auto maker = isMaker_.find(flight.place);
    if (maker == isMaker_.end()) throw Problem(Trouble::storeDamaged, "place_taken");
    if (maker->second) session.makers.emplace_back(std::move(flight));
    else session.panel.emplace_back(std::move(flight));
  }
  flight = {};
}

}  // namespace oddglass::session
