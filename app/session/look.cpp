#include "session/look.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "store/step.h"

namespace oddglass::session {

using store::bound;

std::vector<SessionLine> sessions(store::Store& store) {
  return store::read(store, [](SQLite::Database& db) {
    std::vector<SessionLine> all;
    SQLite::Statement rows(db, R"sql(
      SELECT s.uid, s.title, s.guest_title, coalesce(l.state_after, 'draft'), s.came_from, s.created_at, coalesce(l.at, d.changed_at, s.created_at),
             coalesce(p.seal_mark, ''), (SELECT count(*) FROM hand_in h WHERE h.session_id = s.id),
             coalesce(nullif((SELECT count(*) FROM place_taken t WHERE t.session_id = s.id), 0),
                      (SELECT count(*) FROM place c WHERE c.session_id = s.id AND c.is_spare = 0)),
             coalesce(p.question, json_extract(d.body, '$.question'), 'differ')
        FROM session s
        LEFT JOIN session_plan p ON p.session_id = s.id
        LEFT JOIN session_draft d ON d.session_id = s.id
        LEFT JOIN log l ON l.session_id = s.id AND l.seq = (SELECT max(seq) FROM log WHERE session_id = s.id)
       WHERE s.archived_at IS NULL
       ORDER BY 7 DESC, s.id DESC)sql");
    while (rows.executeStep())
      all.push_back({{rows.getColumn(0).getString()}, rows.getColumn(1).getString(), rows.getColumn(2).getString(),
                     named<State>(rows.getColumn(3).getString()).value_or(State::draft),
                     named<Question>(rows.getColumn(10).getString()).value_or(Question::differ),
                     named<CameFrom>(rows.getColumn(4).getString()).value_or(CameFrom::here), rows.getColumn(5).getInt64(), rows.getColumn(6).getInt64(),
                     rows.getColumn(7).getString(), rows.getColumn(8).getInt(), rows.getColumn(9).getInt()});
    return all;
  });
}

SessionId sessionNamed(store::Store& store, const std::string& start) {
  if (start.size() < 4) throw Problem(Trouble::unknown, "session", {{"what", "session"}, {"text", start}});
  return store::read(store, [&](SQLite::Database& db) {
    auto rows = bound(db, "SELECT uid FROM session WHERE substr(uid, 1, ?) = ? LIMIT 2", static_cast<int>(start.size()), start);
    if (!rows.executeStep()) throw Problem(Trouble::unknown, "session", {{"what", "session"}, {"text", start}});
    const SessionId id{rows.getColumn(0).getString()};
    if (rows.executeStep()) throw Problem(Trouble::ambiguous, "session", {{"what", "session"}, {"text", start}});
    return id;
  });
}

std::string lastDecision(store::Store& store, const std::vector<LotId>& lots) {
  return store::read(store, [&](SQLite::Database& db) {
    std::string text;
    std::optional<std::int64_t> newest;
    for (const LotId& lot : lots) {
      // Within a session the order of the log counts, whatever the clock said; sessions are set beside each other by the clock.
      auto row = bound(db, R"sql(
        SELECT r.text, g.at FROM lot mine JOIN lot sibling ON sibling.beverage_id = mine.beverage_id
          JOIN session_lot s ON s.lot_id = sibling.id JOIN remark r ON r.session_id = s.session_id AND r.about = 'decision'
          JOIN log g ON g.session_id = r.session_id AND g.seq = r.seq
         WHERE mine.uid = ?
           AND r.seq = (SELECT max(seq) FROM remark WHERE session_id = r.session_id AND about = 'decision')
         ORDER BY g.at DESC LIMIT 1)sql", lot.text);
      if (row.executeStep() && (!newest || row.getColumn(1).getInt64() > *newest)) {
        text = row.getColumn(0).getString();
        newest = row.getColumn(1).getInt64();
      }
    }
    return text;
  });
}

}  // namespace oddglass::session
