#include "session/sittings.h"

#include "domain/day.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "domain/text.h"
#include "session/same_again.h"
#include "store/log.h"

#include <algorithm>

namespace oddglass::session {
namespace {

struct SeriesRow {
  std::int64_t id = 0;
  std::string title;
  LotId batch;
  std::optional<LotId> control;
  MainComparison main;
};

SeriesRow rowOf(SQLite::Database& db, const SeriesId& series) {
  auto row = store::bound(db, R"sql(
    SELECT s.id, s.title, l.uid, c.uid, s.main_word, s.main_limit
      FROM series s JOIN lot l ON l.id = s.lot_id LEFT JOIN lot c ON c.id = s.control_id WHERE s.uid = ?)sql", series.text);
  if (!row.executeStep()) throw Problem(Trouble::unknown, "series", {{"what", "series"}, {"text", series.text}});
  SeriesRow found{row.getColumn(0).getInt64(), row.getColumn(1).getString(), {row.getColumn(2).getString()}, std::nullopt, {}};
  found.main.word = row.getColumn(4).getString();
  if (!row.getColumn(3).isNull()) found.control = LotId{row.getColumn(3).getString()};
  if (!row.getColumn(5).isNull()) found.main.limit = row.getColumn(5).getInt();
  return found;
}

// The last sitting whose plan stands.
std::optional<SessionId> lastSealed(SQLite::Database& db, std::int64_t series) {
  auto row = store::bound(db, R"sql(
    SELECT s.uid FROM series_sitting t JOIN session s ON s.id = t.session_id JOIN session_plan p ON p.session_id = s.id
     WHERE t.series_id = ? ORDER BY t.due_on DESC LIMIT 1)sql", series);
  return row.executeStep() ? std::optional(SessionId{row.getColumn(0).getString()}) : std::nullopt;
}

Draft firstSitting(const SeriesRow& series, const std::vector<SheetItem>& sheet) {
  if (sheet.empty()) throw Problem(Trouble::empty, "sheet");
  Draft draft;
  draft.title = series.title;
  draft.question = series.control ? Question::lacks : Question::good;
  draft.method = Method::sheet;
  draft.methodChosen = true;
  draft.lots = {series.batch};
  draft.sheet.roles = {LotRole::compared};
  if (series.control) {
    draft.lots.push_back(*series.control);
    draft.sheet.roles.push_back(LotRole::reference);
  }
  draft.sheet.items = sheet;
  return draft;
}

// A title may have 200 letters; what is left of the series' makes room for the number.
std::string titleOf(std::string series, int sitting) {
  const std::string number = ' ' + std::to_string(sitting);
  while (lettersIn(series + number) > 200) {
    while ((static_cast<unsigned char>(series.back()) & 0xC0) == 0x80) series.pop_back();
    series.pop_back();
  }
  return series + number;
}

void markMain(Draft& draft, const SeriesRow& series) {
  const auto about = std::ranges::find_if(draft.sheet.items, [&](const SheetItem& item) { return isAbout(series.main, item); });
  if (about == draft.sheet.items.end()) return;
  for (SheetItem& item : draft.sheet.items) item.isMain = false;
  about->isMain = true;
  about->limit = series.main.limit;
}

}  // namespace

SessionId planSitting(store::Store& store, Clock& clock, Chance& chance, const SeriesId& series, int sitting, const std::vector<SheetItem>& sheet) {
  return store::write(store, [&](SQLite::Database& db) {
    const SeriesRow row = rowOf(db, series);
    auto there = store::bound(db, "SELECT session_id FROM series_sitting WHERE series_id = ? AND number = ?", row.id, sitting);
    if (!there.executeStep()) throw Problem(Trouble::unknown, "sitting", {{"what", "sitting"}, {"text", std::to_string(sitting)}});
    if (!there.getColumn(0).isNull()) throw Problem(Trouble::alreadyThere, "sitting", {{"text", std::to_string(sitting)}});
    const auto before = lastSealed(db, row.id);
    Draft draft = before ? sameAgain(store, *before) : firstSitting(row, sheet);
    draft.title = titleOf(row.title, sitting);
    markMain(draft, row);
    draft.id = newDraft(store, clock, chance, draft.title);
    saveDraft(store, clock, draft);
    store::run(db, "UPDATE series_sitting SET session_id = (SELECT id FROM session WHERE uid = ?) WHERE series_id = ? AND number = ?", draft.id.text, row.id, sitting);
    return draft.id;
  });
}

std::vector<SittingNow> sittingsNow(store::Store& store, const SeriesId& series) {
  return store::read(store, [&](SQLite::Database& db) {
    std::vector<SittingNow> all;
    auto rows = store::bound(db, R"sql(
      SELECT t.number, t.due_on, s.uid, (SELECT state FROM session_state WHERE session_id = s.id), (SELECT min(at) FROM hand_in WHERE session_id = s.id),
             (SELECT count(*) FROM series_seen x WHERE x.session_id = s.id)
        FROM series_sitting t LEFT JOIN session s ON s.id = t.session_id WHERE t.series_id = ? ORDER BY t.due_on)sql", rowOf(db, series).id);
    while (rows.executeStep()) {
      SittingNow now{rows.getColumn(0).getInt(), rows.getColumn(1).getString(), std::nullopt, State::draft, {}, rows.getColumn(5).getInt()};
      if (!rows.getColumn(2).isNull()) {
        now.session = SessionId{rows.getColumn(2).getString()};
        now.state = named<State>(rows.getColumn(3).getString()).value_or(State::draft);
      }
      if (!rows.getColumn(4).isNull()) now.heldOn = dayOf(rows.getColumn(4).getInt64());
      all.push_back(std::move(now));
    }
    return all;
  });
}

bool isToCome(const SittingNow& sitting) {
  return sitting.heldOn.empty() && sitting.state != State::abandoned && sitting.state != State::broken;
}

const SittingNow* nextSitting(const std::vector<SittingNow>& sittings) {
  const auto next = std::ranges::find_if(sittings, isToCome);
  return next == sittings.end() ? nullptr : &*next;
}

namespace {

bool isSealed(const SittingNow& sitting) { return sitting.state == State::sealed || sitting.state == State::tasting || sitting.state == State::closed; }

}  // namespace

std::optional<SessionId> sealedSitting(store::Store& store, const SeriesId& series) {
  for (const SittingNow& each : sittingsNow(store, series))
    if (isSealed(each)) return each.session;
  return std::nullopt;
}

bool areClosed(const std::vector<SittingNow>& sittings) {
  return std::ranges::any_of(sittings, [](const SittingNow& each) { return isSealed(each) && each.timesSeen == 0; });
}

std::optional<SeriesId> closedSeries(store::Store& store, const std::vector<LotId>& lots) {
  return store::read(store, [&](SQLite::Database& db) -> std::optional<SeriesId> {
    for (const LotId& lot : lots) {
      auto row = store::bound(db, R"sql(
        SELECT r.uid FROM lot o JOIN series r ON r.lot_id = o.id OR r.control_id = o.id JOIN series_sitting t ON t.series_id = r.id
          JOIN session_state s ON s.session_id = t.session_id AND s.state IN ('sealed', 'tasting', 'closed')
         WHERE o.uid = ? AND NOT EXISTS (SELECT 1 FROM series_seen x WHERE x.session_id = t.session_id AND x.series_id = r.id) LIMIT 1)sql", lot.text);
      if (row.executeStep()) return SeriesId{row.getColumn(0).getString()};
    }
    return std::nullopt;
  });
}

std::optional<SeriesId> seriesOf(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) -> std::optional<SeriesId> {
    auto row = store::bound(db, "SELECT s.uid FROM series_sitting t JOIN series s ON s.id = t.series_id JOIN session e ON e.id = t.session_id WHERE e.uid = ?", session.text);
    return row.executeStep() ? std::optional(SeriesId{row.getColumn(0).getString()}) : std::nullopt;
  });
}

std::optional<SeriesId> closedBy(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database&) -> std::optional<SeriesId> {
    const auto series = seriesOf(store, session);
    if (!series) return std::nullopt;
    const auto sealed = sealedSitting(store, *series);
    return sealed && *sealed != session ? series : std::nullopt;
  });
}

void openOldPages(store::Store& store, Clock& clock, const SeriesId& series) {
  store::write(store, [&](SQLite::Database& db) {
    const auto sealed = sealedSitting(store, series);
    if (!sealed) return;
    store::run(db, "INSERT INTO series_seen VALUES (?, ?, ?)", rowOf(db, series).id, store::sessionRow(db, *sealed), clock.now());
  });
}

}  // namespace oddglass::session
