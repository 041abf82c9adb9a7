#include "tasting/mishaps.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "domain/text.h"
#include "tasting/table.h"

namespace oddglass::tasting {
namespace {

using store::bound;
using store::Log;

std::string wordsAllowed(const std::string& words) {
  const std::string clean = cleaned(words);
  if (lettersIn(clean) > 4000) throw Problem(Trouble::tooLong, "words", {{"limit", "4000"}});
  return clean;
}

}  // namespace

void said(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::set<Place>& heardBy, const std::string& words) {
  const std::string clean = wordsAllowed(words);
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requireOpenTable(db, id);
    canon::Json heard = canon::Json::array();
    for (Place place : heardBy) {
      requirePlace(db, id, place);
      heard.push_back(place.value);
    }
    const canon::Salt salt = chance.bytes<16>();
    const Logged entry = Log::append(db, id, clock.now(), Event::said,
                                     {{"digest", clean.empty() ? canon::Json(nullptr) : canon::Json(digestOf(salt, clean))}, {"heard", heard}});
    for (Place place : heardBy) store::run(db, "INSERT INTO said_aloud VALUES (?, ?, ?)", id, entry.seq().value, place.value);
    if (!clean.empty()) keepRemark(db, id, entry, "said", salt, clean);
  });
}

Code spilled(store::Store& store, Clock& clock, const SessionId& session, Code code) {
  return store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requireOpenTable(db, id);
    auto cup = bound(db, "SELECT place, round, position, spare FROM cup WHERE session_id = ? AND code = ?", id, code.value);
    if (!cup.executeStep()) throw Problem(Trouble::codeNotHere, "code", {{"code", std::to_string(code.value)}});
    const int place = cup.getColumn(0).getInt(), round = cup.getColumn(1).getInt(), position = cup.getColumn(2).getInt(), spare = cup.getColumn(3).getInt();
    auto locked = bound(db, "SELECT at FROM hand_in WHERE session_id = ? AND place = ? AND round = ?", id, place, round);
    if (locked.executeStep())
      throw Problem(Trouble::flightLocked, "code", {{"at", std::to_string(locked.getColumn(0).getInt64())}, {"place", std::to_string(place)}, {"round", std::to_string(round)}});
    auto gone = bound(db, "SELECT 1 FROM spilled WHERE session_id = ? AND code = ?", id, code.value);
    if (gone.executeStep()) throw Problem(Trouble::alreadySpilled, "code", {{"code", std::to_string(code.value)}});
    // A spare code that is not in use yet is no cup on the table.
    if (spare > 0) {
      auto inUse = bound(db, "SELECT 1 FROM spilled WHERE session_id = ? AND by_code = ?", id, code.value);
      if (!inUse.executeStep()) throw Problem(Trouble::codeNotHere, "code", {{"code", std::to_string(code.value)}});
    }
    auto next = bound(db, "SELECT code FROM cup WHERE session_id = ? AND place = ? AND round = ? AND position = ? AND spare = ?", id, place, round,
                      position, spare + 1);
    if (!next.executeStep()) throw Problem(Trouble::noSpareLeft, "code", {{"code", std::to_string(code.value)}});
    const Code by{next.getColumn(0).getInt()};
    const Logged entry = Log::append(db, id, clock.now(), Event::spilled, {{"by", by.value}, {"code", code.value}});
    store::run(db, "INSERT INTO spilled VALUES (?, ?, ?, ?)", id, code.value, by.value, entry.seq().value);
    return by;
  });
}

std::optional<Code> lostCup(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Code code) {
  return store::write(store, [&](SQLite::Database& db) -> std::optional<Code> {
    const auto id = store::sessionRow(db, session);
    auto drawn = bound(db, "SELECT 1 FROM cup WHERE session_id = ? AND spare > 0", id);
    if (drawn.executeStep()) return spilled(store, clock, session, code);
    requireOpenTable(db, id);
    auto cup = bound(db, R"sql(
      SELECT c.place, c.round, h.at FROM cup c LEFT JOIN hand_in h ON h.session_id = c.session_id AND h.place = c.place AND h.round = c.round
       WHERE c.session_id = ? AND c.code = ?)sql", id, code.value);
    if (!cup.executeStep()) throw Problem(Trouble::codeNotHere, "code", {{"code", std::to_string(code.value)}});
    const Place place{cup.getColumn(0).getInt()};
    const Round round{cup.getColumn(1).getInt()};
    if (!cup.getColumn(2).isNull())
      throw Problem(Trouble::flightLocked, "code", {{"at", std::to_string(cup.getColumn(2).getInt64())}, {"place", std::to_string(place.value)}, {"round", std::to_string(round.value)}});
    setAsideWithin(db, id, clock.now(), chance.bytes<16>(), place, round, VoidReason::cupLost, {});
    return std::nullopt;
  });
}

void setAside(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Place place, Round round, VoidReason reason,
              const std::string& words) {
  const std::string clean = wordsAllowed(words);
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requirePlace(db, id, place);
    requireRound(db, id, round);
    setAsideWithin(db, id, clock.now(), chance.bytes<16>(), place, round, reason, clean);
  });
}

}  // namespace oddglass::tasting
