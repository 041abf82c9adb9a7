#include "tasting/table.h"

#include "domain/flight_form.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "store/blob.h"

#include <algorithm>

namespace oddglass::tasting {

using store::bound;

void requirePlace(SQLite::Database& db, std::int64_t session, Place place) {
  auto row = bound(db, "SELECT 1 FROM place WHERE session_id = ? AND place = ?", session, place.value);
  if (!row.executeStep()) throw Problem(Trouble::noSuchPlace, "place", {{"place", std::to_string(place.value)}});
}

void requireSeated(SQLite::Database& db, std::int64_t session, Place place) {
  requirePlace(db, session, place);
  const Problem::Values values{{"place", std::to_string(place.value)}};
  auto taken = bound(db, "SELECT 1 FROM place_taken WHERE session_id = ? AND place = ?", session, place.value);
  if (!taken.executeStep()) throw Problem(Trouble::placeEmpty, "place", values);
  auto left = bound(db, "SELECT 1 FROM place_left WHERE session_id = ? AND place = ?", session, place.value);
  if (left.executeStep()) throw Problem(Trouble::placeLeft, "place", values);
}

void requireRound(SQLite::Database& db, std::int64_t session, Round round) {
  auto row = bound(db, "SELECT max(round) FROM cup WHERE session_id = ?", session);
  row.executeStep();
  if (round.value < 1 || round.value > row.getColumn(0).getInt())
    throw Problem(Trouble::noSuchRound, "round", {{"round", std::to_string(round.value)}});
}

Asked askedIn(SQLite::Database& db, std::int64_t session) {
  auto row = bound(db, R"sql(
    SELECT json_extract(body, '$.method'), coalesce(json_extract(body, '$.attribute'), ''), json_extract(body, '$.stopping') IS NOT NULL,
           json_extract(body, '$.marked') IS NOT NULL, coalesce(json_extract(body, '$.sheet.pause_s'), 0), coalesce(json_extract(body, '$.sheet.cleanser'), '')
      FROM session_plan WHERE session_id = ?)sql", session);
  if (!row.executeStep()) throw Problem(Trouble::notSealed, "session");
  const auto method = named<Method>(row.getColumn(0).getString());
  if (!method) throw Problem(Trouble::storeDamaged, "plan");
  const bool hasMarked = *method == Method::sheet ? row.getColumn(3).getInt() != 0 : formOf(*method).hasMarked;
  return {*method, row.getColumn(1).getString(), row.getColumn(2).getInt() != 0, hasMarked, row.getColumn(4).getInt(), row.getColumn(5).getString()};
}

std::vector<SheetItem> itemsIn(SQLite::Database& db, std::int64_t session) {
  std::vector<SheetItem> all;
  auto rows = bound(db, "SELECT item, kind, required, low, high, per_cup, part, word FROM item WHERE session_id = ? ORDER BY item", session);
  const auto maybe = [](const SQLite::Column& column) { return column.isNull() ? std::nullopt : std::optional(column.getInt()); };
  while (rows.executeStep())
    all.push_back({{rows.getColumn(0).getInt()}, named<ItemKind>(rows.getColumn(1).getString()).value_or(ItemKind::words), rows.getColumn(2).getInt() != 0,
                   maybe(rows.getColumn(3)), maybe(rows.getColumn(4)), rows.getColumn(5).getInt() != 0,
                   named<Part>(rows.getColumn(6).getString()).value_or(Part::main), rows.getColumn(7).getString()});
  return all;
}

int looksIn(SQLite::Database& db, std::int64_t session) {
  auto row = bound(db, "SELECT count(*) FROM log WHERE session_id = ? AND kind = 'judged'", session);
  row.executeStep();
  return row.getColumn(0).getInt();
}

int lastOpenRound(SQLite::Database& db, std::int64_t session) {
  auto row = bound(db, R"sql(
    SELECT (SELECT max(round) FROM cup WHERE session_id = ?1), json_extract(body, '$.stopping') IS NOT NULL,
           (SELECT count(*) FROM log WHERE session_id = ?1 AND kind = 'judged'),
           EXISTS (SELECT 1 FROM log WHERE session_id = ?1 AND kind = 'judged' AND json_extract(body, '$.go_on') = 0)
      FROM session_plan WHERE session_id = ?1)sql", session);
  if (!row.executeStep()) throw Problem(Trouble::notSealed, "session");
  const int all = row.getColumn(0).getInt();
  if (row.getColumn(1).getInt() == 0) return all;
  if (row.getColumn(3).getInt() != 0) return 0;
  return std::min(all, row.getColumn(2).getInt() + 1);
}

int nextRound(SQLite::Database& db, std::int64_t session, Place place) {
  auto row = bound(db, R"sql(
    SELECT min(round) FROM (SELECT DISTINCT round FROM cup WHERE session_id = ?1 AND place = ?2 AND round <= ?3)
     WHERE round NOT IN (SELECT round FROM hand_in WHERE session_id = ?1 AND place = ?2)
       AND round NOT IN (SELECT round FROM voided WHERE session_id = ?1 AND place = ?2))sql", session, place.value, lastOpenRound(db, session));
  row.executeStep();
  return row.getColumn(0).isNull() ? 0 : row.getColumn(0).getInt();
}

// A flight began when its cups were confirmed, none of them was replaced since, and neither the mats nor the person changed.
bool hasBegun(SQLite::Database& db, std::int64_t session, Place place, Round round) {
  auto row = bound(db, R"sql(
    SELECT coalesce((SELECT max(seq) FROM log WHERE session_id = ?1 AND kind = 'began' AND body = ?4), 0) >
           max(coalesce((SELECT max(s.seq) FROM spilled s JOIN cup c ON c.session_id = s.session_id AND c.code = s.code
                          WHERE s.session_id = ?1 AND c.place = ?2 AND c.round = ?3), 0),
               coalesce((SELECT max(seq) FROM log WHERE session_id = ?1 AND kind = 'mats_swapped' AND json_extract(body, '$.round') = ?3
                            AND (json_extract(body, '$.places[0]') = ?2 OR json_extract(body, '$.places[1]') = ?2)), 0),
               coalesce((SELECT max(seq) FROM log WHERE session_id = ?1 AND kind = 'place_freed' AND json_extract(body, '$.place') = ?2), 0)))sql",
                   session, place.value, round.value,
                   canon::canonical({{"place", place.value}, {"round", round.value}}));
  row.executeStep();
  return row.getColumn(0).getInt() != 0;
}

