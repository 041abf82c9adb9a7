#include "shelf/series.h"

#include "domain/day.h"
#include "domain/problem.h"
#include "shelf/fields.h"
#include "shelf/lots.h"
#include "shelf/rows.h"
#include "shelf/series_rows.h"

#include <algorithm>

namespace oddglass::shelf {
namespace {

std::int64_t seriesRow(SQLite::Database& db, const SeriesId& id) {
  auto row = store::bound(db, "SELECT id FROM series WHERE uid = ?", id.text);
  if (!row.executeStep()) throw Problem(Trouble::unknown, "series", {{"what", "series"}, {"text", id.text}});
  return row.getColumn(0).getInt64();
}

bool hasSealed(SQLite::Database& db, std::int64_t row) {
  auto sealed = store::bound(db, "SELECT 1 FROM series_sitting s JOIN log l ON l.session_id = s.session_id WHERE s.series_id = ?", row);
  return sealed.executeStep();
}

const Sitting& mainOf(const Series& series) { return series.sittings[static_cast<std::size_t>(series.main.sitting) - 1]; }

// What a series was begun for stays once a sitting is sealed; the day of its main sitting too, unless that was planned and has its own.
void requireKept(const Series& before, const Series& now) {
  const auto keep = [](bool holds, const char* argument) {
    if (!holds) throw Problem(Trouble::seriesBegun, argument);
  };
  keep(before.batch == now.batch, "batch");
  keep(before.control == now.control && before.controlLot == now.controlLot, "control");
  keep(before.begunOn == now.begunOn, "begun_on");
  keep(before.main.word == now.main.word && before.main.limit == now.main.limit, "main");
  const Sitting &was = mainOf(before), &is = mainOf(now);
  keep(was.session ? was.session == is.session : was.dueOn == is.dueOn, "main");
}

void writeSittings(SQLite::Database& db, std::int64_t row, const Series& before, const Series& now) {
  for (const Sitting& was : before.sittings)
    if (was.session && std::ranges::none_of(now.sittings, [&](const Sitting& each) { return each.session == was.session; })) throw Problem(Trouble::alreadyThere, "sittings", {{"text", was.dueOn}});
  store::run(db, "DELETE FROM series_sitting WHERE series_id = ? AND session_id IS NULL", row);
  for (const Sitting& each : now.sittings) {
    if (!each.session) {
      store::run(db, "INSERT INTO series_sitting (series_id, number, due_on) VALUES (?, ?, ?)", row, each.number, each.dueOn);
      continue;
    }
    if (std::ranges::none_of(before.sittings, [&](const Sitting& was) { return was.session == each.session; }))
      throw Problem(Trouble::unknown, "sittings", {{"what", "session"}, {"text", each.session->text}});
    store::run(db, "UPDATE series_sitting SET number = ?, due_on = ? WHERE session_id = (SELECT id FROM session WHERE uid = ?)", each.number, each.dueOn, each.session->text);
  }
}

void change(SQLite::Database& db, std::int64_t row, const Series& before, const Series& now) {
  store::run(db, "UPDATE series SET title = ?, bottles_each = ?, reserve = ?, main_sitting = ? WHERE id = ?", now.title, now.bottlesEach, now.reserve, now.main.sitting, row);
  if (hasSealed(db, row)) return requireKept(before, now);
  auto fixed = store::bound(db, "UPDATE series SET lot_id = (SELECT id FROM lot WHERE uid = ?), control = ?, begun_on = ?, main_word = ? WHERE id = ?", now.batch.text,
                            std::string(nameOf(now.control)), now.begunOn, now.main.word, row);
  fixed.exec();
  SQLite::Statement rest(db, "UPDATE series SET main_limit = ?, control_id = (SELECT id FROM lot WHERE uid = ?) WHERE id = ?");
  bindMaybe(rest, 1, now.main.limit);
  bindControl(rest, 2, now);
  rest.bind(3, row);
  rest.exec();
}

void setArchived(store::Store& store, const SeriesId& id, std::optional<Millis> at) {
  store::write(store, [&](SQLite::Database& db) {
    const auto row = seriesRow(db, id);
    if (at) store::run(db, "UPDATE series SET archived_at = ? WHERE id = ?", *at, row);
    else store::run(db, "UPDATE series SET archived_at = NULL WHERE id = ?", row);
  });
}

}  // namespace

SeriesId save(store::Store& store, Clock& clock, Chance& chance, Series series) {
  checkSeries(series);
  const bool isNew = series.id.empty();
  if (isNew) series.id.text = newUid(chance);
  store::write(store, [&](SQLite::Database& db) {
    checkControl(db, series);
    if (isNew) {
      writeSittings(db, insertSeries(db, series, clock.now()), {}, series);
      return;
    }
    const auto row = seriesRow(db, series.id);
    const Series before = seriesAt(db, row);
    change(db, row, before, series);
    writeSittings(db, row, before, series);
  });
  return series.id;
}

LotId setTwinAside(store::Store& store, Clock& clock, Chance& chance, const LotId& batch, const std::string& name, const std::string& storage, int bottles) {
  return store::write(store, [&](SQLite::Database&) {
    Lot twin = lot(store, batch);
    const int before = twin.bottles;
    checkWhole(bottles, 1, std::max(1, freeBottles(twin)), "bottles");
    twin.id = {};
    twin.name = name;
    twin.storage = storage;
    const LotId id = save(store, chance, twin);
    count(store, clock, batch, before - bottles);
    move(store, clock, id, StockChange::added, bottles);
    return id;
  });
}

SeriesId begin(store::Store& store, Clock& clock, Chance& chance, Series series, int twinBottles, const std::string& twinName, const std::string& storage) {
  return store::write(store, [&](SQLite::Database&) {
    if (twinBottles > 0) series.controlLot = setTwinAside(store, clock, chance, series.batch, twinName, storage, twinBottles);
    return save(store, clock, chance, series);
  });
}

Series series(store::Store& store, const SeriesId& id) {
  return store::read(store, [&](SQLite::Database& db) { return seriesAt(db, seriesRow(db, id)); });
}

SeriesId seriesNamed(store::Store& store, const std::string& start) {
  const auto refuse = [&](Trouble trouble) { return Problem(trouble, "series", {{"what", "series"}, {"text", start}}); };
  if (start.size() < 4) throw refuse(Trouble::unknown);
  return store::read(store, [&](SQLite::Database& db) {
    auto rows = store::bound(db, "SELECT uid FROM series WHERE substr(uid, 1, ?) = ? LIMIT 2", static_cast<int>(start.size()), start);
    if (!rows.executeStep()) throw refuse(Trouble::unknown);
    const SeriesId id{rows.getColumn(0).getString()};
    if (rows.executeStep()) throw refuse(Trouble::ambiguous);
    return id;
  });
}

std::vector<Series> allSeries(store::Store& store, bool includeArchived) {
  return store::read(store, [&](SQLite::Database& db) {
    std::vector<Series> all;
    SQLite::Statement rows(db, "SELECT id FROM series WHERE ? OR archived_at IS NULL ORDER BY begun_on DESC, id DESC");
    rows.bind(1, includeArchived ? 1 : 0);
    while (rows.executeStep()) all.push_back(seriesAt(db, rows.getColumn(0).getInt64()));
    return all;
  });
}

void archive(store::Store& store, Clock& clock, const SeriesId& id) { setArchived(store, id, clock.now()); }
void bringBack(store::Store& store, const SeriesId& id) { setArchived(store, id, std::nullopt); }

void discard(store::Store& store, const SeriesId& id) {
  store::write(store, [&](SQLite::Database& db) {
    const auto row = seriesRow(db, id);
    if (hasSealed(db, row)) throw Problem(Trouble::seriesBegun, "series");
    store::run(db, "DELETE FROM series_sitting WHERE series_id = ?", row);
    store::run(db, "DELETE FROM series WHERE id = ?", row);
  });
}

}  // namespace oddglass::shelf
