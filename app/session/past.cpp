#include "session/past.h"

#include "session/look.h"
#include "store/step.h"

#include <set>
#include <string>

namespace oddglass::session {

using store::bound;

std::vector<TasterId> panelOf(const DraftFacts& facts) {
  std::vector<TasterId> panel;
  for (const DraftPerson& each : facts.panel) panel.push_back(each.taster);
  return panel;
}

std::vector<RevealedSession> pastSheets(store::Store& store, const std::vector<TasterId>& tasters, int most) {
  std::set<std::string> known;
  for (const TasterId& each : tasters) known.insert(each.text);
  if (known.empty() || most < 1) return {};
  const auto ids = store::read(store, [&](SQLite::Database& db) {
    std::vector<SessionId> found;
    SQLite::Statement rows(db, R"sql(
      SELECT s.id, s.uid FROM session s JOIN log l ON l.session_id = s.id AND l.seq = (SELECT max(seq) FROM log WHERE session_id = s.id)
       WHERE l.state_after = 'revealed' AND s.came_from <> 'demo' AND s.archived_at IS NULL
         AND EXISTS (SELECT 1 FROM item i WHERE i.session_id = s.id AND i.kind IN ('liking', 'line', 'magnitude', 'distance'))
       ORDER BY l.at DESC, s.id DESC)sql");
    while (rows.executeStep() && static_cast<int>(found.size()) < most) {
      auto people = bound(db, R"sql(
        SELECT t.uid FROM place_taken p LEFT JOIN place_person h ON h.session_id = p.session_id AND h.place = p.place LEFT JOIN taster t ON t.id = h.taster_id
         WHERE p.session_id = ? AND p.is_maker = 0)sql", rows.getColumn(0).getInt64());
      std::size_t sat = 0, same = 0;
      while (people.executeStep()) {
        ++sat;
        same += !people.isColumnNull(0) && known.contains(people.getColumn(0).getString());
      }
      if (sat > 0 && 2 * same >= sat && 2 * same >= known.size()) found.push_back({rows.getColumn(1).getString()});
    }
    return found;
  });
  std::vector<RevealedSession> sessions;
  for (const SessionId& id : ids) sessions.push_back(revealed(store, id));
  return sessions;
}

}  // namespace oddglass::session