void requireOpenTable(SQLite::Database& db, std::int64_t session) {
  const State state = store::stateOf(db, session);
  if (state == State::sealed || state == State::tasting) return;
  const Problem::Values values{{"state", std::string(nameOf(state))}};
  if (state == State::draft) throw Problem(Trouble::notSealed, "session", values);
  if (state == State::closed || state == State::revealed) throw Problem(Trouble::tableClosed, "session", values);
  throw Problem(Trouble::wrongState, "session", values);
}

void openTable(SQLite::Database& db, std::int64_t session, Millis at) {
  if (store::stateOf(db, session) == State::sealed) store::Log::append(db, session, at, Event::opened, canon::Json::object());
}

Code currentCode(SQLite::Database& db, std::int64_t session, Code code) {
  for (;;) {
    auto row = bound(db, "SELECT by_code FROM spilled WHERE session_id = ? AND code = ?", session, code.value);
    if (!row.executeStep()) return code;
    code.value = row.getColumn(0).getInt();
  }
}

std::vector<std::pair<Position, Code>> currentCodes(SQLite::Database& db, std::int64_t session, Place place, Round round) {
  std::vector<std::pair<Position, Code>> codes;
  auto rows = bound(db, "SELECT position, code FROM cup WHERE session_id = ? AND place = ? AND round = ? AND spare = 0 ORDER BY position",
                    session, place.value, round.value);
  while (rows.executeStep())
    codes.emplace_back(Position{rows.getColumn(0).getInt()}, currentCode(db, session, {rows.getColumn(1).getInt()}));
  return codes;
}

std::string digestOf(const canon::Salt& salt, const std::string& text) { return canon::hex(canon::sha256({salt, canon::bytesOf(text)})); }

void keepRemark(SQLite::Database& db, std::int64_t session, const Logged& entry, const char* about, const canon::Salt& salt, const std::string& words) {
  auto insert = bound(db, "INSERT INTO remark (session_id, seq, about, text, salt) VALUES (?, ?, ?, ?, ?)", session, entry.seq().value, about, words);
  store::bindBlob(insert, 5, salt);
  insert.exec();
}

void setAsideWithin(SQLite::Database& db, std::int64_t session, Millis at, const canon::Salt& salt, Place place, Round round, VoidReason reason,
                    const std::string& words) {
  auto before = bound(db, "SELECT 1 FROM voided WHERE session_id = ? AND place = ? AND round = ?", session, place.value, round.value);
  if (before.executeStep())
    throw Problem(Trouble::flightVoid, "round", {{"place", std::to_string(place.value)}, {"round", std::to_string(round.value)}});
  const std::string why(nameOf(reason));
  const canon::Json digest = words.empty() ? canon::Json(nullptr) : canon::Json(digestOf(salt, words));
  const Logged entry = store::Log::append(db, session, at, Event::voided,
                                          {{"digest", digest}, {"place", place.value}, {"reason", why}, {"round", round.value}});
  store::run(db, "INSERT INTO voided VALUES (?, ?, ?, ?, ?)", session, place.value, round.value, why, entry.seq().value);
  if (!words.empty()) keepRemark(db, session, entry, "reason", salt, words);
}

}  // namespace oddglass::tasting
