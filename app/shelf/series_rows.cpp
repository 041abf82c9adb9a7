#include "shelf/series_rows.h"

#include "domain/day.h"
#include "domain/problem.h"
#include "shelf/fields.h"
#include "shelf/rows.h"

#include <algorithm>

namespace oddglass::shelf {

void checkSeries(Series& series) {
  series.title = text(series.title, "title", 200, true);
  series.begunOn = day(series.begunOn, "begun_on");
  if (series.begunOn.empty()) throw Problem(Trouble::empty, "begun_on");
  checkWhole(series.bottlesEach, 1, 24, "bottles_each");
  checkWhole(series.reserve, 0, 48, "reserve");
  checkWhole(static_cast<int>(series.sittings.size()), 2, 24, "sittings");
  series.main.word = text(series.main.word, "main_word", 60, false);
  if (series.main.limit) checkWhole(*series.main.limit, 1, 1000, "main_limit");
  std::ranges::stable_sort(series.sittings, {}, &Sitting::dueOn);
  std::string before;
  int number = 0;
  for (Sitting& sitting : series.sittings) {
    sitting.dueOn = day(sitting.dueOn, "due_on");
    if (sitting.dueOn.empty()) throw Problem(Trouble::empty, "due_on");
    // Days are written so that their text sorts as they do.
    if (sitting.dueOn < series.begunOn || sitting.dueOn == before)
      throw Problem(Trouble::outOfRange, "due_on", {{"text", sitting.dueOn}, {"low", before.empty() ? series.begunOn : *dayAfter(before, 1)}, {"high", "9999-12-31"}});
    before = sitting.dueOn;
    sitting.number = ++number;
  }
  checkWhole(series.main.sitting, 2, number, "main");
}

// A twin is of the same drink, a reference is not; neither is the batch itself.
void checkControl(SQLite::Database& db, const Series& series) {
  if (series.controlLot.has_value() == (series.control == ControlKind::none)) throw Problem(Trouble::empty, "control");
  const auto drinkOf = [&](const LotId& lot, const char* argument) {
    auto row = store::bound(db, "SELECT beverage_id FROM lot WHERE uid = ?", lot.text);
    if (!row.executeStep()) throw Problem(Trouble::unknown, argument, {{"what", "lot"}, {"text", lot.text}});
    return row.getColumn(0).getInt64();
  };
  const auto batch = drinkOf(series.batch, "batch");
  if (!series.controlLot) return;
  if (*series.controlLot == series.batch) throw Problem(Trouble::sameLotTwice, "control", {{"lot", series.title}});
  if ((drinkOf(*series.controlLot, "control") == batch) != (series.control == ControlKind::twin))
    throw Problem(Trouble::notAChoice, "control", {{"text", series.controlLot->text}, {"choices", series.control == ControlKind::twin ? "a lot of the same drink" : "a lot of another drink"}});
}

void bindControl(SQLite::Statement& row, int index, const Series& series) {
  if (series.controlLot) row.bind(index, series.controlLot->text);
  else row.bind(index);
}

std::int64_t insertSeries(SQLite::Database& db, const Series& series, Millis at) {
  auto row = store::bound(db, R"sql(
    INSERT INTO series (uid, title, lot_id, control, begun_on, bottles_each, reserve, main_sitting, main_word, created_at, main_limit, control_id)
    VALUES (?, ?, (SELECT id FROM lot WHERE uid = ?), ?, ?, ?, ?, ?, ?, ?, ?, (SELECT id FROM lot WHERE uid = ?)))sql",
                          series.id.text, series.title, series.batch.text, std::string(nameOf(series.control)), series.begunOn, series.bottlesEach, series.reserve, series.main.sitting,
                          series.main.word, at);
  bindMaybe(row, 11, series.main.limit);
  bindControl(row, 12, series);
  row.exec();
  return db.getLastInsertRowid();
}

Series seriesAt(SQLite::Database& db, std::int64_t id) {
  auto row = store::bound(db, R"sql(
    SELECT s.uid, s.title, l.uid, s.control, c.uid, s.begun_on, s.bottles_each, s.reserve, s.main_sitting, s.main_word, s.main_limit, s.archived_at
      FROM series s JOIN lot l ON l.id = s.lot_id LEFT JOIN lot c ON c.id = s.control_id WHERE s.id = ?)sql", id);
  if (!row.executeStep()) throw Problem(Trouble::unknown, "series");
  Series found;
  found.id.text = row.getColumn(0).getString();
  found.title = row.getColumn(1).getString();
  found.batch.text = row.getColumn(2).getString();
  found.control = known<ControlKind>(row.getColumn(3));
  if (!row.getColumn(4).isNull()) found.controlLot = LotId{row.getColumn(4).getString()};
  found.begunOn = row.getColumn(5).getString();
  found.bottlesEach = row.getColumn(6).getInt();
  found.reserve = row.getColumn(7).getInt();
  found.main = {row.getColumn(8).getInt(), row.getColumn(9).getString(), maybeInt(row.getColumn(10))};
  found.archived = !row.getColumn(11).isNull();
  auto sittings = store::bound(db, R"sql(
    SELECT t.number, t.due_on, s.uid FROM series_sitting t LEFT JOIN session s ON s.id = t.session_id WHERE t.series_id = ? ORDER BY t.due_on)sql", id);
  while (sittings.executeStep()) {
    Sitting each{sittings.getColumn(0).getInt(), sittings.getColumn(1).getString(), std::nullopt};
    if (!sittings.getColumn(2).isNull()) each.session = SessionId{sittings.getColumn(2).getString()};
    found.sittings.push_back(std::move(each));
  }
  return found;
}

}  // namespace oddglass::shelf
