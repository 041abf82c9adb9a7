// A series from elsewhere, and what has to go with it to another store.
#include "domain/problem.h"
#include "shelf/fields.h"
#include "shelf/rows.h"
#include "shelf/series.h"
#include "shelf/series_rows.h"

#include <algorithm>

namespace oddglass::shelf {
namespace {

/// The row of a session that may be a sitting: it is here, it poured the batch, and no other series has it. Nothing while it is not here.
std::optional<std::int64_t> sittingRow(SQLite::Database& db, const Series& series, const SessionId& session) {
  auto row = store::bound(db, "SELECT s.id, EXISTS (SELECT 1 FROM series_sitting t WHERE t.session_id = s.id) FROM session s WHERE s.uid = ?", session.text);
  if (!row.executeStep()) return std::nullopt;
  if (row.getColumn(1).getInt() != 0) throw Problem(Trouble::alreadyThere, "sittings", {{"text", session.text}});
  const std::int64_t id = row.getColumn(0).getInt64();
  auto pours = store::bound(db, "SELECT 1 FROM session_lot p JOIN lot l ON l.id = p.lot_id WHERE p.session_id = ? AND l.uid = ?", id, series.batch.text);
  if (!pours.executeStep()) throw Problem(Trouble::notAChoice, "sittings", {{"text", session.text}, {"choices", "a session that poured the batch"}});
  return id;
}

}  // namespace

bool bring(store::Store& store, Clock& clock, Series series, const std::vector<SeriesSeen>& seen) {
  checkUid(series.id.text);
  checkSeries(series);
  return store::write(store, [&](SQLite::Database& db) {
    auto here = store::bound(db, "SELECT 1 FROM series WHERE uid = ?", series.id.text);
    if (here.executeStep()) return false;
    checkControl(db, series);
    const std::int64_t row = insertSeries(db, series, clock.now());
    for (const Sitting& each : series.sittings) {
      const auto session = each.session ? sittingRow(db, series, *each.session) : std::nullopt;
      auto put = store::bound(db, "INSERT INTO series_sitting (series_id, number, due_on, session_id) VALUES (?, ?, ?, ?4)", row, each.number, each.dueOn);
      if (session) put.bind(4, *session);
      put.exec();
    }
    for (const SeriesSeen& each : seen)
      store::run(db, "INSERT INTO series_seen (series_id, session_id, at) SELECT ?, id, ? FROM session WHERE uid = ?", row, each.at, each.session.text);
    if (series.archived) store::run(db, "UPDATE series SET archived_at = ? WHERE id = ?", clock.now(), row);
    return true;
  });
}

std::vector<SeriesSeen> seenOf(store::Store& store, const SeriesId& series) {
  return store::read(store, [&](SQLite::Database& db) {
    auto rows = store::bound(db, "SELECT s.uid, o.at FROM series_seen o JOIN session s ON s.id = o.session_id JOIN series r ON r.id = o.series_id WHERE r.uid = ? ORDER BY o.at, o.rowid",
                             series.text);
    std::vector<SeriesSeen> all;
    while (rows.executeStep()) all.push_back({SessionId{rows.getColumn(0).getString()}, rows.getColumn(1).getInt64()});
    return all;
  });
}

}  // namespace oddglass::shelf
