#include "tasting/paper.h"

#include "domain/problem.h"
#include "tasting/table.h"

namespace oddglass::tasting {

using store::bound;

TablePaper tablePaper(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    auto head = bound(db, R"sql(
      SELECT s.guest_title, p.seal_mark, json_extract(p.body, '$.cup_ml'), coalesce(json_extract(p.body, '$.evenings'), 1), coalesce(json_extract(p.body, '$.wave'), 0)
        FROM session s JOIN session_plan p ON p.session_id = s.id WHERE s.id = ?)sql", id);
    if (!head.executeStep()) throw Problem(Trouble::notSealed, "session");
    const Asked asked = askedIn(db, id);
    TablePaper paper{session, head.getColumn(0).getString(), head.getColumn(1).getString(), head.getColumn(2).getInt(), 1, head.getColumn(3).getInt(), head.getColumn(4).getInt(), {}, {}, asked.hasMarked};
    auto rounds = bound(db, "SELECT max(round) FROM cup WHERE session_id = ?", id);
    rounds.executeStep();
    paper.rounds = rounds.getColumn(0).getInt();
    const std::vector<SheetItem> items = itemsIn(db, id);
    auto places = bound(db, "SELECT place, is_spare FROM place WHERE session_id = ? ORDER BY place", id);
    while (places.executeStep()) {
      PaperPlace place{{places.getColumn(0).getInt()}, places.getColumn(1).getInt() != 0, {}};
      for (int round = 1; round <= paper.rounds; ++round) {
        Flight flight{place.place, {round}, paper.rounds, asked.method, asked.attribute, {}, items, false, asked.pauseSeconds, asked.cleanser};
        for (const auto& [position, code] : currentCodes(db, id, place.place, {round}))
          flight.cups.push_back({code, position, asked.hasMarked && position == Position{1}});
        if (!flight.cups.empty()) place.flights.push_back(std::move(flight));
      }
      paper.places.push_back(std::move(place));
    }
    auto cups = bound(db, "SELECT code, place, round, position, spare FROM cup WHERE session_id = ? ORDER BY spare > 0, place, round, position, spare", id);
    while (cups.executeStep())
      paper.cups.push_back({{cups.getColumn(0).getInt()}, {cups.getColumn(1).getInt()}, {cups.getColumn(2).getInt()}, {cups.getColumn(3).getInt()}, cups.getColumn(4).getInt()});
    return paper;
  });
}

}  // namespace oddglass::tasting
