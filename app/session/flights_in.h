#pragma once

#include "domain/revealed.h"
#include "store/step.h"

#include <map>
#include <set>
#include <utility>

namespace oddglass::session {

/// Reads what people answered in revealed sessions, as far as findings about people need it: the flights that were answered, who sat where, what was said
/// aloud and set aside. Holds the statements that are asked anew for every session. The session's plan is there already; it needs no cups.
class FlightsIn {
 public:
  explicit FlightsIn(SQLite::Database& db) : db_(db) {}

  /// Adds who sat where (without names), what was said and what was set aside; comes before the flights of a session. Gives the row of each person who sat
  /// by name or nickname.
  std::map<Place, std::int64_t> seats(std::int64_t id, RevealedSession& session);
  /// Adds the flights of a score sheet with the answers to one question.
  void scores(std::int64_t id, Item item, RevealedSession& session);
  /// Adds the flights of every other method.
  void choices(std::int64_t id, RevealedSession& session);

 private:
  void readSaid(std::int64_t id, RevealedSession& session);
  void readVoided(std::int64_t id);
  bool begin(RevealedFlight& flight, SQLite::Statement& rows, RevealedSession& session);
  void end(RevealedFlight& flight, RevealedSession& session);

  SQLite::Database& db_;
  std::map<Place, bool> isMaker_;
  std::set<std::pair<Place, Round>> voided_;
  SQLite::Statement people_{db_, "SELECT t.place, t.is_maker, w.taster_id FROM place_taken t LEFT JOIN place_person w ON w.session_id = t.session_id AND w.place = t.place WHERE t.session_id = ?1 ORDER BY t.place"};
  SQLite::Statement said_{db_, "SELECT seq, body FROM log WHERE session_id = ?1 AND kind = 'said' ORDER BY seq"};
  SQLite::Statement voids_{db_, "SELECT place, round FROM voided WHERE session_id = ?1"};
  SQLite::Statement spilled_{db_, "SELECT code, by_code FROM spilled WHERE session_id = ?1"};
  SQLite::Statement scores_{db_, R"sql(
    SELECT h.place, h.round, h.seq, a.value, k.slot, k.poured_slot
      FROM hand_in h JOIN answer a ON a.hand_in_id = h.id AND a.item = ?2 JOIN key_line k ON k.session_id = h.session_id AND k.code = a.code
     WHERE h.session_id = ?1 AND a.value IS NOT NULL ORDER BY h.place, h.round)sql"};
  SQLite::Statement cups_{db_, R"sql(
    SELECT c.place, c.round, c.spare, c.code, k.slot, k.poured_slot
      FROM hand_in h JOIN cup c ON c.session_id = h.session_id AND c.place = h.place AND c.round = h.round
      JOIN key_line k ON k.session_id = c.session_id AND k.code = c.code
     WHERE h.session_id = ?1 ORDER BY c.place, c.round, c.position, c.spare)sql"};
  SQLite::Statement choices_{db_, R"sql(
    SELECT h.place, h.round, h.seq, a.item, a.value FROM hand_in h JOIN answer a ON a.hand_in_id = h.id
     WHERE h.session_id = ?1 ORDER BY h.place, h.round, a.item)sql"};
};

}  // namespace oddglass::session
